// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Charts
import Steelyard.Theme

Item {
    id: top

    width: 1280
    height: 800

    Component {
        id: chart
        PullChart { width: 400; height: 400; heightFrom: 0; heightTo: 1.5; pullFrom: 0; pullTo: 150; plot: Qt.rect(50, 10, 300, 350); curve: null; knownFrom: -Infinity; knownTo: Infinity }
    }

    CurveCase {
        name: "PullChart"

        function make(properties) {
            const made = createTemporaryObject(chart, top, properties)
            wait(1)
            return made
        }
        function test_everyPointReachesItsSeries() {
            const line = curve({n: 200}), item = make({curve: line})
            for (const name of ["zero", "iron", "chain", "band", "total", "low1", "high1", "low2", "high2"])
                compare(held(item.series[name]), line[name], name)
        }
        function test_aNewCurveReplacesTheOld() {
            const item = make({curve: curve({n: 200})}), line = curve({iron: 100, n: 31})
            item.curve = line
            compare(item.series.total.count, 31)
            compare(held(item.series.total), line.total)
            item.curve = null
            compare(item.series.total.count, 0)
        }
        function test_theLineEndsWhereKnowledgeDoes() {
            const line = curve({n: 30}), item = make({curve: line, knownFrom: 0.9, knownTo: 1.234})
            const total = held(item.series.total)
            fuzzyCompare(total[0].y, 0.9, 1e-12)
            fuzzyCompare(total[total.length - 1].y, 1.234, 1e-12)
            fuzzyCompare(total[total.length - 1].x, pullAt(line, 1.234), 1e-9)
            compare(held(item.series.iron), line.iron)
        }
        function test_pointsOfNoNumberAreLeftOut() {
            const line = {total: [Qt.point(1, 0.9), Qt.point(NaN, 1), Qt.point(2, Infinity), Qt.point(3, 1.1)]}
            compare(held(make({curve: line}).series.total), [Qt.point(1, 0.9), Qt.point(3, 1.1)])
        }
        function test_thePlotIsWhereItWasPut() {
            const item = make({curve: curve({})})
            compare(item.plotArea, Qt.rect(50, 10, 300, 350))
        }
        /** The pixels themselves: the heavy line runs through the point that the figures give. */
        function test_theLineIsDrawnThroughItsPoints_data() {
            return [{tag: "light", mode: Theme.Mode.Light}, {tag: "dark", mode: Theme.Mode.Dark}, {tag: "sun", mode: Theme.Mode.Sun}]
        }
        function test_theLineIsDrawnThroughItsPoints(row) {
            Theme.mode = row.mode
            const line = curve({}), item = make({curve: line}), image = grabImage(item)
            for (const height of [0.9, 1.1, 1.3]) {
                const x = Math.round(50 + 300 * pullAt(line, height) / 150), y = Math.round(360 - 350 * height / 1.5)
                verify(Qt.colorEqual(image.pixel(x, y), Theme.role.ink), row.tag + " at " + height + ": " + image.pixel(x, y))
                verify(!Qt.colorEqual(image.pixel(x + 20, y), Theme.role.ink))
            }
        }
        /** Iron, chain and band differ on a grey print too: flat, dotted, hatched. */
        function test_texturesAreThereInEveryTheme() {
            for (const mode of [Theme.Mode.Light, Theme.Mode.Dark, Theme.Mode.Sun]) {
                Theme.mode = mode
                const line = curve({iron: 40, chain: 120, band: 120, n: 20}), item = make({curve: line}), image = grabImage(item), shades = (from, to) => {
                    const seen = new Set()
                    for (let x = from; x < to; ++x)
                        for (let y = 0; y < 8; ++y)
                            seen.add(String(image.pixel(x, Math.round(360 - 350 * 1.3 / 1.5) + y)))
                    return seen.size
                }
                const x = pull => Math.round(50 + 2 * pull)
                compare(shades(x(4), x(34)), 1)
                verify(shades(x(46), x(90)) >= 3, "chain, theme " + mode)
                verify(shades(x(120), x(140)) >= 3, "band, theme " + mode)
            }
        }
        function test_theHeavyLineIsHeavy() {
            const item = make({curve: curve({})})
            compare(item.series.total.width, 3)
            Theme.fit(1280, 800)
            compare(item.series.total.width, 4)
        }
    }
}
