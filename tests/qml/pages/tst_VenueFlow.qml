// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Ui

/** Kit by place by finger: lent and back, taken along, a list copied and measured, and where a number comes from. */
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

        name: "VenueFlow"
        flow: flow

        function init() {
            testCase.reset()
            TheDeskFiller.full(TheDesk)
            flow.go(flow.kitPlace)
        }
        function rowOf(name: string): Item {
            let found = null
            testCase.tryVerify(() => {
                for (let i = 1; !found && testCase.shown(flow.currentItem, "item:" + i); ++i) {
                    const row = testCase.shown(flow.currentItem, "item:" + i)
                    found = row.what === name ? row : null
                }
                return found !== null
            }, 2000, "in the list: " + name)
            return found
        }
        function type(field: string, words: string) {
            const item = testCase.part(field)
            item.field.text = words
            item.edited(words)
        }
        function venue(name: string) {
            testCase.press("newVenue")
            testCase.type("venue", name)
            testCase.press("mainAction")
            testCase.compare(flow.depth, 2)
        }
        function test_lent_and_back() {
            testCase.press("hangMore")
            testCase.compare(testCase.rowOf("Chain, 16 mm, 70 cm").free, "both hang")
            testCase.press("measure", testCase.rowOf("Chain, 16 mm, 70 cm"))
            testCase.press("loan")
            testCase.choose("kind", "lent out")
            testCase.verify(!testCase.part("mainAction").enabled, "it is said who, first")
            testCase.type("who", "the rowers")
            testCase.choose("when", "in a week")
            testCase.press("mainAction")
            testCase.verify(testCase.rowOf("Chain, 16 mm, 70 cm").how.includes("lent to the rowers, back by"))
            testCase.press("back")
            testCase.compare(testCase.part("state").text, "DO NOT LIFT")
            testCase.press("hangMore")
            // tapping it hangs nothing, and asks whether it is back
            testCase.press("thing", testCase.rowOf("Chain, 16 mm, 70 cm"))
            testCase.choose("kind", "ours, and here")
            testCase.press("mainAction")
            testCase.verify(!testCase.rowOf("Chain, 16 mm, 70 cm").how.includes("lent"))
            testCase.compare(testCase.rowOf("Chain, 16 mm, 70 cm").free, "both hang")
        }
        function test_hanging_what_is_free() {
            testCase.press("hangMore")
            testCase.compare(testCase.rowOf("Band B1").free, "one free")
            // the left one hangs already: the other goes on the right
            testCase.press("thing", testCase.rowOf("Band B1"))
            testCase.compare(flow.currentItem.editor.sides, 2)
            testCase.compare(flow.currentItem.editor.trouble, "")
            testCase.press("takeOff")
            // of what all hangs a tap shows how
            testCase.press("hangMore")
            testCase.press("thing", testCase.rowOf("Chain, 16 mm, 70 cm"))
            testCase.compare(flow.currentItem.editor.row, 0)
            testCase.press("mainAction")
            testCase.press("hangMore")
            testCase.compare(testCase.rowOf("Chain, 16 mm, 70 cm").free, "both hang")
        }
        function test_taken_along_and_a_list_copied() {
            testCase.press("hangMore")
            testCase.compare(testCase.shown(flow.currentItem, "along"), null, "one needs a place to take it to")
            testCase.venue("Home weight room")
            testCase.venue("School hall")
            testCase.press("along")
            // the first of all kit, which belongs nowhere so far
            testCase.press("thing:0")
            testCase.verify(testCase.part("mainAction").fact.includes("1 comes along"))
            testCase.press("mainAction")
            testCase.rowOf("Band B1")
            testCase.press("along")
            testCase.press("thing:0")
            testCase.press("mainAction")
            // a list with something on it, for another place
            testCase.measureNew("chain")
            testCase.press("byWeight")
            for (const number of ["180", "10.3", "0.1"])
                testCase.keyIn(number)
            testCase.press("mainAction")
            testCase.choose("venues", "Home weight room")
            testCase.press("copyList")
            testCase.verify(testCase.part("mainAction").fact.includes("1 thing"))
            testCase.press("mainAction")
            const copied = testCase.rowOf("Chain, 180 cm")
            testCase.compare(copied.how, "not measured yet")
            // it leads to measuring, and is measured here
            testCase.press("thing", copied)
            testCase.press("byWeight")
            for (const number of ["178", "9.9", "0.1"])
                testCase.keyIn(number)
            testCase.press("mainAction")
            testCase.verify(testCase.rowOf("Chain, 180 cm").how.includes("measured"))
            testCase.verify(!testCase.rowOf("Chain, 180 cm").how.includes("not measured yet"))
        }
        function test_where_its_number_comes_from() {
            testCase.press("hangMore")
            testCase.press("measure", testCase.rowOf("Band B1"))
            testCase.press("form")
            testCase.press("origin")
            testCase.verify(testCase.part("number").text.includes("kg at"))
            testCase.part("line:0")
            testCase.press("back")
            testCase.press("loan")
            testCase.part("kind")
            testCase.press("back")
            testCase.part("origin")
        }
        function test_marks_again_from_the_athlete() {
            TheDeskFiller.people(TheBook, 1)
            TheDeskFiller.grown(TheBook)
            flow.go(flow.squadPlace)
            testCase.press("athlete:" + TheDeskFiller.athleteId(TheBook, 0))
            testCase.press("again")
            testCase.part("lift:2")
        }
    }
}
