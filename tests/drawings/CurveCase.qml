// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

/** A test case with pull curves to draw; the figures are invented, only their shape matters. */
DrawingCase {
    id: root

    readonly property var usualPlates: [{diameterMm: 450, thicknessMm: 45}, {diameterMm: 228, thicknessMm: 25}]
    readonly property var usualItems: [{kind: "chain", hang: "straight", lead: 0.45, length: 0.7, pitch: 0.048, wire: 0.016}, {kind: "band", hang: "single", length: 0.5, anchorHeight: 0}]

    /** `change` may set iron, chain (kg a metre), band (kg a metre, below zero helps), from, to, n, unknownAbove, unknownBelow, unknownFrom. */
    function curve(change: var): var {
        const o = Object.assign({iron: 82.5, chain: 11.4, band: 36, from: 0.82, to: 1.4, n: 59, heightTo: NaN, pullTo: NaN}, change)
        const made = {zero: [], iron: [], chain: [], band: [], total: [], low1: [], high1: [], low2: [], high2: [], heightTo: o.heightTo, pullTo: o.pullTo,
            unknownAbove: o.unknownAbove ?? NaN, unknownBelow: o.unknownBelow ?? NaN, unknownFrom: o.unknownFrom ?? NaN}
        for (let i = 0; i < o.n; ++i) {
            const h = o.from + (o.to - o.from) * i / Math.max(1, o.n - 1), chain = o.iron + o.chain * (h - o.from + 0.1)
            const total = chain + o.band * (o.band < 0 ? o.to - h + 0.2 : h - o.from + 0.2), u = 0.03 * Math.abs(total - o.iron)
            const row = {zero: 0, iron: o.iron, chain: chain, band: total, total: total, low1: total - u, high1: total + u, low2: total - 2 * u, high2: total + 2 * u}
            for (const name in row)
                made[name].push(Qt.point(row[name], h))
        }
        return made
    }
    function pullAt(curve: var, height: real): real {
        const line = curve.total
        for (let i = 1; i < line.length; ++i)
            if (line[i].y >= height - 1e-9)
                return line[i - 1].x + (line[i].x - line[i - 1].x) * (height - line[i - 1].y) / (line[i].y - line[i - 1].y)
        return NaN
    }
    function mark(key: string, name: string, curve: var, height: real): var {
        const pull = root.pullAt(curve, height)
        return {key: key, name: name, height: height, heightText: String(Math.round(100 * height)), pull: pull, text: Math.round(pull) + "±4"}
    }
    function marks(curve: var, bottom: real, top: real): var {
        const middle = bottom + 0.4 * (top - bottom), zone = root.mark("zone", "sticking zone", curve, middle), half = 0.1 * (top - bottom)
        return [root.mark("bottom", "bottom", curve, bottom), Object.assign(zone, {zoneFrom: middle - half, zoneTo: middle + half}), root.mark("top", "top", curve, top)]
    }
    /** The points a series holds, as a list. */
    function held(series: var): var {
        return Array.from({length: series.count}, (_, i) => series.at(i))
    }
}
