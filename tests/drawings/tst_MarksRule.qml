// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Drawings

Item {
    id: top

    width: 1280
    height: 1000

    Component { id: rule; MarksRule { marks: [] } }

    DrawingCase {
        readonly property var usual: [{name: "bottom", height: 0.82, text: "82 cm"}, {name: "sticking zone", height: 1.04, text: "98–110 cm", zoneFrom: 0.98, zoneTo: 1.1}, {name: "top", height: 1.4, text: "140 cm"}]

        name: "MarksRule"

        function make(properties) {
            const made = createTemporaryObject(rule, top, Object.assign({width: 328}, properties))
            made.height = Qt.binding(() => made.implicitHeight)
            wait(1)
            return made
        }
        function test_marksStandAtTheirHeights() {
            const item = make({marks: usual, reach: 1.5}), per = (item.foot - 8) / 1.5
            compare(named(item, "line").map(line => line.y), [1.4, 1.04, 0.82].map(height => Math.round(item.foot - height * per)))
            const zone = one(item, "zone")
            compare(zone.y, Math.round(item.foot - 1.1 * per))
            compare(zone.y + zone.height, Math.round(item.foot - 0.98 * per))
        }
        function test_graduationsAreEven() {
            const item = make({marks: usual, reach: 1.5}), grades = named(item, "grade").map(grade => grade.y)
            verify(grades.length >= 15)
            compare(grades[0], Math.round(item.foot))
            for (let i = 0; i < grades.length; ++i)
                verify(Math.abs(grades[0] - grades[i] - i * (grades[0] - grades[grades.length - 1]) / (grades.length - 1)) <= 1)
        }
        function test_inches() {
            const item = make({marks: [{name: "top", height: 1.4, text: "55 in"}], unitLength: 0.0254}), numbers = words(item).map(word => word.text).filter(text => /^\d+$/.test(text))
            verify(numbers.includes("10") && numbers.includes("50") && !numbers.includes("100"), numbers)
        }
        function test_wordsKeepClear_data() {
            return Array.from({length: 12}, (_, i) => ({tag: "marks " + i, index: i}))
        }
        function test_wordsKeepClear(row) {
            sow(row.index)
            const bottom = next(0.1, 1.2), climb = pick([0.02, 0.1, 0.4, 0.9]), marks = [{name: "bottom", height: bottom, text: Math.round(100 * bottom) + " cm"},
                {name: pick(["sticking zone", "zona de estancamiento", "zone"]), height: bottom + climb / 2, text: "98–110 cm", zoneFrom: bottom + climb / 3, zoneTo: bottom + climb / 1.5},
                {name: "top", height: bottom + climb, text: Math.round(100 * (bottom + climb)) + " cm"}]
            const item = make({marks: marks.slice(0, whole(1, 3))})
            atEveryTextSize(tag => {
                for (const wide of [328, 500]) {
                    item.width = wide
                    wait(1)
                    clean(item, row.tag + ", " + tag + ", width " + wide)
                }
            })
        }
        function test_itSaysItsSentence() {
            const item = make({marks: usual})
            compare(item.Accessible.role, Accessible.Graphic)
            compare(item.Accessible.name, "top 140 cm, sticking zone 98–110 cm, bottom 82 cm")
        }
        function test_rightToLeftTurnsNothing() {
            staysUnmirrored(top, make({marks: usual}))
        }
        function test_absurd_data() {
            return [{tag: "none", marks: []}, {tag: "undefined", marks: undefined}, {tag: "no heights", marks: [{name: "a", text: "b"}, {height: NaN}, null]},
                {tag: "all in one", marks: [{height: 1}, {height: 1}, {height: 1}]}, {tag: "on the floor", marks: [{name: "bottom", height: 0, text: "0 cm"}]},
                {tag: "below the floor", marks: [{name: "bottom", height: -0.5, text: "−50 cm"}]}, {tag: "in the sky", marks: [{name: "top", height: 1e6, text: "far"}]}]
        }
        function test_absurd(row) {
            const item = make({marks: row.marks})
            for (const wide of [0, 1, 120, 328]) {
                item.width = wide
                wait(1)
                verify(Number.isFinite(item.implicitHeight) && item.implicitHeight > 0)
                verify(named(item, "grade").length <= 400)
            }
            item.unitLength = NaN
            verify(!grabImage(item).isNull)
        }
    }
}
