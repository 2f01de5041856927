// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Squad

/** The pages of the people, in their main states, through the checker. */
Item {
    id: root

    readonly property var places: ["Squad", "Kit"]

    width: 1280
    height: 1000

    DeskWork {
        id: deskWork
        desk: TheDesk
        book: TheBook
    }
    AthleteEditor {
        id: theEditor
        desk: TheDesk
        book: TheBook
    }
    PageChecker {
        id: checker
        testCase: testCase
    }
    Component {
        id: squad
        SquadPage { view: SquadView { book: TheBook } places: root.places; place: 0 }
    }
    Component {
        id: athlete
        AthletePage { editor: theEditor }
    }
    Component {
        id: agreement
        AgreementPage { editor: theEditor }
    }
    Component {
        id: takeOut
        TakeOutPage { editor: theEditor }
    }
    Component {
        id: lifts
        LiftsPage { view: LiftsView { book: TheBook; athleteId: theEditor.athleteId } }
    }
    Component {
        id: setups
        SetupsPage { view: LiftsView { book: TheBook; athleteId: theEditor.athleteId } }
    }
    Component {
        id: news
        NewsPage { vault: TheVault }
    }
    Component {
        id: preferences
        PreferencesPage { sample: true }
    }
    Component {
        id: removeSample
        RemoveSamplePage { vault: TheVault }
    }
    Component {
        id: deeds
        DeedsPage { view: DeedsView { book: TheBook } }
    }
    Component {
        id: marks
        MarksPage { editor: MarksEditor { desk: TheDesk } work: deskWork }
    }
    Component {
        id: setup
        SetupPage { view: SetupView { desk: TheDesk } work: deskWork; places: root.places; place: 1 }
    }
    Component {
        id: venue
        VenuePage { work: deskWork }
    }
    Component {
        id: chain
        ChainPage { editor: ChainEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 0) } }
    }
    Component {
        id: things
        ThingsPage { view: KitView { desk: TheDesk } work: deskWork }
    }
    ControlCase {
        id: testCase

        name: "SquadPages"

        function cleanup() {
            checker.clear()
            theEditor.throwDraft()
            TheVault.newsRead()
        }
        function init() {
            testCase.reset()
            TheDeskFiller.full(TheDesk)
        }
        function person(count: int, place: int) {
            TheDeskFiller.squad(TheBook, count)
            theEditor.athleteId = place < 0 ? "" : TheDeskFiller.athleteId(TheBook, place)
        }
        function kept() {
            testCase.person(3, 0)
            deskWork.take(theEditor.athleteId, 1)
            deskWork.keepSetup()
            deskWork.keepVenue("Marrow Hill hall")
        }
        function kitKept() {
            TheDeskFiller.full(TheDesk)
        }
        function test_page_data() {
            return [{tag: "squad, empty", component: squad, before: () => testCase.person(0, -1)},
                {tag: "squad of three", component: squad, before: () => testCase.kept()},
                {tag: "squad of 26", component: squad, before: () => testCase.person(26, 0)},
                {tag: "athlete, new", component: athlete, before: () => { testCase.person(2, -1); theEditor.name = "Zed"; theEditor.squad = "Monday rowers" }},
                {tag: "athlete, of age", component: athlete, before: () => testCase.person(2, 0)},
                {tag: "athlete, minor", component: athlete, before: () => testCase.person(2, 1)},
                {tag: "agreement", component: agreement, before: () => testCase.person(2, 1)},
                {tag: "take out", component: takeOut, before: () => testCase.person(2, 1)},
                {tag: "lifts", component: lifts, before: () => testCase.person(2, 0)},
                {tag: "set-ups, none", component: setups, before: () => testCase.person(2, 0)},
                {tag: "set-ups", component: setups, before: () => testCase.kept()},
                {tag: "done lately, nothing", component: deeds, before: () => testCase.person(2, 0)},
                {tag: "done lately", component: deeds, before: () => testCase.kept()},
                {tag: "news of the vault", component: news, before: () => { TheVault.newsRead(); TheDeskFiller.news(TheVault) }},
                {tag: "her marks, changed", component: marks, before: () => { testCase.person(3, 0); deskWork.take(theEditor.athleteId, 14) }},
                {tag: "set-up, for her", component: setup, before: () => { testCase.person(3, 0); deskWork.take(theEditor.athleteId, 1) }},
                {tag: "chain of a venue", component: chain, before: () => { testCase.kitKept(); deskWork.keepVenue("Marrow Hill hall"); deskWork.venue = 0 }},
                {tag: "preferences of the example", component: preferences, before: () => {}},
                {tag: "remove the example", component: removeSample, before: () => {}},
                {tag: "venue", component: venue, before: () => testCase.person(0, -1)},
                {tag: "kit of a venue", component: things, before: () => testCase.kept()}]
        }
        function test_page(row) {
            row.before()
            checker.check({name: row.tag, component: row.component})
        }
    }
}
