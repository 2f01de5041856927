// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Ui

/** Tyres, kegs and what else lies at a pitch, by finger: entered on arrival, looked through for one athlete, held against a lift of hers. */
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

        name: "ImplementFlow"
        flow: flow

        function init() {
            testCase.reset()
            TheDeskFiller.empty(TheDesk)
            TheDeskFiller.squad(TheBook, 2)
            TheAwayFiller.pitch(TheBook)
            flow.go(flow.kitPlace)
            testCase.press("hangMore")
            testCase.choose("venues", "Away pitch")
        }
        /** The row of a list that begins so. */
        function rowOf(name: string): Item {
            for (let i = 1; i < 14; ++i) {
                const row = testCase.shown(flow.currentItem, "thing:" + i)
                if (row && row.label.startsWith(name))
                    return row
            }
            testCase.fail("no row " + name)
            return null
        }
        function open(name: string) {
            const row = testCase.rowOf(name)
            testCase.bring(row)
            testCase.push(testCase.target(row))
        }
        /** At a tap in a second and a half, and with a minute for scale and tape, six things take less than ten minutes. */
        function test_a_tyre_takes_a_minute_of_taps_at_most() {
            testCase.press("arrival")
            testCase.tapCount = 0
            testCase.press("another")
            testCase.press("kind:tyre")
            testCase.press("choose:0")
            for (const number of ["62.5", "61", "38", "0.5"])
                testCase.keyIn(number)
            testCase.choose("asked:drained", "drained, none left")
            testCase.press("mainAction")
            testCase.verify(testCase.tapCount <= 24, testCase.tapCount + " taps")
            testCase.verify(testCase.rowOf("Tyre, 163 kg").value.startsWith("163 ± "), testCase.rowOf("Tyre, 163 kg").value)
        }
        function test_on_arrival_the_next_is_measured() {
            testCase.press("arrival")
            testCase.compare(testCase.part("progress").text, "8 of 9 are known")
            testCase.press("mainAction")
            testCase.press("choose:0")
            for (const number of ["35", "31.5", "0.1"])
                testCase.keyIn(number)
            testCase.verify(testCase.part("answer").text.startsWith("66.5"), testCase.part("answer").text)
            testCase.press("mainAction")
            testCase.compare(testCase.part("progress").text, "9 of 9 are known")
            testCase.verify(testCase.rowOf("Log by the gate").value.startsWith("66.5"))
        }
        function test_a_tyre_begun_is_gone_on_with() {
            testCase.press("arrival")
            testCase.press("another")
            testCase.press("kind:tyre")
            testCase.press("choose:0")
            testCase.keyIn("62")
            testCase.press("later")
            testCase.compare(testCase.rowOf("a tyre").value, "begun, not kept")
            testCase.press("mainAction")
            testCase.keyIn("60")
            testCase.keyIn("40")
            testCase.keyIn("0.5")
            testCase.verify(testCase.part("notGood").head.includes("drain it"), testCase.part("notGood").head)
            testCase.choose("asked:drained", "drained, none left")
            testCase.verify(testCase.part("answer").text.startsWith("155 ± "), testCase.part("answer").text)
            testCase.press("mainAction")
            testCase.verify(testCase.rowOf("Tyre, 155 kg").value.startsWith("155 ± "))
        }
        function test_a_sled_is_pulled_and_run_with() {
            flow.go(flow.squadPlace)
            testCase.press("athlete:" + TheDeskFiller.athleteId(TheBook, 0))
            testCase.press("here")
            testCase.open("Sled")
            testCase.press("sled")
            testCase.choose("surfaces", "turf")
            const load = testCase.part("load").text
            testCase.verify(load.startsWith("Put on"), load)
            testCase.press("less", testCase.part("loss"))
            testCase.verify(testCase.part("load").text !== load)
            testCase.press("pull")
            testCase.part("name").field.forceActiveFocus()
            for (const key of "ice")
                testCase.keyClick(key)
            for (const [key, digits] of [["added:0", "0"], ["pull:0", "2"], ["added:1", "50"], ["pull:1", "6"]]) {
                if (testCase.shown(flow.currentItem, "field:" + key))
                    testCase.press("field:" + key)
                testCase.keyIn(digits)
            }
            while (testCase.shown(flow.currentItem, "keyNumber"))
                testCase.press("back")
            testCase.verify(testCase.part("answer").text.startsWith("Friction 0.08"), testCase.part("answer").text)
            testCase.press("mainAction")
            testCase.choose("surfaces", "ice")
            testCase.verify(testCase.part("friction").text.includes("0.08"), testCase.part("friction").text)
        }
        function test_what_she_may_use() {
            flow.go(flow.squadPlace)
            testCase.press("athlete:" + TheDeskFiller.athleteId(TheBook, 0))
            testCase.press("here")
            testCase.verify(testCase.part("counts").text.includes("not now"))
            testCase.verify(testCase.rowOf("Blue keg").hint.includes("It may hold gas"), testCase.rowOf("Blue keg").hint)
            testCase.open("Water keg")
            testCase.choose("lifts", "front carry")
            testCase.compare(testCase.part("may").text, "NOT READY: look over first")
            testCase.press("against")
            testCase.press("of")
            const picked = ["deadlift"]
            for (let i = 0; i < 80; ++i) {
                const key = testCase.shown(flow.currentItem, "pick:" + i)
                if (key && key.text === picked[0]) {
                    testCase.press("pick:" + i)
                    break
                }
            }
            testCase.press("stepUp")
            testCase.press("mainAction")
            testCase.compare(testCase.part("against").value, "75 % of her deadlift")
            for (let i = 0; i < 6; ++i) {
                const card = testCase.shown(flow.currentItem, "caution:" + i)
                if (card && !card.looked)
                    testCase.press("caution:" + i)
            }
            testCase.compare(testCase.part("may").text, "READY")
            testCase.press("thing")
            testCase.verify(testCase.part("answer").text.startsWith("30"))
        }
    }
}
