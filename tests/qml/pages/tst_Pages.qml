// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Measure
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
        id: heightsPage
        HeightsPage { view: HeightsView { desk: TheDesk } }
    }
    Component {
        id: barPage
        BarPage { editor: BarEditor { desk: TheDesk } weighed: WeighedIronView { desk: TheDesk; book: TheBook } }
    }
    Component {
        id: thingsPage
        ThingsPage { view: KitView { desk: TheDesk; book: TheBook } work: deskWork }
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
        ChainPage { editor: ChainEditor { desk: TheDesk; itemId: TheDeskFiller.itemId(TheBook, 2) } }
    }
    Component {
        id: bandPage
        BandPage { editor: BandEditor { desk: TheDesk; itemId: TheDeskFiller.itemId(TheBook, 0) } }
    }
    Component {
        id: chainSteps
        ChainStepsPage { steps: ChainGuide { form: ChainEditor { desk: TheDesk; book: TheBook } } }
    }
    Component {
        id: chainStepsAgain
        ChainStepsPage { steps: ChainGuide { form: ChainEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 2) } } }
    }
    Component {
        id: inspectPage
        InspectPage { editor: InspectionEditor { book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 2) } }
    }
    Component {
        id: marksRun
        MarksRunPage { run: MarksRun { form: MarksEditor { desk: TheDesk } work: deskWork } }
    }
    Component {
        id: bandSteps
        BandStepsPage { steps: BandGuide { form: BandEditor { desk: TheDesk; book: TheBook } } }
    }
    Component {
        id: toolSteps
        ToolStepsPage { steps: ToolGuide { form: ScaleEditor { desk: TheDesk; book: TheBook } } }
    }
    Component {
        id: ironSteps
        ToolStepsPage { steps: ToolGuide { form: IronEditor { desk: TheDesk; book: TheBook } } }
    }
    Component {
        id: leadSteps
        ToolStepsPage { steps: ToolGuide { form: LeadEditor { desk: TheDesk; book: TheBook } } }
    }
    Component {
        id: rackSteps
        ToolStepsPage { steps: ToolGuide { form: RackEditor { desk: TheDesk; book: TheBook } } }
    }
    Component {
        id: scalePage
        ToolPage { editor: ScaleEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 3) } }
    }
    Component {
        id: rackPage
        ToolPage { editor: RackEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 7) } }
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
        /** From the beginning: keys each number in its step; "" goes on from the first page, "weigh" and "gauge" too. */
        function step(page: Item, numbers: var) {
            page.steps.form.throwDraft()
            page.steps.resume()
            testCase.stepOn(page, numbers)
        }
        function lifter(page: Item) {
            TheDeskFiller.squad(TheBook, 3)
            deskWork.take(TheDeskFiller.athleteId(TheBook, 0), "1")
            page.run.start()
        }
        function stepOn(page: Item, numbers: var) {
            for (const number of numbers) {
                if (number === "")
                    page.steps.next()
                else if (number === "weigh" || number === "gauge")
                    page.steps.choose(number === "gauge")
                else {
                    for (const key of number)
                        page.pad.press(key)
                    page.goOn()
                }
            }
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
                {tag: "at each height, nothing yet", component: heightsPage, full: false},
                {tag: "at each height", component: heightsPage, full: true},
                {tag: "bar and plates", component: barPage, full: true},
                {tag: "kit, empty", component: thingsPage, full: false},
                {tag: "kit, full", component: thingsPage, full: true},
                {tag: "hang a chain", component: hangChain, full: true},
                {tag: "hang a band", component: hangBand, full: true},
                {tag: "chain, empty", component: newChain, full: false},
                {tag: "chain, gauged", component: chainPage, full: true},
                {tag: "band, empty", component: newBand, full: false},
                {tag: "band, odd hanging", component: bandPage, full: true},
                {tag: "chain steps, how", component: chainSteps, full: false, setup: page => testCase.step(page, [])},
                {tag: "chain steps, length", component: chainSteps, full: false, setup: page => testCase.step(page, ["weigh"])},
                {tag: "chain steps, mass refused", component: chainSteps, full: false, setup: page => testCase.step(page, ["weigh", "180", "1..2"])},
                {tag: "chain steps, long link", component: chainSteps, full: false, setup: page => testCase.step(page, ["gauge", "180", "16", "56"])},
                {tag: "chain steps, result", component: chainSteps, full: false, setup: page => testCase.step(page, ["gauge", "180", "16", "56", "20"])},
                {tag: "chain steps, drift", component: chainStepsAgain, full: true, setup: page => testCase.step(page, ["weigh", "70", "5", "0.1"])},
                {tag: "marks in a row", component: marksRun, full: true, setup: page => testCase.lifter(page)},
                {tag: "marks in a row, kept", component: marksRun, full: true, setup: page => { testCase.lifter(page); page.run.next(); page.run.next(); page.run.copyTo(0) }},
                {tag: "look over", component: inspectPage, full: true, setup: page => { page.editor.found = 1; page.editor.note = "third link from the hook" }},
                {tag: "band steps, caution", component: bandSteps, full: false, setup: page => testCase.step(page, [])},
                {tag: "band steps, rest", component: bandSteps, full: false, setup: page => testCase.step(page, [""])},
                {tag: "band steps, first mass", component: bandSteps, full: false, setup: page => testCase.step(page, ["", "50"])},
                {tag: "band steps, length", component: bandSteps, full: false, setup: page => testCase.step(page, ["", "50", "5"])},
                {tag: "band steps, where next", component: bandSteps, full: false, setup: page => testCase.step(page, ["", "50", "5", "62", "10", "76", "14", "90"])},
                {tag: "band steps, odd", component: bandSteps, full: false,
                    setup: page => { testCase.step(page, ["", "52", "2.5", "68.4", "5", "82.9", "7.5", "97.8", "10", "117", "12.5", "124", "15", "137.4"]); page.steps.enough() }},
                {tag: "band steps, coming off", component: bandSteps, full: false,
                    setup: page => { testCase.step(page, ["", "50", "5", "62", "10", "76", "14", "90"]); page.steps.more(true); testCase.stepOn(page, ["10", "78", "5", "64"]); page.steps.enough() }},
                {tag: "kit with tools", component: thingsPage, tools: true},
                {tag: "bar and plates, weighed", component: barPage, tools: true, setup: page => { page.weighed.bar = 1; page.weighed.takePlates(0) }},
                {tag: "hang a chain by a strap", component: hangChain, tools: true, setup: page => page.fromKit.chosen = 0},
                {tag: "hang a band at the rack", component: hangBand, tools: true},
                {tag: "marks by hole", component: marksPage, tools: true, setup: page => page.editor.rack = 1},
                {tag: "chain steps, on a scale", component: chainSteps, tools: true, setup: page => testCase.step(page, ["weigh", "180", "10.3"])},
                {tag: "scale", component: scalePage, tools: true},
                {tag: "rack", component: rackPage, tools: true},
                {tag: "scale steps, how", component: toolSteps, full: false, setup: page => testCase.step(page, [])},
                {tag: "scale steps, empty", component: toolSteps, full: false, setup: page => testCase.step(page, [""])},
                {tag: "scale steps, known", component: toolSteps, full: false, setup: page => testCase.step(page, ["", "0", "0.1"])},
                {tag: "scale steps, not good", component: toolSteps, full: false, setup: page => testCase.step(page, ["", "0.4", "0.2", "20", "19"])},
                {tag: "iron steps, how", component: ironSteps, full: false, setup: page => testCase.step(page, [])},
                {tag: "iron steps, step of the scale", component: ironSteps, tools: true, setup: page => { testCase.step(page, []); page.steps.choose(1); testCase.stepOn(page, ["20", "2", "40.6"]) }},
                {tag: "iron steps, result", component: ironSteps, tools: true, setup: page => { testCase.step(page, []); page.steps.choose(1); testCase.stepOn(page, ["20", "2", "40.6", "0.1"]) }},
                {tag: "lead steps, length", component: leadSteps, full: false, setup: page => testCase.step(page, [""])},
                {tag: "lead steps, result", component: leadSteps, full: false, setup: page => testCase.step(page, ["", "62", "0.35"])},
                {tag: "rack steps, how", component: rackSteps, full: false, setup: page => testCase.step(page, [])},
                {tag: "rack steps, lowest", component: rackSteps, full: false, setup: page => testCase.step(page, [""])},
                {tag: "rack steps, result", component: rackSteps, full: false, setup: page => testCase.step(page, ["", "41.5", "5", "28"])},
                {tag: "keypad", component: keypadPage, full: true, setup: page => testCase.press(page, "108.5")},
                {tag: "keypad, offers", component: keypadPage, full: true, setup: page => { testCase.press(page, "108.5"); page.pad.keep() }},
                {tag: "keypad, question", component: keypadPage, full: true, setup: page => { TheDeskFiller.lastTime(TheDesk, 60); page.pad.key = "load"; testCase.press(page, "140"); testCase.verify(!page.pad.keep(), "it is asked about") }},
                {tag: "keypad, refusal", component: keypadPage, full: true, setup: page => testCase.press(page, "1234")}]
        }
        function test_page(row) {
            if (row.stopped)
                TheDeskFiller.stopped(TheDesk)
            else if (row.tools)
                TheDeskFiller.tools(TheDesk)
            else if (row.full)
                TheDeskFiller.full(TheDesk)
            else
                TheDeskFiller.empty(TheDesk)
            checker.check({name: row.tag, component: row.component, setup: row.setup})
        }
    }
}
