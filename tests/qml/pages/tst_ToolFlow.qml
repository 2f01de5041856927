// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Ui

/** Scales, weighed iron, straps and racks by finger: measured in steps, kept, and taken where they are of use. */
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

        name: "ToolFlow"
        flow: flow

        function init() {
            testCase.reset()
            TheDeskFiller.tools(TheDesk)
            flow.go(flow.kitPlace)
        }
        function begin(kind: string) {
            testCase.press("hangMore")
            testCase.measureNew(kind)
        }
        /** The row of the kit that begins so. */
        function rowOf(name: string): Item {
            for (let i = 1; i < 12; ++i) {
                const row = testCase.shown(flow.currentItem, "item:" + i)
                if (row && row.what.startsWith(name))
                    return row
            }
            testCase.fail("no row " + name)
            return null
        }
        function test_a_scale_is_checked_and_a_chain_weighed_on_it() {
            testCase.begin("scale")
            testCase.press("mainAction")
            for (const number of ["0", "0.05", "25", "25.1"])
                testCase.keyIn(number)
            testCase.part("verdict")
            testCase.press("more")
            for (const number of ["10", "10"])
                testCase.keyIn(number)
            testCase.press("mainAction")
            testCase.compare(flow.depth, 2)
            testCase.verify(testCase.rowOf("Scale, steps").how.startsWith("Good: within 0.1 kg up to 25 kg"), testCase.rowOf("Scale, steps").how)
            testCase.measureNew("chain")
            testCase.press("byWeight")
            testCase.keyIn("180")
            testCase.keyIn("10.3")
            testCase.choose("scales", "Scale, steps of 0.05 kg")
            testCase.compare(testCase.part("keyNumber").text, "0.05", "its step comes with it")
            testCase.part("scaleText")
            testCase.press("mainAction")
            // √(0.05²/12 + 0.1²/3) = 0.0595; 1.96 · 0.0595 / 1.8 = 0.065
            testCase.verify(testCase.part("answer").text.includes("± 0.06 kg"), testCase.part("answer").text)
        }
        function test_a_scale_under_nothing_goes_on_where_it_was() {
            testCase.begin("scale")
            testCase.press("mainAction")
            testCase.choose("choice", "under 0")
            testCase.keyIn("0.2")
            testCase.press("later")
            testCase.measureNew("scale")
            testCase.verify(flow.currentItem.heading.includes("How fine"), flow.currentItem.heading)
            for (const number of ["0.1", "20", "19.8"])
                testCase.keyIn(number)
            testCase.verify(testCase.part("verdict").text.includes("under nothing"), testCase.part("verdict").text)
        }
        function test_a_bar_is_weighed_and_taken() {
            testCase.begin("iron")
            testCase.press("choose:0")
            testCase.keyIn("20")
            testCase.keyIn("20.4")
            testCase.choose("scales", "Scale by the door")
            testCase.press("mainAction")
            testCase.verify(testCase.part("answer").text.startsWith("It weighs 20.4"), testCase.part("answer").text)
            testCase.press("mainAction")
            testCase.verify(testCase.rowOf("Bar of 20 kg").how.includes("20.4"), testCase.rowOf("Bar of 20 kg").how)
            testCase.press("back")
            testCase.press("barHere")
            const options = testCase.part("weighedBars").options
            testCase.choose("weighedBars", options[1])
            testCase.compare(testCase.part("field:bar").value, "20.40 ± 0.13")
            testCase.press("weighedPlates:0")
            testCase.verify(testCase.part("stock:1").pairs.includes("20.30 ± 0.06 kg each"), testCase.part("stock:1").pairs)
            testCase.press("back")
            testCase.press("origin")
            testCase.verify(testCase.part("line:0").how.includes("scale"), testCase.part("line:0").how)
        }
        function test_a_strap_is_measured_and_a_chain_hung_by_it() {
            testCase.begin("lead")
            testCase.press("mainAction")
            testCase.keyIn("45")
            testCase.keyIn("0.25")
            testCase.press("mainAction")
            testCase.press("back")
            testCase.press("hung:0")
            testCase.choose("fromKit", "Lead, 45 cm")
            testCase.compare(testCase.part("field:lead").value, "45")
            testCase.compare(testCase.part("field:leadMass").value, "0.25")
        }
        function test_a_rack_is_measured_and_marks_read_by_its_holes() {
            testCase.begin("rack")
            testCase.press("choose:0")
            for (const number of ["40", "5", "20"])
                testCase.keyIn(number)
            testCase.press("more")
            testCase.keyIn("12")
            testCase.press("mainAction")
            testCase.verify(testCase.rowOf("Rack, 20").how.startsWith("20 holes, 40 to 135 cm · bands at 12 cm"), testCase.rowOf("Rack, 20").how)
            testCase.press("back")
            testCase.press("hung:1")
            testCase.choose("fromKit", "Rack, 20 holes, 12 cm")
            testCase.compare(testCase.part("field:anchor").value, "12")
            testCase.press("mainAction")
            testCase.press("marks")
            testCase.choose("readBy", "hole of Rack, 20 holes")
            testCase.press("field:bottom")
            testCase.keyIn("9")
            testCase.verify(testCase.part("field:bottom").hint.includes("80 cm"), testCase.part("field:bottom").hint)
            testCase.choose("readBy", "tape")
            testCase.compare(testCase.part("field:bottom").value, "80")
            testCase.verify(testCase.part("field:bottom").hint.includes("hole 9"), testCase.part("field:bottom").hint)
        }
        function test_measured_again_looked_back_at_and_put_right() {
            testCase.press("hangMore")
            testCase.press("measure", testCase.rowOf("Scale by"))
            testCase.press("form")
            testCase.press("measurements")
            testCase.press("dated:0")
            testCase.press("field:read:0")
            testCase.keyIn("20.1")
            testCase.press("mainAction")
            testCase.verify(testCase.part("dated:0").hint.includes("put right"), testCase.part("dated:0").hint)
        }
        function test_out_of_use_it_is_not_offered() {
            testCase.press("hangMore")
            testCase.press("measure", testCase.rowOf("Uprights"))
            testCase.press("inspect")
            testCase.choose("fault", "cracked weld")
            testCase.press("mainAction")
            testCase.press("back")
            testCase.press("marks")
            testCase.compare(testCase.shown(flow.currentItem, "readBy"), null)
        }
    }
}
