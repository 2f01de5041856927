// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Theme
import Steelyard.Ui

/** From a set-up to a heavier way down, and back with its bar hung. */
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

        name: "EccentricFlow"
        flow: flow

        function init() {
            testCase.reset()
        }
        /** At the set-up of the first of the people, with all measured or nothing planned. */
        function begin(planned: bool, cleared: bool) {
            TheDeskFiller.released(TheDesk, TheBook, cleared)
            const her = TheDeskFiller.athleteId(TheBook, 0)
            flow.go(flow.kitPlace)
            flow.currentItem.work.take(her, "1")
            testCase.verify(PageAudit.settle(flow))
            testCase.press("release")
            testCase.compare(flow.depth, 2)
            if (!planned) {
                testCase.press("throw")
                testCase.verify(!flow.currentItem.planner.planned)
            }
        }
        function test_askedAndHung() {
            testCase.begin(true, true)
            const before = testCase.part("title").text
            testCase.verify(before.startsWith("70"), before)
            testCase.press("stepUp", testCase.part("step:up"))
            testCase.verify(testCase.part("title").text.startsWith("72.5"), testCase.part("title").text)
            testCase.verify(testCase.part("oneSide").text.endsWith("do not press, ride to the safeties."))
            testCase.compare(testCase.part("state").text, "Not ready: hang this bar first")
            testCase.press("mainAction")
            testCase.compare(flow.depth, 1)
            testCase.verify(testCase.part("load").value.includes("72.5"), testCase.part("load").value)
            testCase.verify(testCase.part("release").value.includes("72.5"), testCase.part("release").value)
            testCase.press("release")
            testCase.compare(testCase.part("state").text, "Look the cautions over first")
            testCase.press("accept", testCase.part("caution:4"))
            testCase.compare(testCase.part("state").text, "Ready")
            // another bar on the set-up page is not the one that she may lower
            testCase.press("back")
            testCase.compare(testCase.part("state").text, "READY")
            testCase.press("stepUp")
            testCase.compare(testCase.part("state").text, "NOT READY")
            testCase.compare(testCase.part("release").hint, "Not ready: hang this bar first")
        }
        function test_notWithoutClearance() {
            testCase.begin(true, false)
            testCase.verify(testCase.part("gateStop").head === "Not cleared: eccentric overload")
            testCase.compare(testCase.shown(flow.currentItem, "mainAction"), null)
            testCase.compare(testCase.shown(flow.currentItem, "state"), null)
            testCase.press("back")
            testCase.verify(testCase.part("release").stop)
        }
        /** From nothing: the way, what is asked, then each length where it is wanted. */
        function test_begunAndMeasured() {
            testCase.begin(false, true)
            testCase.choose("way", "release hooks")
            testCase.verify(testCase.part("title").text.startsWith("Weigh one hook"), testCase.part("title").text)
            testCase.press("measures")
            testCase.compare(flow.depth, 3)
            // what is needed comes one after the other, without a way back to the page
            for (const [key, all] of [["frame", ["3.2", "25", "12"]], ["rep:0", ["77", "78", "76"]], ["spacing", ["160"]]]) {
                testCase.press("field:" + key)
                for (const digits of all)
                    testCase.keyIn(digits)
                testCase.compare(flow.depth, 3)
            }
            testCase.verify(testCase.part("freeAt").text.includes("free at"), testCase.part("freeAt").text)
            testCase.verify(testCase.part("drawing").visible)
            testCase.press("mainAction")
            testCase.compare(flow.depth, 2)
            testCase.verify(testCase.part("hookLength").text.includes("or longer"))
            testCase.press("throw")
            testCase.press("back")
            testCase.compare(testCase.part("release").value, "no")
        }
        function test_keyed() {
            testCase.begin(true, true)
            testCase.press("stepType", testCase.part("step:down"))
            testCase.keyIn("112.5")
            testCase.compare(flow.depth, 2)
            testCase.compare(testCase.part("step:down").value, "112.5 %")
            testCase.choose("base", "the way up")
            testCase.verify(testCase.part("step:down").value.startsWith("160"), testCase.part("step:down").value)
            testCase.choose("said", "as loads")
            testCase.verify(testCase.part("step:down").value.includes("kg"), testCase.part("step:down").value)
        }
    }
}
