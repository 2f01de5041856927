// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Measure

/** The pages of bench aid and cam machine in their main states, through the checker. */
Item {
    id: root

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
        id: whatPage
        MeasureWhatPage { view: MeasureWhat { desk: TheDesk } }
    }
    Component {
        id: aidSteps
        AidStepsPage { steps: AidGuide { form: AidEditor { desk: TheDesk; book: TheBook } } }
    }
    Component {
        id: machineSteps
        MachineStepsPage { steps: MachineGuide { form: MachineEditor { desk: TheDesk; book: TheBook } } }
    }
    Component {
        id: aidPage
        AidPage { editor: AidEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 0) } }
    }
    Component {
        id: machinePage
        MachinePage { editor: MachineEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 1) } }
    }
    Component {
        id: newMachine
        MachinePage { editor: MachineEditor { desk: TheDesk } }
    }
    Component {
        id: hangAid
        HangPage { editor: HangEditor { desk: TheDesk; row: 0 } }
    }
    Component {
        id: setupPage
        SetupPage { view: SetupView { desk: TheDesk } work: deskWork; places: ["Squad", "Kit"]; place: 1 }
    }
    Component {
        id: thingsPage
        ThingsPage { view: KitView { desk: TheDesk; book: TheBook } work: deskWork }
    }
    ControlCase {
        id: testCase

        name: "ReadingPages"

        function cleanup() {
            checker.clear()
        }
        /** From the beginning: keys each number in its step; "" goes on from the first page, "radius" and "pull" choose there. */
        function step(page: Item, numbers: var) {
            page.steps.form.throwDraft()
            page.steps.resume()
            for (const number of numbers) {
                if (number === "")
                    page.steps.next()
                else if (number === "radius" || number === "pull")
                    page.steps.choose(number === "pull")
                else {
                    for (const key of number)
                        page.pad.press(key)
                    page.goOn()
                }
            }
        }
        function test_page_data() {
            const aid = ["", "0", "31", "62.5", "0"], cam = ["radius", "40", "0", "8.1", "120", "8.8"]
            return [{tag: "what to measure", component: whatPage},
                {tag: "kit with aid and machine", component: thingsPage},
                {tag: "aid steps, caution", component: aidSteps, setup: page => testCase.step(page, [])},
                {tag: "aid steps, first mass", component: aidSteps, setup: page => testCase.step(page, [""])},
                {tag: "aid steps, height", component: aidSteps, setup: page => testCase.step(page, ["", "0"])},
                {tag: "aid steps, where next", component: aidSteps, setup: page => testCase.step(page, aid)},
                {tag: "aid steps, odd", component: aidSteps, setup: page => testCase.step(page, [...aid, "20", "12", "4", "6"])},
                {tag: "aid steps, result", component: aidSteps, setup: page => { testCase.step(page, [...aid, "41", "5", "22.5", "11"]); page.steps.enough() }},
                {tag: "aid on one page", component: aidPage},
                {tag: "aid worn", component: hangAid},
                {tag: "set-up with an aid", component: setupPage},
                {tag: "machine steps, how", component: machineSteps, setup: page => testCase.step(page, [])},
                {tag: "machine steps, stack", component: machineSteps, setup: page => testCase.step(page, ["radius"])},
                {tag: "machine steps, angle", component: machineSteps, setup: page => testCase.step(page, cam)},
                {tag: "machine steps, radius", component: machineSteps, setup: page => testCase.step(page, [...cam, "60"])},
                {tag: "machine steps, result", component: machineSteps, setup: page => testCase.step(page, [...cam, "60", "12.3", "30", "10.6", "90", "11.2"])},
                {tag: "machine steps, travel", component: machineSteps, setup: page => testCase.step(page, ["pull", "40", "0.5"])},
                {tag: "machine steps, pull", component: machineSteps, setup: page => testCase.step(page, ["pull", "40", "0.5", "0"])},
                {tag: "machine on one page", component: machinePage},
                {tag: "machine, empty", component: newMachine}]
        }
        function test_page(row) {
            TheDeskFiller.worn(TheDesk)
            checker.check({name: row.tag, component: row.component, setup: row.setup})
        }
    }
}
