// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Model
import Steelyard.Ui

/** Arrow, Esc and the system's Back end the same way on every page that takes something in: nothing is lost, and nothing kept unasked. */
Item {
    id: root

    width: 360
    height: 720

    PageFlow {
        id: flow
        anchors.fill: parent
    }
    FlowCase {
        id: testCase

        name: "Leaving"
        flow: flow

        function init() {
            testCase.reset()
            TheDeskFiller.squad(TheBook, 0)
            TheDeskFiller.tools(TheDesk)
            TheDeskFiller.venues(TheBook)
            TheDeskFiller.people(TheBook, 2)
            flow.go(flow.kitPlace)
        }
        function leave(way: string) {
            if (way === "arrow")
                testCase.press("back")
            else
                testCase.keyClick(way === "esc" ? Qt.Key_Escape : Qt.Key_Back)
            testCase.wait(1)
        }
        function type(name: string, text: string) {
            testCase.part(name).field.forceActiveFocus()
            for (const key of text)
                testCase.keyClick(key)
        }
        function go(path: var) {
            for (const part of path) {
                if (part === "squad")
                    flow.go(flow.squadPlace)
                else if (part.startsWith("new "))
                    testCase.measureNew(part.slice(4))
                else if (part.startsWith("type "))
                    testCase.type(part.split(" ")[1], part.split(" ")[2])
                else if (part === "athlete")
                    testCase.press("athlete:" + TheDeskFiller.athleteId(TheBook, 0))
                else
                    testCase.press(part)
            }
        }
        /** What the coach would find afterwards: people, kit, marks, load, and what the page beneath says. */
        function state(): string {
            return [flow.depth, flow.place, flow.currentItem.heading, TheDeskFiller.counts(TheBook, TheDesk), PageAudit.texts(flow.currentItem).join("|")].join("\n")
        }
        function test_everyWayEndsTheSame_data() {
            return [{tag: "a load half keyed", path: ["stepType", "key 1", "key 0"]},
                {tag: "the bar's mass", path: ["barHere", "field:bar", "key 1"]},
                {tag: "plates and bar", path: ["barHere"]},
                {tag: "marks", path: ["marks"]},
                {tag: "a mark half keyed", path: ["marks", "field:top", "key 9"]},
                {tag: "the kit", path: ["hangMore"]},
                {tag: "a new venue's name", path: ["hangMore", "newVenue", "type venue Gym"]},
                {tag: "a chain begun", path: ["hangMore", "new chain", "byWeight", "key 1", "key 5", "key 0", "mainAction"]},
                {tag: "a band begun", path: ["hangMore", "new band", "mainAction", "key 9", "key 0", "mainAction"]},
                {tag: "a scale begun", path: ["hangMore", "new scale", "mainAction"]},
                {tag: "what to measure", path: ["hangMore", "newOther"]},
                {tag: "a new athlete", path: ["squad", "add", "type name Zed"]},
                {tag: "her notes", path: ["squad", "athlete", "type notes tired"]},
                {tag: "her squad", path: ["squad", "athlete", "lifts"]},
                {tag: "preferences", path: ["squad", "preferences"]},
                {tag: "done lately", path: ["squad", "deeds"]},
                {tag: "at each height", path: ["heights"]},
                {tag: "where it comes from", path: ["origin"]}]
        }
        function test_everyWayEndsTheSame(row) {
            let first = ""
            for (const way of ["arrow", "esc", "back"]) {
                testCase.init()
                const kept = TheDeskFiller.counts(TheBook, TheDesk)
                testCase.go(row.path)
                testCase.leave(way)
                testCase.compare(TheDeskFiller.counts(TheBook, TheDesk), kept, way + " keeps nothing unasked")
                const now = testCase.state()
                if (first === "")
                    first = now
                testCase.compare(now, first, way + " ends as the arrow does")
            }
        }
        function test_whatWasTypedWaits_data() {
            return [{tag: "a new athlete", path: ["squad", "add", "type name Zed"], again: ["add"], where: "name", text: "Zed"},
                {tag: "her notes", path: ["squad", "athlete", "type notes tired"], again: ["athlete"], where: "notes", text: "tired"}]
        }
        function test_whatWasTypedWaits(row) {
            for (const way of ["arrow", "esc", "back"]) {
                testCase.init()
                testCase.go(row.path)
                testCase.leave(way)
                testCase.go(row.again)
                testCase.compare(testCase.part(row.where).text, row.text, "after " + way)
            }
        }
    }
}
