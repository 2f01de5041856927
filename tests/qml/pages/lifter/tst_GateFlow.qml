// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Ui

/** What somebody may do is set, cleared, taken back and followed by the set-up page, by finger from the first page on. */
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

        name: "GateFlow"
        flow: flow

        function init() {
            testCase.reset()
            TheDeskFiller.full(TheDesk)
            TheDeskFiller.people(TheBook, 2)
            flow.go(flow.kitPlace)
        }
        function type(field: string, text: string) {
            testCase.part(field).field.forceActiveFocus()
            for (const key of text)
                testCase.keyClick(key)
        }
        function toHer(place = 0) {
            flow.go(flow.squadPlace)
            testCase.press("athlete:" + TheDeskFiller.athleteId(TheBook, place))
        }
        /** On the set-up page, with iron alone for the back squat. */
        function liftIron() {
            TheDeskFiller.empty(TheDesk)
            TheDeskFiller.people(TheBook, 2)
            testCase.toHer()
            testCase.press("lifts")
            testCase.press("lift:1")
            testCase.press("mainAction")
        }
        function test_none_and_lifted_again() {
            testCase.liftIron()
            testCase.compare(testCase.part("state").text, "READY")
            testCase.verify(testCase.part("gate").text.startsWith("Nothing in her day status"))
            testCase.toHer()
            testCase.compare(testCase.part("dayStatus").value, "all")
            testCase.press("dayStatus")
            testCase.press("mainAction")
            testCase.verify(!testCase.part("mainAction").enabled)
            testCase.choose("fitness", "none")
            testCase.type("who", "Kim")
            testCase.choose("until", "3 days")
            testCase.press("mainAction")
            testCase.verify(testCase.part("today").text.startsWith("none, until "), testCase.part("today").text)
            testCase.press("back")
            testCase.verify(testCase.part("dayStatus").stop)
            flow.go(flow.kitPlace)
            testCase.compare(testCase.part("state").text, "DO NOT LIFT")
            testCase.compare(testCase.part("stopNotice").head, "She does not train now")
            testCase.toHer()
            testCase.press("dayStatus")
            testCase.press("dated:0")
            testCase.press("throw")
            testCase.verify(!testCase.part("mainAction").enabled)
            testCase.choose("names", "Kim")
            testCase.press("mainAction")
            testCase.compare(testCase.part("today").text, "all")
            testCase.press("undoLast")
            testCase.verify(testCase.part("today").text.startsWith("none"))
        }
        function test_some_and_what_not() {
            testCase.toHer()
            testCase.press("dayStatus")
            testCase.press("mainAction")
            testCase.choose("fitness", "some")
            testCase.press("option:8", testCase.part("methods"))
            testCase.type("who", "Kim")
            testCase.press("back")
            testCase.press("mainAction")
            testCase.compare(testCase.part("who").text, "Kim", "half typed, and still there")
            testCase.press("mainAction")
            testCase.compare(testCase.part("what").text, "not: overhead")
            testCase.press("back")
            testCase.press("lifts")
            testCase.press("lift:8")
            flow.go(flow.kitPlace)
            testCase.compare(testCase.part("stopNotice").head, "Not now: overhead")
        }
        function test_cleared_put_right_and_taken_back() {
            testCase.toHer()
            testCase.press("clearances")
            testCase.part("none")
            testCase.press("mainAction")
            testCase.press("lift")
            testCase.press("pick:0")
            testCase.press("method")
            testCase.press("pick:1")
            testCase.compare(testCase.part("lift").value, "back squat")
            testCase.compare(testCase.part("method").value, "eccentric overload")
            testCase.type("who", "Kim")
            testCase.choose("until", "4 weeks")
            testCase.press("mainAction")
            testCase.compare(testCase.part("dated:0").value, "holds")
            testCase.press("dated:0")
            testCase.choose("until", "until it is taken back")
            testCase.press("mainAction")
            testCase.verify(testCase.part("dated:0").hint.endsWith(" on"), testCase.part("dated:0").hint)
            testCase.press("dated:0")
            testCase.press("throw")
            testCase.choose("names", "Kim")
            testCase.press("mainAction")
            testCase.compare(testCase.part("dated:0").value, "taken back")
            testCase.press("undoLast")
            testCase.compare(testCase.part("dated:0").value, "holds")
            testCase.press("back")
            testCase.verify(testCase.part("clearances").value.startsWith("1 hold"))
        }
        function test_looked_over_by_her_own_key() {
            testCase.liftIron()
            testCase.toHer()
            testCase.press("lifts")
            testCase.press("lift:8")
            testCase.press("field:bottom")
            testCase.keyIn("130")
            testCase.keyIn("190")
            flow.go(flow.kitPlace)
            testCase.compare(testCase.part("state").text, "NOT READY")
            testCase.press("caution:100")
            testCase.press("caution:101")
            testCase.compare(testCase.part("state").text, "READY")
        }
        function test_own_limits() {
            flow.go(flow.squadPlace)
            testCase.press("preferences")
            testCase.compare(testCase.part("limits").value, "as shipped")
            testCase.press("limits")
            testCase.press("stepDown", testCase.part("limit0"))
            testCase.compare(testCase.part("limit0").value, "65 %")
            testCase.press("stepType", testCase.part("limit4"))
            testCase.keyIn("2.5")
            testCase.compare(testCase.part("limit4").value, "2.5 times")
            testCase.press("asShipped", testCase.part("limit0"))
            testCase.press("mainAction")
            testCase.compare(testCase.part("limits").value, "1 of your own")
            testCase.compare(TheBook.undoFact, "changed limits")
            TheBook.undo()
            testCase.compare(testCase.part("limits").value, "as shipped")
        }
    }
}
