// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Ui

/** From the squad to a person, her marks and her set-ups, and back; what is half typed waits, and what was kept can be undone. */
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

        name: "SquadFlow"
        flow: flow

        function init() {
            testCase.reset()
            TheDeskFiller.full(TheDesk)
            flow.go(flow.kitPlace)
        }
        /** Taps until the page of a person of 26 is open, from the set-up page on. */
        function test_any_of_26_in_three_taps() {
            TheDeskFiller.squad(TheBook, 26)
            for (const place of [0, 11, 25]) {
                const id = TheDeskFiller.athleteId(TheBook, place)
                flow.go(flow.kitPlace)
                // a tap on the place, a tap on the letters, a tap on the name that is in sight
                flow.go(flow.squadPlace)
                const letters = testCase.part("letters")
                const keys = testCase.targets(letters)
                TapGuard.forget()
                testCase.tap(keys[Math.floor(place / 6)])
                testCase.wait(1)
                const row = testCase.part("athlete:" + id)
                const at = row.mapToItem(flow, 0, 0)
                testCase.verify(at.y >= 0 && at.y + row.height <= flow.height, "in sight without scrolling")
                testCase.press("athlete:" + id)
                testCase.compare(testCase.part("name").text, ["Ana M.", "Leo D.", "Zoe X."][[0, 11, 25].indexOf(place)])
            }
        }
        function test_an_athlete_half_typed_waits_and_is_kept_and_undone() {
            TheDeskFiller.squad(TheBook, 0)
            flow.go(flow.squadPlace)
            testCase.press("add")
            testCase.part("name").field.forceActiveFocus()
            for (const key of "Zed")
                testCase.keyClick(key)
            testCase.press("back")
            testCase.press("add")
            testCase.compare(testCase.part("name").text, "Zed")
            testCase.press("mainAction")
            testCase.press("back")
            testCase.verify(testCase.saying(flow.currentItem, "Zed"))
            testCase.press("undoLast")
            testCase.tryVerify(() => testCase.saying(flow.currentItem, "Zed") === null)
            testCase.compare(testCase.shown(flow.currentItem, "undoLast"), null)
        }
        function test_a_set_up_kept_for_her_and_laid_out_again() {
            TheDeskFiller.squad(TheBook, 2)
            const id = TheDeskFiller.athleteId(TheBook, 0)
            flow.go(flow.squadPlace)
            testCase.press("athlete:" + id)
            testCase.press("lifts")
            testCase.press("lift:1")
            testCase.press("mainAction")
            testCase.compare(flow.place, flow.kitPlace)
            testCase.press("keepSetup")
            testCase.compare(testCase.shown(flow.currentItem, "keepSetup"), null, "kept as it stands")
            const load = testCase.part("load").value
            testCase.press("stepUp")
            testCase.part("keepSetup")
            flow.go(flow.squadPlace)
            testCase.press("athlete:" + id)
            testCase.press("setups")
            const rows = testCase.targets(flow.currentItem).filter(key => AccessProbe.name(key).startsWith("back squat"))
            testCase.compare(rows.length, 1)
            TapGuard.forget()
            testCase.tap(rows[0])
            testCase.wait(1)
            testCase.compare(testCase.part("load").value, load)
        }
        function test_the_guardian_first() {
            TheDeskFiller.squad(TheBook, 2)
            flow.go(flow.squadPlace)
            testCase.press("athlete:" + TheDeskFiller.athleteId(TheBook, 1))
            testCase.compare(testCase.shown(flow.currentItem, "notes"), null)
            testCase.compare(testCase.shown(flow.currentItem, "field:mass"), null)
            testCase.press("agreement")
            testCase.part("who").field.forceActiveFocus()
            for (const key of "Kim")
                testCase.keyClick(key)
            testCase.press("mainAction")
            testCase.part("notes")
            testCase.part("field:mass")
            testCase.press("mainAction")
            testCase.verify(testCase.part("agreement").value.startsWith("Kim"))
        }
    }
}
