// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Ui

/** A bench aid and a cam machine by finger: measured in steps, kept, worn in a set-up, measured again and put right. */
Item {
    id: root

    width: 360
    height: 720

    PageFlow {
        id: flow
        anchors.fill: parent
        focus: true
    }
    FlowCase {
        id: testCase

        name: "ReadingFlow"
        flow: flow

        function init() {
            testCase.reset()
            TheDeskFiller.worn(TheDesk)
            flow.go(flow.kitPlace)
        }
        function keyAll(numbers: var) {
            for (const number of numbers)
                testCase.keyIn(number)
        }
        function test_an_aid_in_steps() {
            testCase.press("hangMore")
            testCase.measureNew("aid")
            testCase.press("mainAction")
            testCase.verify(testCase.part("goFor").text.includes("begins to help"))
            testCase.keyAll(["0", "30", "60", "0"])
            // away and on again
            testCase.press("later")
            testCase.verify(testCase.part("newOther").fact.length > 0)
            testCase.press("newOther")
            testCase.compare(testCase.part("kind:aid").fact, "begun, not kept")
            testCase.press("kind:aid")
            testCase.verify(flow.currentItem.under.includes("3"), flow.currentItem.under)
            testCase.keyAll(["40", "10", "20", "20"])
            testCase.part("fit")
            testCase.press("mainAction")
            testCase.compare(flow.depth, 2)
            testCase.compare(testCase.part("newOther").fact, "", "nothing is half done any more")
            testCase.compare(testCase.part("item:2").what, "Bench aid")
            testCase.verify(testCase.part("item:2").how.startsWith("helps 60 ± 4 kg at the chest"), testCase.part("item:2").how)
            testCase.verify(testCase.part("item:2").how.includes("due in 17 weeks"))
        }
        function test_an_odd_reading_left_out() {
            testCase.press("hangMore")
            testCase.measureNew("aid")
            testCase.press("mainAction")
            testCase.keyAll(["0", "30", "60", "0", "20", "20", "4", "10"])
            testCase.verify(testCase.part("odd").head.includes("Reading 4"), testCase.part("odd").head)
            testCase.press("leaveOut")
            testCase.compare(testCase.shown(flow.currentItem, "odd"), null)
            testCase.keyAll(["40", "10"])
            if (!testCase.shown(flow.currentItem, "fit"))
                testCase.press("enough")
            testCase.verify(testCase.part("mainAction").enabled)
        }
        function test_a_machine_by_its_radius() {
            testCase.press("hangMore")
            testCase.measureNew("machine")
            testCase.press("byRadius")
            testCase.keyAll(["40", "0", "8.1", "120", "8.8", "60", "12.3"])
            // back and on again: what was keyed stands
            testCase.press("back")
            testCase.compare(testCase.part("keyNumber").text, "12.3")
            testCase.press("mainAction")
            testCase.keyAll(["30", "10.6", "90", "11.2"])
            testCase.verify(testCase.part("answer").text.includes("N·m at 60°"), testCase.part("answer").text)
            testCase.verify(testCase.part("comesTo").text.includes("Friction"))
            testCase.press("mainAction")
            testCase.verify(testCase.part("item:2").how.startsWith("up to 48"), testCase.part("item:2").how)
            // it stands by itself: a tap measures it again
            testCase.press("thing", testCase.part("item:2"))
            testCase.part("byPull")
        }
        function test_a_machine_by_its_pull() {
            testCase.press("hangMore")
            testCase.press("measure", testCase.part("item:2"))
            testCase.press("byPull")
            testCase.keyAll(["40", "0.5", "0", "31.5", "50", "30.5", "25", "39", "12.5", "36", "37.5", "37"])
            testCase.verify(testCase.part("answer").text.includes("Pulls up to 39"), testCase.part("answer").text)
            testCase.press("mainAction")
            testCase.verify(testCase.part("item:2").how.startsWith("pulls up to 39"), testCase.part("item:2").how)
        }
        function test_an_aid_worn() {
            testCase.compare(testCase.part("state").text, "NOT READY")
            testCase.verify(testCase.part("caution:3").points[0].includes("82.5") || testCase.part("caution:3").points[0].includes("83"), testCase.part("caution:3").points[0])
            testCase.press("caution:3")
            testCase.compare(testCase.part("state").text, "READY")
            testCase.press("hung:0")
            testCase.compare(testCase.shown(flow.currentItem, "sides"), null)
            testCase.part("worn")
            // the chest where nothing was read below it
            testCase.press("field:chest")
            testCase.keyIn("70")
            testCase.press("mainAction")
            testCase.compare(testCase.part("state").text, "NOT READY")
            testCase.press("hung:0")
            testCase.press("takeOff")
            testCase.compare(testCase.part("state").text, "READY")
            testCase.press("hangMore")
            testCase.press("thing", testCase.part("item:1"))
            testCase.press("mainAction")
            testCase.part("caution:3")
        }
        function test_a_measuring_put_right() {
            testCase.press("hangMore")
            testCase.press("measure", testCase.part("item:1"))
            testCase.press("form")
            testCase.press("measurements")
            testCase.verify(testCase.part("dated:0").value.includes("4 heights"), testCase.part("dated:0").value)
            testCase.press("dated:0")
            testCase.verify(!testCase.part("mainAction").enabled, "nothing is changed yet")
            testCase.press("mass", testCase.part("reading:1"))
            testCase.keyIn("60")
            testCase.verify(testCase.part("changes").text.length > 0)
            testCase.press("mainAction")
            testCase.verify(testCase.part("dated:0").hint.includes("at first"), testCase.part("dated:0").hint)
        }
        function test_out_of_use() {
            testCase.press("hangMore")
            testCase.press("measure", testCase.part("item:1"))
            testCase.press("inspect")
            testCase.choose("fault", "cut")
            testCase.press("mainAction")
            testCase.press("back")
            testCase.compare(testCase.part("state").text, "DO NOT LIFT")
        }
    }
}
