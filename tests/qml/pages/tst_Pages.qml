// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Squad
import Steelyard.Theme

/** Every page of the app, in its main states, through the checker. */
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
    PageChecker {
        id: checker
        testCase: testCase
    }
    Component {
        id: setupPage
        SetupPage { view: SetupView { desk: TheDesk } work: deskWork; places: root.places; place: 1 }
    }
    Component {
        id: marksPage
        MarksPage { editor: MarksEditor { desk: TheDesk } work: deskWork }
    }
    Component {
        id: preferencesPage
        PreferencesPage { }
    }
    Component {
        id: originPage
        OriginPage { view: OriginView { desk: TheDesk; book: TheBook } }
    }
    Component {
        id: barPage
        BarPage { editor: BarEditor { desk: TheDesk } }
    }
    Component {
        id: thingsPage
        ThingsPage { view: KitView { desk: TheDesk } work: deskWork }
    }
    Component {
        id: hangChain
        HangPage { editor: HangEditor { desk: TheDesk; row: 0 } }
    }
    Component {
        id: hangBand
        HangPage { editor: HangEditor { desk: TheDesk; row: 1 } }
    }
    Component {
        id: newChain
        ChainPage { editor: ChainEditor { desk: TheDesk } }
    }
    Component {
        id: newBand
        BandPage { editor: BandEditor { desk: TheDesk } }
    }
    Component {
        id: chainPage
        ChainPage { editor: ChainEditor { desk: TheDesk; itemId: "1".padStart(32, "0") } }
    }
    Component {
        id: bandPage
        BandPage { editor: BandEditor { desk: TheDesk; itemId: "2".padStart(32, "0") } }
    }
    Component {
        id: keypadPage
        KeypadPage { pad: NumberPad { editor: BarEditor { desk: TheDesk } key: "load" } }
    }
    ControlCase {
        id: testCase

        name: "Pages"

        function cleanup() {
            checker.clear()
        }
        function press(page: KeypadPage, keys: string) {
            for (const key of keys)
                page.pad.press(key)
        }
        function test_page_data() {
            return [{tag: "set-up, empty", component: setupPage, full: false},
                {tag: "set-up, full", component: setupPage, full: true},
                {tag: "set-up, stopped", component: setupPage, stopped: true},
                {tag: "marks, empty", component: marksPage, full: false},
                {tag: "marks, full", component: marksPage, full: true},
                {tag: "preferences", component: preferencesPage, full: true},
                {tag: "where it comes from, nothing yet", component: originPage, full: false},
                {tag: "where it comes from", component: originPage, full: true},
                {tag: "bar and plates", component: barPage, full: true},
                {tag: "kit, empty", component: thingsPage, full: false},
                {tag: "kit, full", component: thingsPage, full: true},
                {tag: "hang a chain", component: hangChain, full: true},
                {tag: "hang a band", component: hangBand, full: true},
                {tag: "chain, empty", component: newChain, full: false},
                {tag: "chain, gauged", component: chainPage, full: true},
                {tag: "band, empty", component: newBand, full: false},
                {tag: "band, odd hanging", component: bandPage, full: true},
                {tag: "keypad", component: keypadPage, full: true, setup: page => testCase.press(page, "108.5")},
                {tag: "keypad, offers", component: keypadPage, full: true, setup: page => { testCase.press(page, "108.5"); page.pad.keep() }},
                {tag: "keypad, refusal", component: keypadPage, full: true, setup: page => testCase.press(page, "1234")}]
        }
        function test_page(row) {
            if (row.stopped)
                TheDeskFiller.stopped(TheDesk)
            else if (row.full)
                TheDeskFiller.full(TheDesk)
            else
                TheDeskFiller.empty(TheDesk)
            checker.check({name: row.tag, component: row.component, setup: row.setup})
        }
    }
}
