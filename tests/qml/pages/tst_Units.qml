// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Asking
import Steelyard.Pages.Gates
import Steelyard.Pages.Eccentric
import Steelyard.Pages.Kit
import Steelyard.Pages.Measure
import Steelyard.Pages.Squad
import Steelyard.Pages.Strength
import Steelyard.Theme

/** A page that stands there when units or language change shows every number and sentence anew, and says nothing in the others any more. */
Item {
    id: root

    width: 1280
    height: 1000

    UnitsChoice {
        id: units
        book: TheBook
    }
    DeskWork {
        id: deskWork
        desk: TheDesk
        book: TheBook
    }
    AthleteEditor {
        id: athleteEditor
        desk: TheDesk
        book: TheBook
    }
    Component { id: setupPage; SetupPage { view: SetupView { desk: TheDesk } work: deskWork; places: ["Squad", "Kit"]; place: 1 } }
    Component { id: marksPage; MarksPage { editor: MarksEditor { desk: TheDesk } work: deskWork } }
    Component { id: barPage; BarPage { editor: BarEditor { desk: TheDesk } weighed: WeighedIronView { desk: TheDesk; book: TheBook } } }
    Component { id: thingsPage; ThingsPage { view: KitView { desk: TheDesk } work: deskWork } }
    Component { id: hangChain; HangPage { editor: HangEditor { desk: TheDesk; row: 0 } } }
    Component { id: hangBand; HangPage { editor: HangEditor { desk: TheDesk; row: 1 } } }
    Component { id: chainPage; ChainPage { editor: ChainEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 2) } } }
    Component { id: aidPage; AidPage { editor: AidEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 0) } } }
    Component { id: machinePage; MachinePage { editor: MachineEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 1) } } }
    Component { id: scalePage; ToolPage { editor: ScaleEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 3) } } }
    Component { id: rackPage; ToolPage { editor: RackEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 7) } } }
    Component { id: scaleSteps; ToolStepsPage { steps: ToolGuide { form: ScaleEditor { desk: TheDesk; book: TheBook } } } }
    Component { id: bandPage; BandPage { editor: BandEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 0) } } }
    Component { id: originOfChain; ItemOriginPage { view: ItemOriginView { book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 2) } } }
    Component { id: originOfBand; ItemOriginPage { view: ItemOriginView { book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 0) } } }
    Component { id: heightsPage; HeightsPage { view: HeightsView { desk: TheDesk } } }
    Component { id: keypadPage; KeypadPage { pad: NumberPad { editor: BarEditor { desk: TheDesk } key: "load" } } }
    Component { id: athletePage; AthletePage { editor: athleteEditor } }
    Component { id: liftsPage; LiftsPage { view: LiftsView { book: TheBook; athleteId: athleteEditor.athleteId } } }
    Component { id: setupsPage; SetupsPage { view: LiftsView { book: TheBook; athleteId: athleteEditor.athleteId } } }
    Component { id: askPage; WhatToHangPage { asker: HangAsker { desk: TheDesk } } }
    Component { id: pullsPage; PullsPage { editor: PullsEditor { desk: TheDesk; work: deskWork } } }
    Component { id: strengthPage; StrengthPage { view: StrengthView { book: TheBook; athleteId: athleteEditor.athleteId } } }
    Component { id: liftStrengthPage; LiftStrengthPage { view: LiftStrengthView { book: TheBook; athleteId: athleteEditor.athleteId; lift: "1" } } }
    Component { id: testPage; TestPage { editor: TestEditor { desk: TheDesk; book: TheBook; athleteId: athleteEditor.athleteId; lift: "12"; testId: TheDeskFiller.testId(TheBook, 6) } } }
    Component { id: rampPage; RampPage { view: RampView { desk: TheDesk } } }
    Component { id: preferencesPage; PreferencesPage { } }
    StandingView { id: standing; book: TheBook; athleteId: athleteEditor.athleteId }
    Component { id: dayStatusPage; DayStatusPage { view: standing } }
    Component { id: clearancesPage; ClearancesPage { view: standing } }
    Component { id: statusPage; StatusPage { editor: StatusEditor { desk: TheDesk; book: TheBook; athleteId: athleteEditor.athleteId; recordId: TheDeskFiller.statusId(TheBook, 1) } } }
    Component { id: clearancePage; ClearancePage { editor: ClearanceEditor { desk: TheDesk; book: TheBook; athleteId: athleteEditor.athleteId; recordId: TheDeskFiller.clearanceId(TheBook, 2) } } }
    Component { id: limitsPage; LimitsPage { editor: LimitsEditor { desk: TheDesk; book: TheBook } } }
    Component { id: eccentricPage; EccentricPage { planner: ReleasePlanner { desk: TheDesk; work: deskWork } form: ReleaseForm { desk: TheDesk; work: deskWork; part: ReleaseForm.Set } view: SetupView { desk: TheDesk } } }
    Component { id: hookMeasuresPage; HookMeasuresPage { planner: ReleasePlanner { desk: TheDesk; work: deskWork } hook: ReleaseForm { desk: TheDesk; work: deskWork; part: ReleaseForm.Hook } depth: ReleaseForm { desk: TheDesk; work: deskWork; part: ReleaseForm.Depth } sides: ReleaseForm { desk: TheDesk; work: deskWork; part: ReleaseForm.Places } } }
    NumberPad {
        id: pad
        editor: athleteEditor
        key: "mass"
    }
    SayingCase {
        id: testCase

        name: "Units"

        function init() {
            testCase.reset()
            Theme.fit(root.width, root.height)
            TheDeskFiller.full(TheDesk)
            TheDeskFiller.people(TheBook, 1)
            athleteEditor.athleteId = TheDeskFiller.athleteId(TheBook, 0)
            for (const [key, digits] of [["mass", "61.5"], ["height", "172"]]) {
                pad.key = key
                for (const digit of digits)
                    pad.press(digit)
                testCase.verify(pad.keep(), pad.refusal)
            }
            athleteEditor.keep()
            deskWork.take(athleteEditor.athleteId, "1")
            deskWork.keepSetup()
        }
        function cleanup() {
            if (testCase.page)
                testCase.page.destroy()
            testCase.page = null
            units.mass = 0
            units.length = 0
            ThePreferences.language = 0
        }
        /** The page, once what it looks for is found. */
        function made(row: var): Item {
            const page = row.component.createObject(root, {width: root.width, height: root.height})
            testCase.verify(page)
            if (page.asker)
                testCase.tryVerify(() => page.asker.state === HangAsker.Proved, 20000)
            return page
        }
        function lay(row: var) {
            if (row.worn)
                TheDeskFiller.worn(TheDesk)
            else if (row.tools || row.asked)
                TheDeskFiller.tools(TheDesk)
            if (row.cleared)
                TheDeskFiller.cleared(TheBook)
            if (row.released) {
                TheDeskFiller.released(TheDesk, TheBook, true)
                deskWork.take(TheDeskFiller.athleteId(TheBook, 0), "1")
            }
            if (row.asked)
                TheDeskFiller.asked(TheDesk, 85, 97.5, true)
            if (row.tested)
                TheDeskFiller.tested(TheBook)
        }
        function test_everyPage_data() {
            return [{tag: "set-up", component: setupPage, numbers: 20}, {tag: "marks", component: marksPage, numbers: 10},
                {tag: "bar and plates", component: barPage, numbers: 4}, {tag: "kit", component: thingsPage, numbers: 3},
                {tag: "hang a chain", component: hangChain, numbers: 4}, {tag: "hang a band", component: hangBand, numbers: 4},
                {tag: "chain", component: chainPage, numbers: 6}, {tag: "band", component: bandPage, numbers: 16},
                {tag: "where a chain's number comes from", component: originOfChain, numbers: 6}, {tag: "where a band's number comes from", component: originOfBand, numbers: 3},
                {tag: "at each height", component: heightsPage, numbers: 12}, {tag: "keypad", component: keypadPage, numbers: 2}, {tag: "athlete", component: athletePage, numbers: 4},
                {tag: "bench aid", component: aidPage, numbers: 12, worn: true}, {tag: "cam machine", component: machinePage, numbers: 7, worn: true},
                {tag: "scale", component: scalePage, numbers: 5, tools: true}, {tag: "rack", component: rackPage, numbers: 4, tools: true},
                {tag: "scale in steps", component: scaleSteps, numbers: 1, tools: true}, {tag: "kit with tools", component: thingsPage, numbers: 8, tools: true},
                {tag: "bar and plates, weighed", component: barPage, numbers: 6, tools: true}, {tag: "hang by a strap", component: hangChain, numbers: 4, tools: true},
                {tag: "what to hang", component: askPage, numbers: 14, asked: true}, {tag: "what she can hold", component: pullsPage, numbers: 8, asked: true},
                {tag: "strength", component: strengthPage, numbers: 4, tested: true}, {tag: "tests of a lift", component: liftStrengthPage, numbers: 12, tested: true},
                {tag: "a test", component: testPage, numbers: 4, tested: true}, {tag: "warm-up", component: rampPage, numbers: 10, tools: true},
                {tag: "heavier on the way down", component: eccentricPage, numbers: 10, released: true}, {tag: "hook and depth", component: hookMeasuresPage, numbers: 14, released: true},
                {tag: "lifts", component: liftsPage, numbers: 1}, {tag: "set-ups", component: setupsPage, numbers: 1}]
        }
        function test_everyPage(row) {
            const metric = /\b(kg|cm|mm)\b/, imperial = /\blb\b|^in$|[0-9] in\b(?! the sticking zone| reserve)|\ba foot\b/
            testCase.lay(row)
            testCase.page = testCase.made(row)
            const before = testCase.sayings(metric)
            testCase.verify(before.length >= row.numbers, row.tag + " has numbers to show: " + before.join(" | "))
            testCase.compare(testCase.sayings(imperial), [], "in metric units")
            units.mass = 1
            units.length = 1
            // what was typed in another unit may say so
            testCase.compare(testCase.sayings(metric).filter(text => !text.includes("entered as")), [], "in pounds and inches")
            testCase.verify(testCase.sayings(imperial).length >= row.numbers, "every number is there")
            units.mass = 0
            units.length = 0
            testCase.compare(testCase.sayings(metric), before, "as it was")
        }
        function test_everyLanguage_data() {
            return testCase.test_everyPage_data()
        }
        /** What stood there in English stands there as on a page that is made anew in the other language, and back. */
        function test_everyLanguage(row) {
            testCase.lay(row)
            testCase.speaksEvery(() => testCase.made(row))
        }
        function test_chosenInPreferences() {
            testCase.page = preferencesPage.createObject(root, {width: root.width, height: root.height})
            testCase.verify(PageAudit.settle(testCase.page))
            for (const [row, option, now] of [["massUnit", "pounds", () => units.mass], ["lengthUnit", "inches", () => units.length]]) {
                const keys = testCase.targets(testCase.findChild(testCase.page, row))
                testCase.compare(now(), 0)
                testCase.tap(keys.find(key => AccessProbe.name(key).endsWith(": " + option)))
                testCase.compare(now(), 1)
            }
        }
    }
}
