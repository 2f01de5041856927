// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Charts
import Steelyard.Theme

Item {
    id: top

    width: 1280
    height: 1600

    Component { id: picture; HeightPicture { curve: null; marks: []; sentence: "" } }
    SignalSpy { id: spy; signalName: "readAt" }

    CurveCase {
        id: testCase

        readonly property var usual: curve({})

        name: "HeightPicture"

        function make(properties) {
            const own = {width: 328, unitText: "kg", curve: usual, marks: marks(usual, 0.82, 1.4), sentence: "97 at the bottom", plates: usualPlates, items: usualItems}
            const made = createTemporaryObject(picture, top, Object.assign(own, properties))
            made.height = Qt.binding(() => made.implicitHeight)
            wait(1)
            return made
        }
        /** The area for fingers, and the page's y of a height. */
        function area(item) {
            return one(item, "tapArea")
        }
        function yOf(item, height) {
            return item.frame.floorY - height * item.frame.perMetre
        }
        function test_marksStandAtTheirPlace() {
            const item = make({}), plot = item.frame.plot
            const dots = named(item, "dot").map(dot => box(dot, item))
            compare(dots.length, 3)
            item.marks.slice().reverse().forEach((mark, i) => {
                verify(Math.abs(dots[i].y + dots[i].height / 2 - yOf(item, mark.height)) <= 1, mark.key)
                const x = plot.x + plot.width * mark.pull / item.facts.pullTo
                verify(Math.abs(dots[i].x + dots[i].width / 2 - x) <= 1, mark.key)
            })
        }
        function test_theZoneIsABandAcrossBoth() {
            const item = make({}), zone = box(one(item, "zone"), item), mark = item.marks[1]
            verify(Math.abs(zone.y - yOf(item, mark.zoneTo)) <= 1 && Math.abs(zone.bottom - yOf(item, mark.zoneFrom)) <= 1)
            compare(Array.from(one(item, "zone").children).map(line => line.y), [0, one(item, "zone").height], "lines where it begins and ends")
            verify(zone.x === 0 && zone.right === item.frame.plot.right)
        }
        function test_oneFloorAndOneScaleForBoth() {
            const item = make({barHeight: 1}), bar = one(item, "bar")
            verify(Math.abs(box(bar, item).y - yOf(item, 1)) <= 1)
            const plate = one(bar.parent, "bar") && named(item, "plate")[0]
            verify(Math.abs(plate.height - 0.45 * item.frame.perMetre) <= 1)
            compare(item.chart.heightTo, item.facts.heightTo)
            verify(Math.abs(item.frame.plot.height / item.facts.heightTo - item.frame.perMetre) * item.facts.heightTo <= 1)
        }
        function test_theBarStandsInTheZoneUntilRead() {
            const item = make({})
            compare(item.shownHeight, item.marks[1].height)
            item.barHeight = 1.3
            compare(item.shownHeight, 1.3)
            item.readHeight = 0.9
            compare(item.shownHeight, 0.9)
        }
        function test_aTapReadsTheNearestStop_data() {
            return [{tag: "on a stop", at: 1.2, read: 1.2}, {tag: "a little above", at: 1.218, read: 1.2}, {tag: "nearer the next", at: 1.23, read: 1.25}, {tag: "at a mark", at: 0.83, read: 0.82},
                {tag: "above the path", at: 1.45, read: 1.4}, {tag: "on the floor", at: 0.02, read: 0.82}, {tag: "at the zone", at: 1.06, read: 1.052}]
        }
        function test_aTapReadsTheNearestStop(row) {
            const item = make({}), touch = touchEvent(area(item)), y = yOf(item, row.at)
            spy.target = item
            spy.clear()
            touch.press(0, area(item), 150, y).commit()
            compare(spy.count, 0)
            touch.release(0, area(item), 150, y).commit()
            compare(spy.count, 1)
            fuzzyCompare(spy.signalArguments[0][0], row.read, 1e-9)
            fuzzyCompare(item.readHeight, row.read, 1e-9)
        }
        function test_slidingOffReadsNothing() {
            const item = make({}), touch = touchEvent(area(item))
            spy.target = item
            spy.clear()
            touch.press(0, area(item), 150, 100).commit()
            touch.move(0, area(item), 150, 180).commit()
            touch.release(0, area(item), 150, 180).commit()
            compare(spy.count, 0)
        }
        function test_keysGoFromStopToStop() {
            const item = make({}), read = []
            item.readAt.connect(metres => read.push(Math.round(1000 * metres)))
            item.readHeight = 1.3
            for (let i = 0; i < 3; ++i)
                tap(target(one(item, "readHigher")))
            verify(!target(one(item, "readHigher")).enabled)
            for (let i = 0; i < 14; ++i)
                tap(target(one(item, "readLower")))
            // every five centimetres, and the sticking zone's own height between
            compare(read, [1350, 1400, 1350, 1300, 1250, 1200, 1150, 1100, 1052, 1050, 1000, 950, 900, 850, 820])
            verify(!target(one(item, "readLower")).enabled)
        }
        function test_keysStartFromWhereTheBarStands() {
            const item = make({barHeight: 1.2})
            focusByKey(one(item, "readHigher"))
            keyClick(Qt.Key_Space)
            fuzzyCompare(item.readHeight, 1.25, 1e-9)
        }
        function test_aPageThatBindsTheHeightKeepsItsBinding() {
            const item = make({})
            top.implicitWidth = 1
            item.readHeight = Qt.binding(() => top.implicitWidth)
            item.readAt.connect(metres => top.implicitWidth = metres)
            tap(target(one(item, "readHigher")))
            fuzzyCompare(item.readHeight, 1.05, 1e-9)
            top.implicitWidth = 0.9
            compare(item.readHeight, 0.9)
            top.implicitWidth = 0
        }
        function test_whatIsReadStandsAboveTheFinger() {
            const item = make({}), touch = touchEvent(area(item))
            for (const height of [1.4, 1.2, 0.95]) {
                const y = yOf(item, height)
                touch.press(0, area(item), 200, y).commit()
                touch.release(0, area(item), 200, y).commit()
                item.readingText = Math.round(100 * item.readHeight) + " cm: 118 ± 5 kg"
                wait(1)
                const said = box(one(item, "readingText"), item)
                verify(said.bottom <= y + 1 && said.y >= 0, height + ": " + said + ", finger at " + y)
                verify(said.x >= 0 && said.right <= item.frame.plot.right)
                const dot = box(one(item, "readingDot"), item)
                verify(Math.abs(dot.x + dot.width / 2 - item.xOf(pullAt(usual, item.readHeight))) <= 1)
            }
        }
        function test_withoutReadingNothingCanBeTapped() {
            const item = make({reading: false})
            compare(named(item, "readHigher").length, 0)
            touchEvent(area(item)).press(0, area(item), 150, 100).commit().release(0, area(item), 150, 100).commit()
            verify(isNaN(item.readHeight))
        }
        function test_sharesAreNamedOnlyWhenThere_data() {
            return [{tag: "all", change: {}, want: ["iron", "chain", "band"]}, {tag: "no chain", change: {chain: 0}, want: ["iron", "band"]}, {tag: "no band", change: {band: 0}, want: ["iron", "chain"]},
                {tag: "iron alone", change: {chain: 0, band: 0}, want: ["iron"]}, {tag: "no iron", change: {iron: 0}, want: ["chain", "band"]}, {tag: "help", change: {chain: 0, band: -30}, want: ["iron", "band"]}]
        }
        function test_sharesAreNamedOnlyWhenThere(row) {
            const line = curve(row.change), item = make({curve: line, marks: marks(line, 0.82, 1.4)})
            compare(named(item, "shareName").map(name => name.text), row.want)
        }
        function test_ticksAreFewAndRound() {
            for (const pull of [7, 40, 122, 260, 1245]) {
                const line = curve({iron: pull, chain: 0, band: 0}), item = make({curve: line, marks: []}), ticks = named(item, "tickText")
                verify(ticks.length >= 2 && ticks.length <= 5, pull + ": " + ticks.map(tick => tick.text))
                verify(ticks[ticks.length - 1].text.endsWith(" kg"))
                compare(ticks[0].text, "0")
                const widest = Math.max(...ticks.map(tick => tick.text.endsWith("kg") ? 0 : tick.width))
                verify(ticks.length * widest <= 0.9 * item.frame.plot.width)
            }
        }
        function test_helpTakesAway() {
            const line = curve({chain: 0, band: -60}), item = make({curve: line, marks: marks(line, 0.82, 1.4), bandName: "help"})
            verify(line.total[0].x < line.iron[0].x)
            compare(held(item.chart.series.helped).map(point => point.x), line.total.map(point => point.x))
            const most = curve({iron: 20, chain: 0, band: -60}), under = make({curve: most, marks: marks(most, 0.82, 1.4)})
            verify(under.facts.pullFrom < 0)
            const axis = box(one(under, "axis"), under)
            verify(axis.x > under.frame.plot.x && axis.x < under.frame.plot.right)
        }
        function test_unknownBreaksTheLine_data() {
            return [{tag: "above, said so", change: {unknownAbove: 1.2}, to: 1.2, from: 0.82}, {tag: "below, said so", change: {unknownBelow: 1}, to: 1.4, from: 1},
                {tag: "points end", change: {to: 1.2, unknownFrom: 1.21}, to: 1.2, from: 0.82}, {tag: "points begin late", change: {from: 1, unknownFrom: 0.82}, to: 1.4, from: 1}]
        }
        function test_unknownBreaksTheLine(row) {
            const line = curve(row.change), list = marks(usual, 0.82, 1.4), item = make({curve: line, marks: list, unknownText: "unknown"})
            const total = held(item.chart.series.total), heights = total.map(point => point.y)
            fuzzyCompare(Math.max(...heights), row.to, 1e-9)
            fuzzyCompare(Math.min(...heights), row.from, 1e-9)
            const word = box(one(item, "unknown"), item), edge = yOf(item, row.to < 1.4 ? row.to : row.from)
            verify(row.to < 1.4 ? word.y < edge : word.bottom > edge, word + ", edge " + edge)
        }
        function test_allUnknown() {
            const item = make({curve: {unknownFrom: 0.82, heightTo: 1.5, pullTo: 100}, marks: marks(usual, 0.82, 1.4).map(mark => Object.assign(mark, {pull: NaN, text: "not known"}))})
            compare(named(item, "dot").length, 0)
            one(item, "unknown")
        }
        function test_rightToLeftTurnsNothing() {
            staysUnmirrored(top, make({}))
        }
        function test_itSaysItsSentence() {
            const item = make({})
            compare(item.Accessible.role, Accessible.Graphic)
            compare(item.Accessible.name, "97 at the bottom")
        }
        function test_thePlotKeepsItsPart() {
            for (const sketch of [true, false]) {
                const item = make({withSketch: sketch})
                atEveryTextSize(tag => {
                    item.width = Theme.wide ? 620 : 328
                    wait(1)
                    const chart = item.width * (item.frame.floorY + item.frame.footDeep), plot = item.frame.plot
                    if (Theme.textFactor === 2)
                        verify(plot.width * plot.height >= 0.45 * chart, tag + ": " + plot.width * plot.height / chart)
                    verify(plot.width >= 90 && plot.height >= 150, tag + ": " + plot)
                })
            }
        }
    }
}
