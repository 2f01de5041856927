// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Measure
import Steelyard.Theme

/** On a step's page the keys are in sight at once, whatever the form and the text: nobody scrolls to key a number. */
Item {
    id: root

    width: 1280
    height: 1000

    DeskWork {
        id: deskWork
        desk: TheDesk
        book: TheBook
    }
    Component {
        id: marksRun
        MarksRunPage { run: MarksRun { form: MarksEditor { desk: TheDesk } work: deskWork } }
    }
    Component {
        id: chainSteps
        ChainStepsPage { steps: ChainGuide { form: ChainEditor { desk: TheDesk; book: TheBook } } }
    }
    Component {
        id: bandSteps
        BandStepsPage { steps: BandGuide { form: BandEditor { desk: TheDesk; book: TheBook } } }
    }
    Component {
        id: aidSteps
        AidStepsPage { steps: AidGuide { form: AidEditor { desk: TheDesk; book: TheBook } } }
    }
    Component {
        id: scaleSteps
        ToolStepsPage { steps: ToolGuide { form: ScaleEditor { desk: TheDesk; book: TheBook } } }
    }
    Component {
        id: ironSteps
        ToolStepsPage { steps: ToolGuide { form: IronEditor { desk: TheDesk; book: TheBook } } }
    }
    ControlCase {
        id: testCase

        name: "StepKeys"

        function make(component: Component, numbers: var): Item {
            const page = createTemporaryObject(component, root, {width: Theme.pageWidth, height: Theme.pageHeight})
            page.width = Qt.binding(() => Theme.pageWidth)
            page.height = Qt.binding(() => Theme.pageHeight)
            if (component === marksRun) {
                TheDeskFiller.squad(TheBook, 3)
                deskWork.take(TheDeskFiller.athleteId(TheBook, 0), "1")
                page.run.start()
                for (const key of numbers)
                    page.pad.press(key)
                return page
            }
            page.steps.form.throwDraft()
            page.steps.resume()
            for (const number of numbers) {
                if (number === "")
                    page.steps.next()
                else if (number === "weigh")
                    page.steps.choose(false)
                else {
                    for (const key of number)
                        page.pad.press(key)
                    page.goOn()
                }
            }
            return page
        }
        function all(item: Item, name: string): var {
            let found = item.objectName === name && item.visible ? [item] : []
            for (const child of childrenOf(item))
                if (child.visible)
                    found = found.concat(all(child, name))
            return found
        }
        function inSight(page: Item, name: string, tag: string) {
            const found = all(page, name)
            compare(found.length, 1, `${tag}: ${name}`)
            const at = found[0].mapToItem(page, 0, 0, found[0].width, found[0].height)
            verify(at.y >= 0 && at.y + at.height <= page.height, `${tag}: ${name} at ${at}`)
            // nor under the key that stays at the foot
            const main = all(page, "mainAction")[0].mapToItem(page, 0, 0)
            if (name !== "mainAction" && at.x + at.width > main.x)
                verify(at.y + at.height <= main.y + 1, `${tag}: ${name} ends at ${at.y + at.height}, the foot begins at ${main.y}`)
        }
        function test_keysAreInSight_data() {
            return [{tag: "chain", component: chainSteps, numbers: ["weigh", "180"]},
                {tag: "chain's scale", component: chainSteps, numbers: ["weigh", "180", "10.3"]},
                {tag: "band at rest", component: bandSteps, numbers: [""]},
                {tag: "band, where next", component: bandSteps, numbers: ["", "50", "5", "62.5", "10", "76", "14", "92"]},
                {tag: "aid by hand", component: aidSteps, numbers: [""]},
                {tag: "scale", component: scaleSteps, numbers: [""]},
                {tag: "marks in a row", component: marksRun, numbers: []},
                {tag: "marks in a row, keyed", component: marksRun, numbers: ["7", "8"]}]
        }
        function test_keysAreInSight(row) {
            const page = make(row.component, row.numbers)
            for (const form of [forms[0], forms[2], forms[3], {tag: "small tablet", width: 1024, height: 768}])
                for (const factor of Theme.textFactors) {
                    Theme.fit(form.width, form.height)
                    Theme.textFactor = factor
                    waitForRendering(page, 50)
                    const tag = `${form.tag}, text ${factor}`
                    for (const name of ["keyNumber", "mainAction", "key 1", "key 9", "key 0", "key rub"])
                        inSight(page, name, tag)
                    if (page.footBeside && factor === 1)
                        verify(!page.overflowing, `${tag}: nothing to scroll for: ${page.bodyView.contentHeight} in ${page.bodyView.height}`)
                }
        }
        function test_endingIsInReach() {
            const page = make(bandSteps, ["", "50", "5", "62.5", "10", "76", "14", "92"])
            waitForRendering(page, 50)
            inSight(page, "goFor", "phone")
            const enough = all(page, "enough")[0], at = enough.mapToItem(page, 0, 0, enough.width, enough.height)
            verify(at.y + at.height <= all(page, "key 1")[0].mapToItem(page, 0, 0).y, "that is enough, at " + at)
        }
        function test_refusalMovesNoKey() {
            const page = make(chainSteps, ["weigh"])
            for (const form of [forms[0], forms[3]])
                for (const factor of [1, 2]) {
                    Theme.fit(form.width, form.height)
                    Theme.textFactor = factor
                    page.pad.press("rub")
                    waitForRendering(page, 50)
                    const before = all(page, "key 1")[0].mapToItem(page, 0, 0)
                    page.goOn()
                    waitForRendering(page, 50)
                    verify(page.pad.refusal !== "", "an empty number is refused")
                    compare(all(page, "key 1")[0].mapToItem(page, 0, 0), before, form.tag + ", text " + factor)
                    verify(saying(page, page.pad.refusal) !== null, "and it is said")
                    page.pad.press("1")
                    page.pad.press("rub")
                }
        }
        function test_beginStandsAtTheFoot() {
            for (const component of [bandSteps, aidSteps, scaleSteps]) {
                reset()
                const page = make(component, [])
                for (const factor of Theme.textFactors) {
                    Theme.textFactor = factor
                    waitForRendering(page, 50)
                    inSight(page, "mainAction", "text " + factor)
                }
                Theme.textFactor = 1
                waitForRendering(page, 50)
                tap(all(page, "mainAction")[0])
                verify(page.asks, "and it begins")
            }
        }
        function test_choiceGoesWhileThePageTurns() {
            // the keys of the choice go at the moment the numbers' keys come beside the body
            for (let round = 0; round < 6; ++round) {
                reset()
                Theme.fit(forms[3].width, forms[3].height)
                const page = make(ironSteps, [])
                waitForRendering(page, 50)
                tap(all(page, "choose:1")[0])
                waitForRendering(page, 50)
                compare(all(page, "choose:1").length, 0)
                inSight(page, "key 1", "round " + round)
                page.destroy()
                wait(1)
            }
        }
        function test_scaleThatIsNotGoodIsACaution() {
            const page = make(scaleSteps, ["", "0.1", "0.1", "20", "19.2"])
            waitForRendering(page, 50)
            const words = all(page, "notGood")
            compare(words.length, 1)
            verify(words[0].head.startsWith("Not good"), words[0].head)
            compare(all(page, "answer").length, 0)
        }
    }
}
