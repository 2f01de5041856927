// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Drawings
import Steelyard.Theme

Item {
    id: top

    width: 1280
    height: 800

    Component { id: beam; Beam { loads: []; value: NaN } }

    DrawingCase {
        id: testCase

        readonly property var quarterKit: top.steps(20, 120, 2.5)

        name: "Beam"

        function make(properties) {
            const made = createTemporaryObject(beam, top, Object.assign({width: 328}, properties))
            made.height = Qt.binding(() => made.implicitHeight)
            wait(1)
            return made
        }
        /** x of the graduation that stands for a load. */
        function graduation(item, load) {
            const found = named(item, "graduation").filter(mark => mark.of.load === load)
            compare(found.length, 1, "graduations at " + load)
            return found[0].x
        }
        function test_thePoiseStandsAtItsLoad() {
            const item = make({loads: quarterKit, value: 82.5, last: 80, lastText: "last time 80 kg"})
            for (const value of [20, 22.5, 60, 82.5, 100, 117.5, 120]) {
                item.value = value
                compare(one(item, "poise").x, graduation(item, value))
            }
        }
        function test_theScaleIsEven() {
            const item = make({loads: quarterKit, value: 70}), per = (graduation(item, 80) - graduation(item, 60)) / 20
            for (const mark of named(item, "graduation"))
                verify(Math.abs(mark.x - graduation(item, 70) - per * (mark.of.load - 70)) <= 1, "load " + mark.of.load)
        }
        function test_aLoadThatCannotBeHungStandsBetweenGraduations() {
            const item = make({loads: quarterKit, value: 71.3}), x = one(item, "poise").x
            verify(graduation(item, 70) < x && x < graduation(item, 72.5))
            compare(named(item, "graduation").filter(mark => mark.x === x).length, 0)
        }
        function test_lastTimeIsMarked() {
            const item = make({loads: quarterKit, value: 82.5, last: 77.5, lastText: "last time 77.5 kg"})
            compare(one(item, "last").x, graduation(item, 77.5))
            item.last = NaN
            compare(named(item, "last").length, 0)
            compare(named(item, "say").length, 0)
        }
        function test_lastTimeBeyondThePagePointsThere() {
            const item = make({loads: top.steps(20, 300, 2.5), value: 250, last: 25, lastText: "last time 25 kg"})
            verify(one(item, "last").x < 12)
            compare(one(item, "last").rotation, -90)
        }
        function test_aGapIsThin() {
            const item = make({loads: quarterKit.filter(load => load !== 80 && load !== 82.5), value: 77.5}), gap = one(item, "gap")
            compare(gap.x, graduation(item, 77.5))
            compare(gap.x + gap.width, graduation(item, 85))
            compare(gap.height, Theme.hair)
            for (const piece of named(item, "piece"))
                verify(piece.height > gap.height && (piece.x + piece.width <= gap.x || piece.x >= gap.x + gap.width))
        }
        function test_numbersComeFromOutside() {
            const item = make({loads: [40, 42.5, 45], value: 42.5, labelOf: ["88 lb", "", "99 lb"]})
            compare(named(item, "label").map(label => label.text), ["88 lb", "99 lb"])
        }
        function test_itSaysItsSentence() {
            const item = make({loads: quarterKit, value: 82.5, last: 80, valueText: "82.5 kg", lastText: "last time 80 kg"})
            compare(item.Accessible.role, Accessible.Graphic)
            compare(item.Accessible.name, "82.5 kg, last time 80 kg")
            item.sentence = "as before"
            compare(item.Accessible.name, "as before")
        }
        function test_steppingMovesNothingElse() {
            const item = make({loads: quarterKit, value: 20, last: 80, lastText: "last time 80 kg"}), before = item.implicitHeight
            for (const load of quarterKit) {
                item.value = load
                compare(item.implicitHeight, before)
            }
        }
        function test_wordsKeepClear_data() {
            const rows = []
            for (let i = 0; i < 12; ++i)
                rows.push({tag: "kit " + i, index: i})
            return rows
        }
        function test_wordsKeepClear(row) {
            sow(row.index)
            const step = pick([0.5, 1, 1.25, 2.5, 5, 7.3]), loads = []
            for (let load = pick([15, 20, 61.5]); load < 260; load += step)
                if (next(0, 1) > 0.15)
                    loads.push(load)
            const last = Math.round(100 * pick(loads)) / 100, item = make({loads: loads, value: pick(loads), last: last, lastText: "last time " + last + " kg"})
            atEveryTextSize(tag => {
                for (const wide of [200, 328, 448, 900]) {
                    item.width = wide
                    wait(1)
                    const at = row.tag + ", " + tag + ", width " + wide
                    clean(item, at)
                    verify(named(item, "label").length >= 1, at + ": no number")
                    const say = box(one(item, "say"), item), x = one(item, "poise").x
                    const poise = Qt.rect(x - item.poiseHalf, item.beamY, 2 * item.poiseHalf, item.poiseDeep + Theme.ring)
                    verify(!overlap(say, poise), at + ": words on the poise " + say + " " + poise)
                    for (const mark of named(item, "last"))
                        if (mark.rotation !== 180)
                            verify(!overlap(say, Qt.rect(mark.x - Theme.marker / 2, mark.y, Theme.marker, 0.8 * Theme.marker)), at + ": words on last time's mark")
                }
            })
        }
        function test_absurd_data() {
            return [{tag: "no loads", loads: [], value: 80, last: 60}, {tag: "nothing at all", loads: [], value: NaN, last: NaN}, {tag: "one load", loads: [20], value: 20, last: 20},
                {tag: "one of many times", loads: [20, 20, 20], value: 20, last: NaN}, {tag: "no numbers", loads: [NaN, Infinity, 20, 25], value: Infinity, last: -Infinity},
                {tag: "falling", loads: [30, 25, 20], value: 25, last: 30}, {tag: "far away", loads: [20, 22.5], value: 1e9, last: -1e9}, {tag: "very fine", loads: top.steps(0, 1, 0.001), value: 0.5, last: 0.5},
                {tag: "undefined", loads: undefined, value: 40, last: 45}]
        }
        function test_absurd(row) {
            const item = make({loads: row.loads, value: row.value, last: row.last, lastText: "last time"})
            for (const wide of [0, 1, 40, 328]) {
                item.width = wide
                wait(1)
                for (const mark of named(item, "graduation"))
                    verify(Number.isFinite(mark.x))
                verify(named(item, "graduation").length <= 200)
                verify(item.implicitHeight > 0 && item.implicitHeight < 200)
            }
            verify(!grabImage(item).isNull)
        }
        function test_rightToLeftTurnsNothing() {
            staysUnmirrored(top, make({loads: quarterKit, value: 82.5, last: 80, lastText: "last time 80 kg"}))
        }
    }

    function steps(from: real, to: real, step: real): var {
        return Array.from({length: Math.round((to - from) / step) + 1}, (_, i) => from + i * step)
    }
}
