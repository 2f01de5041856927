// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Ui

/** What was kept is put right, moved, looked over and settled, by finger from the first page on. */
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

        name: "RightFlow"
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
        function toHer() {
            flow.go(flow.squadPlace)
            testCase.press("athlete:" + TheDeskFiller.athleteId(TheBook, 0))
        }
        function test_looked_over_while_kept() {
            testCase.toHer()
            testCase.press("lifts")
            testCase.press("lift:1")
            testCase.press("mainAction")
            testCase.press("keepSetup")
            testCase.compare(testCase.shown(flow.currentItem, "lookedOn"), null)
            const undo = testCase.part("undoLast").fact
            for (const code of [0, 1, 2])
                testCase.press("caution:" + code)
            testCase.verify(testCase.part("lookedOn").text.includes("looked over on"))
            testCase.compare(testCase.part("undoLast").fact, undo, "nothing to undo in it")
            testCase.toHer()
            testCase.press("setups")
            const rows = testCase.targets(flow.currentItem).filter(key => AccessProbe.name(key).startsWith("back squat"))
            testCase.compare(rows.length, 1)
            testCase.verify(AccessProbe.description(rows[0]).includes("looked over on"), AccessProbe.description(rows[0]))
            TapGuard.forget()
            testCase.tap(rows[0])
            testCase.wait(1)
            testCase.part("lookedOn")
            testCase.compare(testCase.part("state").text, "NOT READY", "it comes again each time")
        }
        function test_a_body_mass_put_right_and_taken_out() {
            TheDeskFiller.sizes(TheBook)
            testCase.toHer()
            testCase.press("sizes")
            testCase.press("dated:0")
            testCase.verify(!testCase.part("mainAction").enabled, "nothing is changed yet")
            testCase.press("field:mass")
            testCase.keyIn("71.4")
            testCase.press("back")
            testCase.compare(testCase.part("dated:0").hint, "changes not kept")
            testCase.press("dated:0")
            testCase.compare(testCase.part("field:mass").value, "71.4")
            testCase.press("mainAction")
            testCase.compare(testCase.part("dated:0").value, "71.4 kg")
            testCase.verify(testCase.part("dated:0").hint.startsWith("72.9 kg at first"), testCase.part("dated:0").hint)
            testCase.press("undoLast")
            testCase.compare(testCase.part("dated:0").value, "72.9 kg")
            testCase.press("dated:1")
            testCase.verify(testCase.part("said").text.startsWith("27.4 kg at first"))
            testCase.press("throw")
            testCase.compare(testCase.shown(flow.currentItem, "dated:2"), null)
            testCase.press("undoLast")
            testCase.part("dated:2")
        }
        function test_the_day_of_a_body_mass_put_right() {
            TheDeskFiller.sizes(TheBook)
            testCase.toHer()
            testCase.press("sizes")
            testCase.press("dated:0")
            testCase.press("field:month")
            testCase.keyIn("12")
            testCase.part("trouble")
            testCase.verify(!testCase.part("mainAction").enabled)
            testCase.press("field:year")
            testCase.keyIn("2020")
            testCase.compare(testCase.shown(flow.currentItem, "trouble"), null)
            testCase.press("mainAction")
            testCase.compare(testCase.part("dated:2").value, "72.9 kg")
        }
        function test_a_measurement_put_right_and_taken_out() {
            TheDeskFiller.measuredAgain(TheBook)
            testCase.press("hangMore")
            testCase.press("measure", testCase.part("item:1"))
            testCase.press("form")
            testCase.press("measurements")
            testCase.press("dated:1")
            testCase.press("throw")
            testCase.compare(testCase.shown(flow.currentItem, "dated:1"), null)
            testCase.press("undoLast")
            testCase.press("dated:0")
            testCase.press("field:rest")
            testCase.keyIn("50")
            testCase.part("changes")
            testCase.press("throw")
            testCase.compare(testCase.part("field:rest").value, "53", "forgotten, and the page stays")
            testCase.press("field:rest")
            testCase.keyIn("50")
            testCase.press("mainAction")
            testCase.press("dated:0")
            testCase.verify(testCase.part("said").text.includes(" at first; put right on "))
        }
        function test_said_differently_and_settled() {
            flow.go(flow.squadPlace)
            testCase.compare(testCase.shown(flow.currentItem, "review"), null)
            TheDeskFiller.saidTwice(TheBook)
            testCase.compare(testCase.part("review").value, "2")
            testCase.press("review")
            const year = testCase.part("contested:0")
            testCase.verify(year.what.endsWith(": squad") || year.what.endsWith(": birth year"))
            testCase.press("answer:1", year)
            testCase.compare(testCase.shown(flow.currentItem, "contested:1"), null)
            testCase.press("answer:0", testCase.part("contested:0"))
            testCase.part("nothing")
            testCase.press("back")
            testCase.compare(testCase.shown(flow.currentItem, "review"), null)
        }
        function test_a_lift_of_her_coachs_own() {
            testCase.toHer()
            testCase.press("lifts")
            testCase.press("addLift")
            testCase.type("name", "Pin squat")
            testCase.choose("like", "front squat")
            testCase.press("back")
            testCase.press("addLift")
            testCase.compare(testCase.part("name").text, "Pin squat", "half typed, and still there")
            testCase.press("mainAction")
            const id = TheDeskFiller.liftId(TheBook, 0)
            testCase.press("change", testCase.part("lift:" + id))
            testCase.choose("start", "with plates on the floor")
            testCase.press("mainAction")
            testCase.press("lift", testCase.part("lift:" + id))
            testCase.compare(flow.currentItem.heading, "Ana M., Pin squat")
            testCase.compare(testCase.part("start").current, 1)
            testCase.press("field:top")
            testCase.keyIn("90")
            testCase.press("keepMarks")
            testCase.press("back")
            testCase.compare(testCase.part("lift:" + id).value, "top 90 cm")
            testCase.press("change", testCase.part("lift:" + id))
            testCase.press("throw")
            testCase.compare(testCase.shown(flow.currentItem, "lift:" + id), null)
            testCase.press("undoLast")
            testCase.part("lift:" + id)
        }
        function test_a_thing_moved_to_another_venue_and_back() {
            testCase.press("hangMore")
            testCase.press("newVenue")
            testCase.type("venue", "Hall")
            testCase.press("mainAction")
            testCase.choose("venues", "everywhere")
            testCase.press("measure", testCase.part("item:1"))
            testCase.press("form")
            testCase.choose("belongs", "Hall")
            testCase.press("mainAction")
            testCase.choose("venues", "Hall")
            testCase.part("item:1")
            testCase.press("undoLast")
            testCase.choose("venues", "everywhere")
            testCase.press("measure", testCase.part("item:1"))
            testCase.press("form")
            testCase.compare(testCase.part("belongs").current, 0)
        }
    }
}
