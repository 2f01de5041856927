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
        function test_a_thing_moved_to_another_venue_and_back() {
            testCase.press("hangMore")
            testCase.press("newVenue")
            testCase.type("venue", "Hall")
            testCase.press("mainAction")
            testCase.choose("venues", "everywhere")
            testCase.press("measure", testCase.part("item:1"))
            testCase.choose("belongs", "Hall")
            testCase.press("mainAction")
            testCase.choose("venues", "Hall")
            testCase.part("item:1")
            testCase.press("undoLast")
            testCase.choose("venues", "everywhere")
            testCase.press("measure", testCase.part("item:1"))
            testCase.compare(testCase.part("belongs").current, 0)
        }
    }
}
