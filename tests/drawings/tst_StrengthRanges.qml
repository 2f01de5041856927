// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Drawings

Item {
    id: top

    width: 1280
    height: 1000

    Component { id: ranges; StrengthRanges { unit: "kg"; sentence: "ranges" } }

    DrawingCase {
        readonly property var usual: [{at: 0, low: 98, middle: 105, high: 112, tested: false, breaks: false, day: "3 Aug"}, {at: 50, low: 105, middle: 105, high: 107.5, tested: true, breaks: false, day: "22 Sep"},
            {at: 100, low: 90, middle: 96, high: 101, tested: false, breaks: true, day: "11 Nov"}]

        name: "StrengthRanges"

        function make(properties) {
            const made = createTemporaryObject(ranges, top, Object.assign({width: 328}, properties))
            made.height = Qt.binding(() => made.implicitHeight)
            wait(1)
            return made
        }
        function bars(item) {
            return named(item, "bar")
        }
        /** Both ways to scale: equal days are equally far apart, and a kilogram is as tall on every bar. */
        function test_isToScale() {
            const item = make({days: usual}), places = bars(item).map(bar => bar.parent.x)
            compare(places.length, 3)
            verify(Math.abs(places[1] - places[0] - (places[2] - places[1])) <= 1)
            const perKg = bars(item).map((bar, i) => bar.height / (usual[i].high - usual[i].low))
            verify(Math.abs(perKg[0] - perKg[2]) < 0.2 && Math.abs(perKg[0] - perKg[1]) < 0.6, perKg)
            verify(bars(item)[1].y < bars(item)[2].y, "more stands higher")
        }
        function test_aDiscIsATest() {
            const middles = named(make({days: usual}), "middle")
            compare(middles.map(middle => middle.radius > 0), [false, true, false])
            verify(Math.abs(middles[1].y + middles[1].height / 2 - (bars(middles[1].parent.parent)[1].y + bars(middles[1].parent.parent)[1].height)) <= 2, "a test stands at its low end")
        }
        function test_otherConditionsAreParted() {
            const item = make({days: usual})
            compare(named(item, "break:1").length, 0)
            const cut = one(item, "break:2").mapToItem(item, 0, 0).x
            verify(cut > bars(item)[1].parent.x && cut < bars(item)[2].parent.x)
        }
        function test_absurdInput_data() {
            return [{tag: "nothing", days: []}, {tag: "no list", days: undefined}, {tag: "one", days: [usual[0]]}, {tag: "no numbers", days: [{at: NaN, low: 1, middle: 1, high: 1}, {}]},
                {tag: "all alike", days: [usual[0], Object.assign({}, usual[0])]}, {tag: "a point", days: [{at: 3, low: 5, middle: 5, high: 5, day: "x"}]}]
        }
        function test_absurdInput(row) {
            const item = make({days: row.days})
            for (const bar of bars(item))
                verify(Number.isFinite(bar.y) && bar.height >= 2 && bar.y + bar.height <= item.foot + 1 && bar.parent.x <= item.width, bar)
            verify(named(item, "stop").length <= 5)
        }
    }
}
