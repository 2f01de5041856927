// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Charts
import Steelyard.Controls

/** The charts; the figures are invented, only their shape matters. */
QtObject {
    id: root

    readonly property var entries: [{name: "pull by height", component: pull}, {name: "pull by height, read", component: read}, {name: "pull by height, not known to the top", component: unknown},
        {name: "pull by height, help from above", component: above}, {name: "fit", component: fit}, {name: "fit, an odd one", component: odd}, {name: "level with her strength", component: level}]
    readonly property var plates: [{diameterMm: 450, thicknessMm: 45}, {diameterMm: 228, thicknessMm: 25}]
    readonly property var items: [{kind: "chain", hang: "straight", lead: 0.45, length: 0.7, pitch: 0.048, wire: 0.016}, {kind: "band", hang: "single", length: 0.5, anchorHeight: 0}]
    readonly property var usual: root.curve({})

    component Pull: HeightPicture {
        Layout.fillWidth: true
        curve: root.usual
        marks: root.marks(root.usual, 0.82, 1.4)
        sentence: "97 at the bottom, 107 in the sticking zone, 126 ± 4 at the top"
        unitText: "kg"
        plates: root.plates
        items: root.items
    }
    component Fit: FitChart {
        readonly property var hung: [[2.5, 68.4], [5, 82.9], [7.5, 97.8], [10, 111], [12.5, 124], [15, 137.4]]
        Layout.fillWidth: true
        points: hung.map(at => ({x: at[0], y: at[1], odd: false, label: ""}))
        sentence: "pulls 15.5 kg at 144 cm"
        xUnit: "kg"
        fit: root.line(0)
        low: root.line(-1)
        high: root.line(1)
        xTo: 20
        yFrom: 40
        yTo: 150
        measuredTo: 144
        measuredText: "measured up to 144 cm"
    }
    readonly property Component pull: Component {
        Sheet { heading: "Pull by height"; back: "Kit"; Pull { } }
    }
    readonly property Component read: Component {
        Sheet { heading: "Read at a height"; back: "Kit"; Pull { readHeight: 1.05; readingText: "105 cm: 109 ± 3 kg" } }
    }
    readonly property Component unknown: Component {
        Sheet {
            heading: "Past what was measured"
            back: "Kit"
            Pull { curve: root.curve({unknownAbove: 1.2}); marks: root.marks(root.usual, 0.82, 1.4).slice(0, 2) }
        }
    }
    readonly property Component above: Component {
        Sheet {
            heading: "From above"
            back: "Kit"
            Pull { curve: root.curve({iron: 140, chain: 0, band: -40}); marks: root.marks(root.curve({iron: 140, chain: 0, band: -40}), 0.82, 1.4); items: [] }
        }
    }
    readonly property Component fit: Component {
        Sheet { heading: "A band's readings"; back: "Kit"; Fit { } }
    }
    readonly property Component odd: Component {
        Sheet {
            heading: "One does not belong"
            back: "Kit"
            Fit { points: hung.map((at, i) => ({x: at[0], y: i === 3 ? 117 : at[1], odd: i === 3, label: "4, odd"})) }
        }
    }

    readonly property Component level: Component {
        Sheet {
            heading: "Level with her strength"
            back: "Kit"
            LevelPicture {
                Layout.fillWidth: true
                pull: root.heights(at => 62 + 22 * at)
                strength: root.heights(at => 96 + 44 * at * at)
                strengthLow: root.heights(at => 88 + 42 * at * at)
                strengthHigh: root.heights(at => 104 + 46 * at * at)
                share: root.heights(at => 64 - 3 * at * (1 - at))
                shareLow: root.heights(at => 59 - 3 * at * (1 - at))
                shareHigh: root.heights(at => 69 - 3 * at * (1 - at))
                plain: root.heights(at => 76 - 24 * at * at)
                pullUnit: "kg"
                heightUnit: "cm"
                sentence: "she pulls 64 % of what she can hold"
            }
        }
    }

    function heights(at: var): var {
        return Array.from({length: 41}, (_, i) => Qt.point(at(i / 40), 82 + 1.45 * i))
    }
    function line(shift: real): var {
        return Array.from({length: 47}, (_, i) => Qt.point(Math.max(0, 15.5 * i / 50 + 2.4 * i * i / 2500 + shift * (0.25 + 0.01 * i)), 52 + 2 * i))
    }
    function curve(change: var): var {
        const o = Object.assign({iron: 82.5, chain: 11.4, band: 36, from: 0.82, to: 1.4, n: 59, unknownAbove: NaN}, change)
        const made = {zero: [], iron: [], chain: [], band: [], total: [], low1: [], high1: [], low2: [], high2: [], heightTo: NaN, pullTo: NaN, unknownAbove: o.unknownAbove, unknownBelow: NaN, unknownFrom: NaN}
        for (let i = 0; i < o.n; ++i) {
            const h = o.from + (o.to - o.from) * i / (o.n - 1), chain = o.iron + o.chain * (h - o.from + 0.1)
            const total = chain + o.band * (o.band < 0 ? o.to - h + 0.2 : h - o.from + 0.2), u = 0.03 * Math.abs(total - o.iron)
            const row = {zero: 0, iron: o.iron, chain: chain, band: total, total: total, low1: total - u, high1: total + u, low2: total - 2 * u, high2: total + 2 * u}
            for (const name in row)
                if (["zero", "iron", "chain"].includes(name) || !(h > o.unknownAbove))
                    made[name].push(Qt.point(row[name], h))
        }
        return made
    }
    function mark(key: string, name: string, curve: var, height: real): var {
        const point = curve.total.reduce((best, at) => Math.abs(at.y - height) < Math.abs(best.y - height) ? at : best)
        return {key: key, name: name, height: height, heightText: String(Math.round(100 * height)), pull: point.x, text: Math.round(point.x) + " ± 4"}
    }
    function marks(curve: var, bottom: real, top: real): var {
        const middle = bottom + 0.4 * (top - bottom), zone = root.mark("zone", "sticking", curve, middle), half = 0.1 * (top - bottom)
        return [root.mark("bottom", "bottom", curve, bottom), Object.assign(zone, {zoneFrom: middle - half, zoneTo: middle + half}), root.mark("top", "top", curve, top)]
    }
}
