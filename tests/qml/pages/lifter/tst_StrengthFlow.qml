// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Ui

/** From an athlete to her tests and back, and from the set-up to per cent and warm-up. */
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

        name: "StrengthFlow"
        flow: flow

        function init() {
            testCase.reset()
            TheDeskFiller.tools(TheDesk)
            TheDeskFiller.people(TheBook, 2)
            flow.go(flow.squadPlace)
        }
        function openLift() {
            testCase.press("athlete:" + TheDeskFiller.athleteId(TheBook, 0))
            testCase.press("strength")
            testCase.press("strength:1")
        }
        /** A set is keyed with its range in sight, kept, put right, and taken out. */
        function test_aTestIsKeptPutRightAndTakenOut() {
            testCase.openLift()
            testCase.verify(testCase.part("none").visible)
            testCase.press("mainAction")
            testCase.press("field:load")
            testCase.keyIn("100")
            const reps = testCase.part("reps")
            testCase.press("more", reps)
            testCase.compare(testCase.shown(reps, "said").text, "5")
            testCase.choose("reserve", "1")
            testCase.verify(testCase.part("follows").text.startsWith("Her 1RM: "), testCase.part("follows").text)
            testCase.press("mainAction")
            testCase.compare(flow.depth, 4)
            testCase.verify(testCase.part("counts").text.endsWith("kg"))
            testCase.verify(testCase.part("ranges").visible)

            testCase.press("open:0")
            testCase.press("more", testCase.part("reps"))
            testCase.press("mainAction")
            testCase.verify(testCase.part("open:0").label.includes("× 6"), testCase.part("open:0").label)

            testCase.press("open:0")
            testCase.press("throw")
            testCase.compare(flow.depth, 4)
            testCase.verify(testCase.part("none").visible)
            testCase.press("undoLast")
            testCase.verify(testCase.part("open:0").visible)
        }
        /** Half typed and left, it is there again. */
        function test_halfTypedItWaits() {
            testCase.openLift()
            testCase.press("mainAction")
            testCase.press("field:load")
            testCase.keyIn("80")
            testCase.press("back")
            testCase.press("mainAction")
            testCase.compare(testCase.part("field:load").value, "80")
            testCase.press("throw")
            testCase.compare(testCase.part("field:load").value, "not entered")
        }
        function test_fromTheSetUp() {
            TheDeskFiller.tested(TheBook)
            testCase.press("athlete:" + TheDeskFiller.athleteId(TheBook, 0))
            testCase.press("lifts")
            testCase.press("lift:1")
            testCase.press("mainAction")
            testCase.verify(testCase.part("percent").value.endsWith("%"), testCase.part("percent").value)
            testCase.press("percent")
            testCase.verify(testCase.part("counts").visible)
            testCase.press("back")
            testCase.press("ramp")
            testCase.press("changeShares")
            const before = testCase.shown(testCase.part("share:0"), "said").text
            testCase.press("more", testCase.part("share:0"))
            testCase.verify(testCase.shown(testCase.part("share:0"), "said").text !== before)
            testCase.choose("place", "At the top")
            testCase.press("back")
            testCase.compare(flow.depth, 1)
        }
    }
}
