// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Ui

/** Every kind of kit by finger: lent and back, taken along, looked over, and where its number comes from. */
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

        name: "KindFlow"
        flow: flow

        function init() {
            testCase.reset()
        }
        function kit(name: string) {
            if (name === "Aid" || name === "Leg curl")
                TheDeskFiller.worn(TheDesk)
            else
                TheDeskFiller.tools(TheDesk)
            flow.go(flow.kitPlace)
            testCase.press("hangMore")
        }
        function rowOf(name: string): Item {
            let found = null
            testCase.tryVerify(() => {
                for (let i = 1; !found && testCase.shown(flow.currentItem, "item:" + i); ++i) {
                    const row = testCase.shown(flow.currentItem, "item:" + i)
                    found = row.what.startsWith(name) ? row : null
                }
                return found !== null
            }, 2000, "in the list: " + name)
            return found
        }
        function kinds(): var {
            return [{tag: "aid", name: "Aid", fault: "loose seam", never: "worn link"},
                {tag: "machine", name: "Leg curl", fault: "frayed cable", never: "cut"},
                {tag: "scale", name: "Scale by", fault: "zero runs away", never: "cut"},
                {tag: "iron", name: "Twenties", fault: "crack", never: "worn link"},
                {tag: "lead", name: "Straps", fault: "slipping buckle", never: "worn link"},
                {tag: "rack", name: "Uprights", fault: "bent or loose pin", never: "cut"}]
        }
        function test_lent_and_back_data() {
            return testCase.kinds()
        }
        function test_lent_and_back(row) {
            testCase.kit(row.name)
            testCase.press("measure", testCase.rowOf(row.name))
            testCase.press("loan")
            testCase.compare(flow.currentItem.under, "now: ours, and here")
            testCase.choose("kind", "lent out")
            const who = testCase.part("who")
            who.field.text = "the rowers"
            who.edited("the rowers")
            testCase.press("mainAction")
            testCase.verify(testCase.rowOf(row.name).how.includes("lent to the rowers"), testCase.rowOf(row.name).how)
            // tapped, it is asked whether it is back
            testCase.press("thing", testCase.rowOf(row.name))
            testCase.choose("kind", "ours, and here")
            testCase.press("mainAction")
            testCase.verify(!testCase.rowOf(row.name).how.includes("lent"), testCase.rowOf(row.name).how)
        }
        function test_where_its_number_comes_from_data() {
            return testCase.kinds()
        }
        function test_where_its_number_comes_from(row) {
            testCase.kit(row.name)
            testCase.press("measure", testCase.rowOf(row.name))
            testCase.press("form")
            testCase.press("origin")
            testCase.verify(testCase.part("number").text.includes(" ± "), testCase.part("number").text)
            testCase.verify(testCase.part("formula").text.length > 0)
            testCase.part("line:0")
            testCase.verify(testCase.part("sources").text.includes("JCGM"))
            testCase.press("back")
            // and whose it is, from its own page
            testCase.press("loan")
            testCase.part("kind")
            testCase.press("back")
            testCase.part("origin")
        }
        function test_looked_over_data() {
            return testCase.kinds()
        }
        function test_looked_over(row) {
            testCase.kit(row.name)
            testCase.press("measure", testCase.rowOf(row.name))
            testCase.press("inspect")
            testCase.verify(flow.currentItem.heading.startsWith("Look over: " + row.name), flow.currentItem.heading)
            const options = testCase.part("fault").options
            testCase.verify(options[0] === "nothing wrong" && !options.includes(row.never), options.join(", "))
            testCase.choose("fault", row.fault)
            testCase.compare(testCase.part("mainAction").text, "OUT OF USE")
            testCase.press("mainAction")
            testCase.verify(testCase.rowOf(row.name).how.includes("out of use since"), testCase.rowOf(row.name).how)
            testCase.verify(testCase.rowOf(row.name).how.includes(row.fault), testCase.rowOf(row.name).how)
            testCase.press("thing", testCase.rowOf(row.name))
            testCase.press("mainAction")
            testCase.verify(!testCase.rowOf(row.name).how.includes("out of use"), testCase.rowOf(row.name).how)
        }
        function test_taken_along() {
            testCase.kit("Uprights")
            for (const venue of ["Home weight room", "School hall"]) {
                testCase.press("newVenue")
                const field = testCase.part("venue")
                field.field.text = venue
                field.edited(venue)
                testCase.press("mainAction")
            }
            testCase.press("along")
            // nothing of it belongs anywhere yet, so each kind can come along
            for (const name of ["Scale by", "Straps", "The old bar", "Twenties", "Uprights"]) {
                let there = false
                for (let i = 0; testCase.shown(flow.currentItem, "thing:" + i); ++i)
                    there = there || testCase.shown(flow.currentItem, "thing:" + i).label.startsWith(name)
                testCase.verify(there, name)
            }
        }
    }
}
