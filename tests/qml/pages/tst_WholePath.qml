// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Model
import Steelyard.Theme
import Steelyard.Ui

/** From an empty app to the number by finger alone, held against the probe's answer to the same input. */
Item {
    id: root

    width: 1280
    height: 800

    ProbeRunner {
        id: probe
    }
    Item {
        id: frame
        width: 360
        height: 720
        PageFlow {
            id: flow
            anchors.fill: parent
        }
    }
    FlowCase {
        id: testCase

        name: "WholePath"
        flow: flow

        function words(name: string): string {
            return testCase.part(name).text
        }
        /** "97.0 ± 1.9" at a place of the title, as numbers with the unit of the last place shown. */
        function said(title: string, place: string): var {
            const found = new RegExp("([\\d.]+)(?:\\s±\\s([\\d.]+))?(?: kg)? " + place).exec(title)
            testCase.verify(found, place + " in: " + title)
            const decimals = (found[1].split(".")[1] ?? "").length
            return {value: Number(found[1]), give: Number(found[2] ?? 0), half: 0.5 * Math.pow(10, -decimals) + 1e-9}
        }
        function holds(title: string, place: string, value: real, u: real, most: real) {
            const shown = testCase.said(title, place)
            testCase.verify(Math.abs(shown.value - value) <= shown.half, place + ": shown " + shown.value + ", the probe says " + value)
            // Student's factor lies between that of many readings and that of the fit's own few
            testCase.verify(shown.give + shown.half >= 1.959963 * u && shown.give - shown.half <= most * u,
                            place + ": shown ± " + shown.give + ", u of the probe " + u)
        }
        function test_from_nothing_to_the_number_data() {
            return [{tag: "phone", width: 360, height: 720, chain: "item:2", band: "item:1"},
                {tag: "tablet", width: 1280, height: 800, chain: "item:2", band: "item:1"},
                {tag: "by keys alone", width: 360, height: 720, chain: "item:2", band: "item:1", byKeys: true}]
        }
        function test_from_nothing_to_the_number(form) {
            testCase.byKeys = form.byKeys === true
            frame.width = form.width
            frame.height = form.height
            Theme.fit(form.width, form.height)
            TheDeskFiller.empty(TheDesk)
            flow.go(flow.kitPlace)

            // her marks
            testCase.press("marks")
            testCase.press("field:bottom")
            testCase.keyIn("77")
            testCase.keyIn("127")
            testCase.press("field:zoneFrom")
            testCase.keyIn("88")
            testCase.press("field:zoneTo")
            testCase.keyIn("102")
            testCase.press("mainAction")

            // a chain, weighed
            testCase.press("hangMore")
            testCase.measureNew("chain")
            testCase.press("byWeight")
            testCase.keyIn("150")
            testCase.keyIn("8.55")
            testCase.keyIn("0.1")
            testCase.press("mainAction")
            // a band, six hangings
            testCase.measureNew("band")
            testCase.press("mainAction")
            testCase.keyIn("100")
            const hangings = [["5", "115"], ["7.5", "124.5"], ["10", "137"], ["12.5", "152.5"], ["15", "172"], ["17.5", "195"]]
            for (const hanging of hangings) {
                // good enough sooner, and one more all the same
                if (testCase.shown(flow.currentItem, "more"))
                    testCase.press("more")
                testCase.keyIn(hanging[0])
                testCase.keyIn(hanging[1])
            }
            if (!testCase.shown(flow.currentItem, "more"))
                testCase.press("enough")
            testCase.press("mainAction")

            // hung: the chain doubled on a lead, the band from a low peg
            testCase.press(form.chain)
            testCase.choose("way", "doubled")
            testCase.press("field:lead")
            testCase.keyIn("80")
            testCase.press("mainAction")
            testCase.press("hangMore")
            testCase.press(form.band)
            testCase.press("field:anchor")
            testCase.keyIn("5")
            testCase.press("mainAction")

            // plates as marked, 60 kg of them and half a kilo of collars
            testCase.press("barHere")
            testCase.choose("trust", "as marked")
            testCase.press("field:collars")
            testCase.keyIn("0.5")
            testCase.press("back")
            testCase.press("stepType")
            testCase.keyIn("80.5")

            const points = hangings.map(h => [Number(h[1]) / 100, Number(h[0]) * 9.80665])
            const chain = {kg_per_m: 5.7, length_m: 1.5, hang: "doubled", lead_m: 0.8, u_kg_per_m: 0.1 / Math.sqrt(12) / 1.5, measurement: "chain"}
            const band = {rest_m: 1, points: points, model: "best", hang: "single", anchor: "below", anchor_height_m: 0.05, offset_m: 0, measurement: "band"}
            const answer = probe.ask("setup", {bar_kg: 20, collars_kg: 0.5, plates_kg: 60, bottom_m: 0.77, top_m: 1.27, sticking_from_m: 0.88,
                sticking_to_m: 1.02, u_mark_m: 0.01, left: [{chain: chain}, {band: band}], right: [{chain: chain}, {band: Object.assign({twin: true}, band)}]})
            testCase.verify(answer.error === undefined, String(answer.error))
            const title = testCase.words("answer")
            testCase.holds(title, "at the bottom", answer.bottom_kg, answer.u_bottom_kg, 2.7765)
            testCase.holds(title, "in the sticking zone", answer.sticking_kg, answer.u_sticking_kg, 2.7765)
            testCase.holds(title, "at the top", answer.top_kg, answer.u_top_kg, 2.7765)
            testCase.holds(testCase.words("means"), "kg, mean of the ends", answer.mean_kg, answer.u_mean_kg, 2.7765)

            // cautions before it is ready
            testCase.compare(testCase.words("state"), "NOT READY")
            testCase.press("caution:0")
            testCase.compare(testCase.words("state"), "NOT READY")
            testCase.press("caution:1")
            testCase.compare(testCase.words("state"), "READY")
            // one step of the load, the answer with it
            testCase.press("stepUp")
            const stepped = testCase.said(testCase.words("answer"), "at the top")
            testCase.verify(Math.abs(stepped.value - answer.top_kg - 2.5) <= stepped.half, "a step up is in the answer at once")
            testCase.compare(testCase.words("state"), "READY")
        }
    }
}
