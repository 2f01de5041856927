// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Drawings

DrawingCase {
    name: "Ruling"

    function test_whatFitsStays() {
        compare(Ruling.apart([10, 50, 90], [10, 10, 10], 5, 0, 100), [10, 50, 90])
    }
    function test_twoOfOneWishPartEvenly() {
        compare(Ruling.apart([50, 50], [20, 20], 4, 0, 100), [38, 62])
    }
    function test_anEdgeHoldsThem() {
        compare(Ruling.apart([2, 4], [20, 20], 0, 0, 100), [10, 30])
        compare(Ruling.apart([98, 99], [20, 20], 0, 0, 100), [70, 90])
    }
    function test_tooManyStartAtTheBeginning() {
        compare(Ruling.apart([50, 50, 50], [40, 40, 40], 0, 0, 100), [20, 60, 100])
        compare(Ruling.apart([], [], 4, 0, 100), [])
    }
    /** Over many rows: order and gaps hold, and a row that can be kept whole is not moved further than it must. */
    function test_manyRows() {
        for (let run = 0; run < 300; ++run) {
            const n = whole(1, 8), sizes = [], wanted = []
            for (let i = 0; i < n; ++i) {
                sizes.push(next(5, 60))
                wanted.push(next(-50, 650))
            }
            wanted.sort((a, b) => a - b)
            const gap = next(0, 10), places = Ruling.apart(wanted, sizes, gap, 0, 600)
            compare(places.length, n)
            for (let i = 1; i < n; ++i)
                verify(places[i] - places[i - 1] >= (sizes[i] + sizes[i - 1]) / 2 + gap - 1e-9, "run " + run)
            verify(places[0] - sizes[0] / 2 >= -1e-9 && places[n - 1] + sizes[n - 1] / 2 <= 600 + 1e-9, "run " + run)
            // no single one could move nearer to its wish without touching a neighbour or an edge
            for (let i = 0; i < n; ++i) {
                const way = Math.sign(wanted[i] - places[i])
                const edge = way > 0 ? (i + 1 < n ? places[i + 1] - sizes[i + 1] / 2 - gap : 600) - sizes[i] / 2
                                     : (i > 0 ? places[i - 1] + sizes[i - 1] / 2 + gap : 0) + sizes[i] / 2
                verify(Math.abs(wanted[i] - places[i]) < 1e-6 || Math.abs(edge - places[i]) < 1e-6, "run " + run + ", number " + i)
            }
        }
    }
    function test_ticks_data() {
        return [{tag: "hundred", from: 0, to: 130, most: 5, want: [0, 50, 100]}, {tag: "small", from: 0, to: 7, most: 5, want: [0, 2, 4, 6]},
            {tag: "below zero", from: -20, to: 30, most: 5, want: [-20, 0, 20]}, {tag: "not from zero", from: 40, to: 150, most: 5, want: [50, 75, 100, 125, 150]},
            {tag: "nothing", from: 5, to: 5, most: 5, want: []}, {tag: "backwards", from: 5, to: 1, most: 5, want: []},
            {tag: "without end", from: 0, to: Infinity, most: 5, want: []}, {tag: "no number", from: 0, to: NaN, most: 5, want: []}]
    }
    function test_ticks(row) {
        compare(Ruling.ticks(row.from, row.to, row.most), row.want)
    }
    function test_manyTicks() {
        for (let run = 0; run < 300; ++run) {
            const from = next(-500, 500), to = from + Math.pow(10, next(-3, 4)), most = whole(1, 8), ticks = Ruling.ticks(from, to, most)
            verify(ticks.length <= most, "run " + run)
            for (const tick of ticks)
                verify(tick >= from - 1e-6 * (to - from) && tick <= to + 1e-6 * (to - from), "run " + run)
            if (most >= 3)
                verify(ticks.length >= 1, "run " + run + ": none of " + most + " from " + from + " to " + to)
        }
    }
    function test_written() {
        compare([0, 50, 2.5, 0.125, 0.1 + 0.2, -20].map(x => Ruling.written(x)), ["0", "50", "2.5", "0.125", "0.3", "-20"])
    }
    function test_missingNumbers() {
        compare([NaN, Infinity, undefined, null, "4", 4].map(x => Ruling.number(x, 7)), [7, 7, 7, 7, 7, 4])
        compare([NaN, -1, 0, 3].map(x => Ruling.size(x, 7)), [7, 7, 7, 3])
        compare([null, undefined, [], [1]].map(x => Ruling.list(x).length), [0, 0, 0, 1])
    }
}
