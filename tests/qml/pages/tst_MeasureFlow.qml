// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Ui

/** Measuring on site by finger: each step to the next, back, away and on again, to what is kept. */
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

        name: "MeasureFlow"
        flow: flow

        function init() {
            testCase.reset()
            TheDeskFiller.full(TheDesk)
            flow.go(flow.kitPlace)
        }
        function test_a_chain_in_steps() {
            testCase.press("hangMore")
            testCase.press("newChain")
            testCase.press("byWeight")
            testCase.keyIn("180")
            testCase.keyIn("10.3")
            // back and on again: what was keyed stands
            testCase.press("back")
            testCase.compare(testCase.part("keyNumber").text, "10.3")
            testCase.press("mainAction")
            testCase.keyIn("0.1")
            testCase.compare(testCase.shown(flow.currentItem, "link"), null, "weighed, it has no link")
            testCase.press("mainAction")
            testCase.compare(flow.depth, 2)
            testCase.verify(testCase.part("item:4").how.includes("5.72"), testCase.part("item:4").how)
            testCase.compare(testCase.part("newChain").fact, "", "nothing is half done any more")
        }
        function test_a_chain_left_half_way_goes_on_where_it_was() {
            testCase.press("hangMore")
            testCase.press("newChain")
            testCase.press("byLink")
            testCase.keyIn("180")
            testCase.keyIn("16")
            testCase.press("later")
            testCase.verify(testCase.part("newChain").fact.length > 0)
            testCase.press("newChain")
            testCase.verify(flow.currentItem.heading.includes("long"), flow.currentItem.heading)
            testCase.compare(testCase.part("keyNumber").text, "")
            testCase.keyIn("48")
            testCase.keyIn("19.5")
            testCase.part("gain")
            testCase.part("link")
        }
        function test_a_band_in_steps() {
            testCase.press("hangMore")
            testCase.press("newBand")
            testCase.press("accept")
            testCase.keyIn("50")
            for (const hanging of [["4", "62"], ["9", "75"]]) {
                testCase.part("goFor")
                testCase.keyIn(hanging[0])
                testCase.keyIn(hanging[1])
            }
            // a length that cannot be: said, and not taken
            testCase.keyIn("20")
            testCase.keyIn("49")
            testCase.verify(testCase.part("keyNumber").refusal.includes("At rest"))
            testCase.press("later")
            testCase.press("newBand")
            testCase.verify(flow.currentItem.under.includes("3"), "the third hanging waits for its length")
            testCase.keyIn("110")
            if (!testCase.shown(flow.currentItem, "more"))
                testCase.press("enough")
            testCase.part("fit")
            testCase.press("comeOff")
            testCase.keyIn("9")
            testCase.keyIn("77")
            testCase.press("enough")
            testCase.press("mainAction")
            testCase.compare(flow.depth, 2)
            testCase.verify(testCase.part("item:3").what.includes("50 cm"), testCase.part("item:3").what)
        }
        function test_an_odd_hanging_is_named_in_the_steps() {
            testCase.press("hangMore")
            testCase.press("measure", testCase.part("item:1"))
            testCase.press("accept")
            for (const number of ["52", "2.5", "68.4", "5", "82.9", "7.5", "97.8", "10", "117", "12.5", "124"]) {
                if (testCase.shown(flow.currentItem, "more"))
                    testCase.press("more")
                testCase.keyIn(number)
            }
            if (testCase.shown(flow.currentItem, "more"))
                testCase.press("more")
            for (const number of ["15", "137.4"])
                testCase.keyIn(number)
            testCase.part("odd")
            testCase.press("readAgain")
            testCase.compare(testCase.part("keyNumber").text, "117")
            testCase.keyIn("110.6")
            testCase.compare(testCase.shown(flow.currentItem, "odd"), null)
        }
        function test_measured_again_or_left_as_it_was() {
            testCase.press("hangMore")
            const before = testCase.part("item:3").how
            testCase.press("measure", testCase.part("item:3"))
            testCase.press("byWeight")
            testCase.keyIn("80")
            testCase.keyIn("5")
            testCase.keyIn("0.05")
            testCase.part("drift")
            testCase.press("throw")
            testCase.compare(testCase.part("item:3").how, before)
        }
    }
}
