// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Squad

/** Owns the stack of pages and says where each leads; header arrow, Back and Esc all end in back(). */
StackView {
    id: root

    readonly property var places: [qsTr("Squad"), qsTr("Kit")]
    readonly property int squadPlace: 0
    readonly property int kitPlace: 1
    property int place: root.kitPlace

    initialItem: setupPage
    pushEnter: null; pushExit: null
    popEnter: null; popExit: null
    replaceEnter: null; replaceExit: null
    Component.onCompleted: root.showNews()
    // a page that is going has to be gone first
    onDepthChanged: soon.restart()

    Component {
        id: setupPage
        SetupPage {
            view: SetupView { desk: TheDesk }
            work: deskWork
            places: root.places
            place: root.kitPlace
            onPlaceChosen: index => root.go(index); onBackRequested: root.back()
            onMarksRequested: root.push(marksPage); onBarRequested: root.push(barPage); onMoreRequested: root.push(thingsPage)
            onNumberRequested: key => root.key(root.bar(), key)
            onHungRequested: row => root.push(hangPage, {row: row})
            onWhoRequested: root.go(root.squadPlace)
        }
    }
    Component {
        id: squadPage
        SquadPage {
            view: SquadView { book: TheBook }
            places: root.places
            place: root.squadPlace
            onPlaceChosen: index => root.go(index); onBackRequested: root.back()
            onAthleteRequested: athleteId => root.push(athletePage, {athleteId: athleteId})
            onAddRequested: root.push(athletePage)
            onPreferencesRequested: root.push(preferencesPage); onDeedsRequested: root.push(deedsPage)
            onLockRequested: TheVault.lockNow()
        }
    }
    Component {
        id: athletePage
        AthletePage {
            id: athlete
            property string athleteId: ""
            editor: AthleteEditor { desk: TheDesk; book: TheBook; athleteId: athlete.athleteId }
            onBackRequested: root.back()
            onNumberRequested: key => root.key(athlete.editor, key)
            onLiftsRequested: root.push(liftsPage, {athleteId: athlete.editor.athleteId})
            onSetupsRequested: root.push(setupsPage, {athleteId: athlete.editor.athleteId})
            onAgreementRequested: root.push(agreementPage, {editor: athlete.editor}); onRemoveRequested: root.push(takeOutPage, {editor: athlete.editor})
        }
    }
    Component {
        id: agreementPage
        AgreementPage { onBackRequested: root.back(); onDone: root.back() }
    }
    Component {
        id: takeOutPage
        TakeOutPage { onBackRequested: root.back(); onDone: root.home() }
    }
    Component {
        id: liftsPage
        LiftsPage {
            id: lifts
            property string athleteId: ""
            view: LiftsView { book: TheBook; athleteId: lifts.athleteId }
            onBackRequested: root.back()
            onLiftRequested: lift => {
                deskWork.take(lifts.athleteId, lift)
                root.push(marksPage)
            }
        }
    }
    Component {
        id: setupsPage
        SetupsPage {
            id: setups
            property string athleteId: ""
            view: LiftsView { book: TheBook; athleteId: setups.athleteId }
            onBackRequested: root.back()
            onSetupRequested: setupId => {
                deskWork.open(setupId)
                root.go(root.kitPlace)
            }
        }
    }
    Component {
        id: deedsPage
        DeedsPage { view: DeedsView { book: TheBook } onBackRequested: root.back() }
    }
    Component {
        id: newsPage
        NewsPage { vault: TheVault; onBackRequested: root.readNews() }
    }
    Component {
        id: marksPage
        MarksPage {
            id: marks
            editor: MarksEditor { desk: TheDesk }
            work: deskWork
            onBackRequested: root.back()
            onNumberRequested: key => root.key(marks.editor, key)
            onDone: root.go(root.kitPlace)
        }
    }
    Component {
        id: preferencesPage
        PreferencesPage { onBackRequested: root.back() }
    }
    Component {
        id: venuePage
        VenuePage {
            work: deskWork
            onBackRequested: root.back(); onDone: root.back()
        }
    }
    Component {
        id: barPage
        BarPage {
            id: bar
            editor: BarEditor { desk: TheDesk }
            onBackRequested: root.back()
            onNumberRequested: key => root.key(bar.editor, key)
        }
    }
    Component {
        id: thingsPage
        ThingsPage {
            id: things
            view: KitView { desk: TheDesk }
            work: deskWork
            onVenueRequested: root.push(venuePage)
            onBackRequested: root.back()
            onHangRequested: itemId => root.hang(itemId)
            onMeasureRequested: (itemId, chain) => root.measure(itemId, chain)
            StackView.onActivating: things.view.refresh()
        }
    }
    Component {
        id: hangPage
        HangPage {
            id: hang
            property int row: -1
            editor: HangEditor { desk: TheDesk; row: hang.row }
            onBackRequested: root.home(); onDone: root.home()
            onNumberRequested: key => root.key(hang.editor, key)
            onMeasureRequested: root.measure(hang.editor.itemId, hang.editor.chain)
        }
    }
    Component {
        id: chainPage
        ChainPage {
            id: chain
            property string itemId: ""
            editor: ChainEditor { desk: TheDesk; book: TheBook; venueId: deskWork.venueId; itemId: chain.itemId }
            onBackRequested: root.back(); onDone: root.back()
            onNumberRequested: key => root.key(chain.editor, key)
        }
    }
    Component {
        id: bandPage
        BandPage {
            id: band
            property string itemId: ""
            editor: BandEditor { desk: TheDesk; book: TheBook; venueId: deskWork.venueId; itemId: band.itemId }
            onBackRequested: root.back(); onDone: root.back()
            onNumberRequested: key => root.key(band.editor, key)
        }
    }
    Component {
        id: keypadPage
        KeypadPage {
            id: keypad
            required property FieldEditor editor
            required property string field
            pad: NumberPad { editor: keypad.editor; key: keypad.field }
            onBackRequested: root.back(); onDone: root.back()
        }
    }
    DeskWork {
        id: deskWork
        desk: TheDesk
        book: TheBook
    }
    Timer { id: soon; interval: 0; onTriggered: root.showNews() }
    BarEditor { id: loadEditor; desk: TheDesk }
    HangEditor { id: hanger; desk: TheDesk }

    Connections {
        target: TheVault
        function onNewsChanged() { root.showNews() }
    }

    function bar(): BarEditor {
        return loadEditor
    }
    /** What the vault has to say comes before a place's first page, and never over a form. */
    function showNews() {
        if (TheVault.news.length > 0 && root.depth === 1)
            root.push(newsPage)
    }
    function readNews() {
        TheVault.newsRead()
        root.back()
    }
    /** Shows a place from its first page. */
    function go(index: int) {
        root.place = index
        root.replace(null, index === root.squadPlace ? squadPage : setupPage)
        root.currentItem.forceActiveFocus()
    }
    function key(editor: FieldEditor, field: string) {
        root.push(keypadPage, {editor: editor, field: field})
    }
    function hang(itemId: string) {
        const row = hanger.hang(itemId)
        if (row >= 0)
            root.push(hangPage, {row: row})
    }
    function measure(itemId: string, chain: bool) {
        root.push(chain ? chainPage : bandPage, {itemId: itemId})
    }
    function home() {
        root.pop(null)
    }
    /** One page back; from a place's first page to the set-up, and no further: nothing closes by a stray key. */
    function back() {
        if (root.depth > 1)
            root.pop()
        else if (root.place !== root.kitPlace)
            root.go(root.kitPlace)
    }
}
