// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Theme
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
            testCase.measureNew("chain")
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
            testCase.compare(testCase.part("newOther").fact, "", "nothing is half done any more")
        }
        /** What is left of the time for measuring once the taps are done, at a second and a half each with chalk on the hands (our choice). */
        function secondsLeft(whole: int): real {
            return whole - 1.5 * testCase.tapCount
        }
        function test_a_chain_leaves_a_minute_for_tape_and_scale() {
            testCase.press("hangMore")
            testCase.tapCount = 0
            testCase.measureNew("chain")
            testCase.press("byWeight")
            testCase.keyIn("180")
            testCase.keyIn("10.3")
            testCase.keyIn("0.1")
            testCase.press("mainAction")
            testCase.part("item:4")
            testCase.verify(testCase.secondsLeft(90) >= 60, testCase.tapCount + " taps")
        }
        function test_a_band_pair_leaves_twenty_seconds_a_hanging() {
            testCase.press("hangMore")
            testCase.tapCount = 0
            testCase.measureNew("band")
            testCase.press("mainAction")
            testCase.keyIn("50")
            const hangings = [["5", "61.5"], ["10", "73.2"], ["15", "85.8"], ["20", "99"], ["25", "113.1"], ["30", "128"]]
            for (const hanging of hangings) {
                if (testCase.shown(flow.currentItem, "more"))
                    testCase.press("more")
                testCase.keyIn(hanging[0])
                testCase.keyIn(hanging[1])
            }
            if (!testCase.shown(flow.currentItem, "more"))
                testCase.press("enough")
            testCase.press("mainAction")
            testCase.verify(testCase.secondsLeft(240) >= 20 * hangings.length, testCase.tapCount + " taps")
        }
        function test_the_largest_text_leaves_the_key_that_goes_on_in_sight() {
            Theme.textFactor = 2
            testCase.press("hangMore")
            testCase.measureNew("band")
            testCase.press("mainAction")
            testCase.part("keyNumber")
            PageAudit.settle(flow)
            const next = testCase.part("mainAction"), at = next.mapToItem(flow, 0, 0)
            testCase.verify(at.y >= 0 && at.y + next.height <= flow.height, "NEXT stands at " + at.y)
            testCase.keyIn("50")
            Theme.textFactor = 1
        }
        function test_a_chain_left_half_way_goes_on_where_it_was() {
            testCase.press("hangMore")
            testCase.measureNew("chain")
            testCase.press("byLink")
            testCase.keyIn("180")
            testCase.keyIn("16")
            testCase.press("later")
            testCase.verify(testCase.part("newOther").fact.length > 0)
            testCase.measureNew("chain")
            testCase.verify(flow.currentItem.heading.includes("long"), flow.currentItem.heading)
            testCase.compare(testCase.part("keyNumber").text, "")
            testCase.keyIn("48")
            testCase.keyIn("19.5")
            testCase.part("gain")
            testCase.part("link")
        }
        function test_a_band_in_steps() {
            testCase.press("hangMore")
            testCase.measureNew("band")
            testCase.press("mainAction")
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
            testCase.measureNew("band")
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
            testCase.press("mainAction")
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
        function test_out_of_use_and_back() {
            testCase.press("hangMore")
            testCase.press("measure", testCase.part("item:3"))
            testCase.press("inspect")
            testCase.verify(!testCase.part("mainAction").enabled, "it is said what was found, first")
            testCase.verify(flow.currentItem.heading.startsWith("Look over: "), flow.currentItem.heading)
            testCase.verify(!testCase.part("fault").options.includes("cut"), "a chain is not cut")
            testCase.choose("fault", "worn link")
            testCase.press("mainAction")
            testCase.verify(testCase.part("item:3").how.includes("out of use"), testCase.part("item:3").how)
            testCase.press("back")
            testCase.compare(testCase.part("state").text, "DO NOT LIFT")
            testCase.press("hangMore")
            // tapping it hangs nothing
            testCase.press("thing", testCase.part("item:3"))
            testCase.verify(flow.currentItem.under.includes("worn link"), flow.currentItem.under)
            testCase.press("mainAction")
            testCase.verify(!testCase.part("item:3").how.includes("out of use"))
        }
        function test_nothing_wrong_is_kept_with_its_day() {
            testCase.press("hangMore")
            testCase.press("measure", testCase.part("item:3"))
            testCase.press("inspect")
            testCase.choose("fault", "nothing wrong")
            testCase.compare(testCase.part("mainAction").text, "FIT FOR USE")
            testCase.press("mainAction")
            testCase.verify(!testCase.part("item:3").how.includes("out of use"))
            testCase.press("measure", testCase.part("item:3"))
            testCase.press("inspect")
            testCase.verify(flow.currentItem.under.includes("nothing wrong"), flow.currentItem.under)
        }
        function test_a_twin_compared() {
            testCase.press("hangMore")
            testCase.press("measure", testCase.part("item:2"))
            testCase.press("mainAction")
            // every length a tenth longer past the rest than its twin's: it pulls less
            for (const number of ["52", "2.5", "70", "5", "86", "7.5", "102.4", "12.5", "131.2", "15", "146"]) {
                if (testCase.shown(flow.currentItem, "more"))
                    testCase.press("more")
                testCase.keyIn(number)
            }
            if (!testCase.shown(flow.currentItem, "more"))
                testCase.press("enough")
            testCase.choose("compareWith", "Band B1")
            testCase.verify(testCase.part("compared").text.includes("less than Band B1"), testCase.part("compared").text)
        }
        function test_marks_in_a_row() {
            TheDeskFiller.squad(TheBook, 4)
            flow.go(flow.squadPlace)
            testCase.press("athlete:" + TheDeskFiller.athleteId(TheBook, 0))
            testCase.press("lifts")
            testCase.press("lift:1")
            testCase.press("inARow")
            testCase.compare(testCase.part("keyNumber").text, "77", "what is known stands")
            testCase.keyIn("78")
            testCase.keyIn("126")
            testCase.choose("copyTo", "front squat")
            testCase.verify(testCase.part("copied").text.includes("back squat to front squat"), testCase.part("copied").text)
            testCase.verify(testCase.part("mainAction").fact.startsWith("Cleo"), "the next of her squad")
            testCase.press("mainAction")
            testCase.verify(flow.currentItem.heading.startsWith("Cleo"))
            testCase.press("zone")
            for (const height of ["70", "82", "95", "118"])
                testCase.keyIn(height)
            testCase.compare(testCase.shown(flow.currentItem, "trouble"), null)
            testCase.press("mainAction")
            testCase.verify(testCase.part("lift:1").value.includes("78 to 126"), testCase.part("lift:1").value)
            testCase.verify(testCase.part("lift:2").value.includes("78 to 126"))
        }
        function test_when_it_is_due() {
            testCase.press("hangMore")
            testCase.verify(testCase.part("item:1").how.includes("due in 17 weeks"), testCase.part("item:1").how)
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
