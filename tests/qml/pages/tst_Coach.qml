// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Ui

/** A coach who does what has to be done between two sets, and counts how often the glass is touched. */
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

        name: "Coach"
        flow: flow

        function init() {
            testCase.reset()
            TheDeskFiller.full(TheDesk)
            TheDeskFiller.squad(TheBook, 26)
            flow.go(flow.kitPlace)
            testCase.tapCount = 0
        }
        function taps(most: int, what: string) {
            testCase.verify(testCase.tapCount <= most, what + " took " + testCase.tapCount + " taps, " + most + " are meant")
            testCase.tapCount = 0
        }
        function seen(name: string) {
            const item = testCase.part(name), at = item.mapToItem(flow, 0, 0)
            testCase.verify(at.y >= 0 && at.y + item.height <= flow.height, name + " is in sight without scrolling")
        }
        function place(name: string) {
            for (const key of testCase.targets(flow.currentItem))
                if (AccessProbe.name(key) === name) {
                    testCase.push(key)
                    return
                }
            testCase.fail("no place " + name)
        }
        function test_aStepOfTheLoadIsOneTap() {
            const before = testCase.part("load").value
            testCase.seen("stepUp")
            testCase.press("stepUp")
            testCase.verify(testCase.part("load").value !== before)
            testCase.taps(1, "a step")
        }
        function test_anotherLoadIsKeyedInItsDigitsAndTwo() {
            testCase.press("stepType")
            testCase.keyIn("60")
            testCase.compare(testCase.part("load").value, "60 kg")
            testCase.taps(4, "another load")
        }
        function test_howHeavyThereIsOneTapAndOneAStep() {
            TheDeskFiller.tools(TheDesk)
            testCase.press("readHigher")
            testCase.verify(testCase.part("picture").readingText !== "")
            testCase.taps(1, "how heavy at a height")
        }
        function test_anyOfTwentySixIsThree() {
            testCase.place("Squad")
            const id = TheDeskFiller.athleteId(TheBook, 25), keys = testCase.targets(testCase.part("letters"))
            testCase.push(keys[Math.floor(25 / 6)])
            testCase.seen("athlete:" + id)
            testCase.press("athlete:" + id)
            testCase.compare(testCase.part("name").text, "Zoe X.")
            testCase.taps(3, "any of 26")
        }
        function test_undoIsOne() {
            testCase.place("Squad")
            testCase.press("add")
            testCase.part("name").field.forceActiveFocus()
            for (const key of "Zed")
                testCase.keyClick(key)
            testCase.press("mainAction")
            testCase.press("back")
            testCase.tapCount = 0
            testCase.seen("undoLast")
            testCase.press("undoLast")
            testCase.tryVerify(() => testCase.saying(flow.currentItem, "Zed") === null)
            testCase.taps(1, "undo")
        }
        function test_whatIsHungIsSeenWithoutATap() {
            // who, the load, the answer and whether it is ready
            TheDeskFiller.tools(TheDesk)
            for (const name of ["answer", "load", "state"])
                testCase.seen(name)
            testCase.taps(0, "to see what hangs")
        }
        /** From nothing to a first number: marks of a lifter, plates as they are, a minute at a second and a half a tap. */
        function test_aFirstAnswerInAMinute() {
            TheDeskFiller.empty(TheDesk)
            testCase.press("marks")
            testCase.press("field:bottom")
            testCase.keyIn("77")
            testCase.keyIn("127")
            testCase.press("mainAction")
            testCase.press("stepType")
            testCase.keyIn("60")
            testCase.verify(testCase.part("answer").text.includes("60"), testCase.part("answer").text)
            testCase.taps(40, "a first answer")
        }
    }
}
