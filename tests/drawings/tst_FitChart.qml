// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Charts
import Steelyard.Theme

Item {
    id: top

    width: 1280
    height: 1200

    Component { id: chart; FitChart { points: []; sentence: "" } }

    CurveCase {
        readonly property var usual: [[2.5, 68.4], [5, 82.9], [7.5, 97.8], [10, 117], [12.5, 124], [15, 137.4]].map((at, i) => ({x: at[0], y: at[1], odd: i === 3, label: "4, odd"}))

        name: "FitChart"

        /** A line of a band that softens a little, in cm over kg. */
        function line(shift: real): var {
            return Array.from({length: 47}, (_, i) => Qt.point(Math.max(0, 15.5 * i / 50 + 2.4 * i * i / 2500 + shift * (0.25 + 0.01 * i)), 52 + 2 * i))
        }
        function make(properties) {
            const own = {width: 328, xUnit: "kg", points: usual, sentence: "Pulls 15.5 kg", fit: line(0), low: line(-1), high: line(1), xTo: 20, yFrom: 40, yTo: 150, measuredTo: 144, measuredText: "measured up to 144 cm"}
            const made = createTemporaryObject(chart, top, Object.assign(own, properties))
            made.height = Qt.binding(() => made.implicitHeight)
            wait(1)
            return made
        }
        function test_dotsStandAtTheirPoints() {
            const item = make({}), plot = item.plot, dots = named(item, "dot").concat(named(item, "oddDot")).map(dot => box(dot, item))
            compare(dots.length, 6)
            usual.filter(point => !point.odd).concat(usual.filter(point => point.odd)).forEach((point, i) => {
                verify(Math.abs(dots[i].x + dots[i].width / 2 - plot.x - plot.width * point.x / 20) <= 1)
                verify(Math.abs(dots[i].y + dots[i].height / 2 - plot.bottom + plot.height * (point.y - 40) / 110) <= 1)
            })
        }
        function test_theOddOneIsOpenAndSaysSo() {
            const item = make({}), odd = one(item, "oddDot")
            verify(Qt.colorEqual(odd.color, Theme.role.paper) && odd.width > named(item, "dot")[0].width)
            compare(one(item, "oddWord").text, "4, odd")
        }
        function test_linesReachTheirSeries() {
            const item = make({})
            compare(held(item.chart.series.fit), line(0))
            compare(held(item.chart.series.low), line(-1))
            compare(held(item.chart.series.high), line(1))
            item.fit = line(0.5)
            compare(held(item.chart.series.fit), line(0.5))
        }
        function test_theEndOfWhatIsMeasured() {
            const item = make({})
            const words = one(item, "measured"), line = item.yOf(144)
            compare(words.text, "measured up to 144 cm")
            verify(Math.abs(words.y + words.height / 2 - line) <= words.height, "the words stand at the line")
            for (const dot of named(item, "dot").map(dot => box(dot, item)))
                verify(!overlap(box(words, item), dot), "and cover no reading")
            item.measuredTo = NaN
            compare(named(item, "measured").length, 0)
            item.measuredTo = 200
            compare(named(item, "measured").length, 0)
        }
        function test_ownTicks() {
            const item = make({xTicks: [0, {at: 10, text: "ten"}, 20, 99], yTicks: [52, {at: 110, text: "here"}]})
            compare(named(item, "tickText").map(tick => tick.text), ["0", "ten", "20 kg"])
            compare(named(item, "sideText").map(text => text.text), ["here", "52"])
        }
        function test_wordsKeepClear_data() {
            return Array.from({length: 16}, (_, i) => ({tag: "band " + i, index: i}))
        }
        function test_wordsKeepClear(row) {
            sow(row.index)
            const points = Array.from({length: whole(1, 9)}, (_, i) => ({x: 2.5 * (i + 1), y: 60 + 10 * i + next(-6, 6), odd: next(0, 1) > 0.6, label: (i + 1) + ", odd"}))
            // one odd word at most stands for the whole class here: several close ones are the page's list
            points.filter(point => point.odd).slice(1).forEach(point => point.odd = false)
            const item = make({points: points, xTo: NaN, yTo: NaN, yFrom: NaN, measuredTo: pick([NaN, 90, 130])})
            atEveryTextSize(tag => {
                item.width = Theme.wide ? 700 : 328
                wait(1)
                clean(item, row.tag + ", " + tag)
                const word = named(item, "oddWord").map(part => box(part, item))[0]
                for (const dot of named(item, "dot").concat(named(item, "oddDot")).map(part => box(part, item)))
                    verify(!word || !overlap(word, dot), row.tag + ", " + tag + ": the word covers a dot")
                if (Theme.textFactor === 2)
                    verify(item.plot.width * item.plot.height >= 0.45 * item.width * item.height, row.tag + ", " + tag + ": plot " + item.plot)
            })
        }
        function test_rightToLeftTurnsNothing() {
            staysUnmirrored(top, make({measuredText: "measured up to 144 cm and no further"}))
        }
        function test_itSaysItsSentence() {
            const item = make({})
            compare(item.Accessible.role, Accessible.Graphic)
            compare(item.Accessible.name, "Pulls 15.5 kg")
        }
        function test_absurd_data() {
            return [{tag: "none", points: []}, {tag: "undefined", points: undefined}, {tag: "no numbers", points: [null, {x: NaN, y: 1}, {x: 1, y: Infinity, odd: true}], fit: [Qt.point(NaN, 1)]},
                {tag: "one", points: [{x: 1, y: 1}], fit: [], low: [], high: []}, {tag: "all alike", points: [{x: 0, y: 50}, {x: 0, y: 50, odd: true, label: "2"}]},
                {tag: "axes upside down", xTo: -5, yFrom: 200, yTo: 10}, {tag: "huge", points: [{x: 1e8, y: 1e8, odd: true, label: "1"}]}, {tag: "no lines", fit: undefined, low: null, high: undefined}]
        }
        function test_absurd(row) {
            const properties = Object.assign({}, row)
            delete properties.tag
            const item = make(properties)
            for (const [wide, high] of [[0, 0], [1, 1], [80, 60], [328, 264]]) {
                item.width = wide
                item.height = high
                wait(1)
                verify(item.plot.width >= 1 && item.plot.height >= 1)
                for (const dot of named(item, "dot"))
                    verify(Number.isFinite(dot.x) && Number.isFinite(dot.y))
            }
            verify(!grabImage(item).isNull)
        }
    }
}
