// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Theme
import Steelyard.Ui

/** From the set-up to what to hang for it, and back with it hung. */
Item {
    id: root

    width: 360
    height: 720

    PageFlow {
        id: flow
        anchors.fill: parent
    }
    FlowCase {
        id: testCase

        name: "AskFlow"
        flow: flow

        function init() {
            testCase.reset()
            TheDeskFiller.tools(TheDesk)
            flow.go(flow.kitPlace)
        }
        /** Opens the page and wants these pulls there, whatever was wanted before. */
        function ask(pulls: var) {
            testCase.press("whatToHang")
            for (const place in pulls) {
                const step = testCase.shown(flow.currentItem, "step:" + place)
                if (step)
                    testCase.press("stepType", step)
                else
                    testCase.press("ask:" + place)
                testCase.keyIn(pulls[place])
                testCase.compare(flow.depth, 2, "back on the page")
            }
            testCase.found()
        }
        function found() {
            testCase.tryVerify(() => flow.currentItem.asker.state === HangAsker.Proved, 20000)
            testCase.verify(PageAudit.settle(flow))
        }
        function test_askedFoundAndHung() {
            testCase.ask({bottom: "85", top: "97.5"})
            const title = testCase.part("bestTitle").text.split("\u00a0").join(" "), load = testCase.part("load").text
            testCase.press("mainAction")
            testCase.compare(flow.depth, 1)
            testCase.compare(testCase.part("answer").text.split("\u00a0").join(" "), title)
            testCase.verify(load.includes(testCase.part("load").value), load)

            // what was wanted stays: two taps hang the best again
            testCase.press("stepUp")
            testCase.tapCount = 0
            testCase.press("whatToHang")
            testCase.found()
            testCase.press("mainAction")
            testCase.compare(testCase.tapCount, 2)
            testCase.compare(testCase.part("answer").text.split("\u00a0").join(" "), title)
        }
        function test_theOtherAnswerHangsToo() {
            testCase.ask({bottom: "85", top: "97.5"})
            const other = testCase.part("answer:1")
            const title = testCase.shown(other, "title").text
            testCase.press("take", other)
            testCase.compare(flow.depth, 1)
            testCase.compare(testCase.part("answer").text.split("\u00a0").join(" "), title)
        }
        function test_aStepAsksAnewAndLeavingKeepsTheBar() {
            const before = testCase.part("answer").text
            testCase.ask({bottom: "85", top: "97.5"})
            testCase.press("stepUp", testCase.part("step:top"))
            testCase.found()
            testCase.press("chains")
            testCase.choose("chains", "stay off")
            testCase.found()
            testCase.choose("chains", "may hang")
            testCase.press("back")
            testCase.compare(testCase.part("answer").text, before, "nothing is hung by asking")
        }
        function test_inPerCent() {
            testCase.press("whatToHang")
            testCase.choose("said", "in % of a 1RM")
            testCase.press("ask:top")
            testCase.keyIn("87.5")
            testCase.compare(testCase.part("found").text, "The 1RM comes first")
            testCase.press("maximum")
            testCase.keyIn("110")
            testCase.found()
            testCase.verify(testCase.part("step:top").value.includes("96.3"), testCase.part("step:top").value)
            testCase.press("mainAction")
            testCase.compare(flow.depth, 1)
        }
        /** Her pulls are keyed on their own page, and the answer comes with its picture. */
        function test_levelWithHerStrength() {
            testCase.ask({bottom: "75", top: "97.5"})
            testCase.choose("level", "as level as it goes")
            testCase.tryVerify(() => flow.currentItem.asker.state === HangAsker.Refused, 20000)
            testCase.press("pulls")
            testCase.compare(flow.depth, 3)
            for (const [height, kg] of [["75", "118"], ["100", "126"], ["130", "171"]]) {
                testCase.press("field:height")
                testCase.keyIn(height)
                testCase.keyIn(kg)
                testCase.press("mainAction")
            }
            testCase.compare(testCase.part("counts").text, "3 pulls at 3 heights")
            testCase.press("back")
            testCase.found()
            testCase.verify(testCase.part("levelSentence").text.includes("plain iron"))
            testCase.verify(testCase.part("levelPicture").pulls.chart.series.heavy.count > 10)
            testCase.verify(testCase.part("why").text !== "")
            testCase.press("pulls")
            testCase.press("pull:0")
            testCase.press("out")
            testCase.compare(testCase.part("counts").text, "2 pulls at 2 heights")
            testCase.press("back")
            testCase.tryVerify(() => flow.currentItem.asker.state === HangAsker.Refused, 20000)
        }
        function test_leftOut() {
            testCase.ask({bottom: "85", top: "97.5"})
            for (const place of ["bottom", "top"]) {
                testCase.press("stepType", testCase.part("step:" + place))
                testCase.press("leaveEmpty")
            }
            testCase.compare(flow.currentItem.asker.state, HangAsker.Idle)
            testCase.compare(testCase.shown(flow.currentItem, "mainAction"), null)
        }
    }
}
