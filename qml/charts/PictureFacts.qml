// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Charts
import Steelyard.Drawings

/** What a curve and its marks say, with everything that is missing or absurd put right or left out. */
QtObject {
    id: root

    required property var curve
    required property var marks
    property real barHeight: NaN
    property var shareNames: ["", "", ""]

    /** Top down. */
    readonly property var known: Ruling.list(root.marks).filter(mark => Number.isFinite(mark?.height)).sort((a, b) => b.height - a.height)
        .map(mark => Object.assign({}, mark, {name: String(mark.name ?? ""), text: String(mark.text ?? ""), heightText: String(mark.heightText ?? ""),
            zoned: Number.isFinite(mark.zoneFrom) && Number.isFinite(mark.zoneTo)}))
    readonly property var lines: ({iron: root.points("iron"), chain: root.points("chain"), band: root.points("band"), total: root.points("total"),
        low2: root.points("low2"), high2: root.points("high2")})
    readonly property var markHeights: root.known.map(mark => mark.height)
    /** Ends of the bar's path and marks on it, and the part of it along which the shares are drawn. */
    readonly property var path: root.markHeights.concat(root.ironEnds, root.totalEnds)
    readonly property var ironEnds: Array.from(LineReading.heights(root.lines.iron))
    readonly property var totalEnds: Array.from(LineReading.heights(root.lines.total))
    readonly property real from: root.path.length > 0 ? Math.min(...root.path) : 0
    readonly property real to: root.path.length > 0 ? Math.max(...root.path) : 0
    readonly property real drawnFrom: root.ironEnds[0] ?? root.from
    readonly property real drawnTo: root.ironEnds[1] ?? root.to
    readonly property real topmost: Math.max(0.1, root.to, ...root.markHeights)
    readonly property real heightTo: Math.max(Ruling.size(root.curve?.heightTo, 0), 1.03 * root.topmost)
    readonly property var pullsSeen: [].concat(...["iron", "chain", "total", "low2", "high2"].map(name => Array.from(LineReading.pulls(root.lines[name]))))
    readonly property real pullFrom: Math.min(0, ...root.pullsSeen)
    readonly property real pullTo: Math.max(Ruling.size(root.curve?.pullTo, 0), 1.02 * Math.max(0, ...root.pullsSeen), root.pullFrom + 1)
    /** Between these the total is known; with unknownFrom alone, where the total's own points end tells on which side. */
    readonly property bool gappy: Number.isFinite(root.curve?.unknownFrom)
    readonly property real knownTo: Ruling.number(root.curve?.unknownAbove,
        root.gappy && Math.max(root.from, ...root.totalEnds) < root.to - 0.001 ? Math.max(root.from, ...root.totalEnds) : Infinity)
    readonly property real knownFrom: Ruling.number(root.curve?.unknownBelow,
        root.gappy && root.totalEnds[0] > root.from + 0.001 ? root.totalEnds[0] : -Infinity)
    /** Shares too thin to point at from below, but not from above. */
    readonly property bool seenAbove: root.thinnest(root.drawnFrom) < 0.01 && root.thinnest(root.drawnTo) >= 0.01
    readonly property real standing: root.stand()
    /** Of iron, chain and band those that are there. */
    readonly property var present: root.find()

    function points(name: string): var {
        return LineReading.finite(root.curve?.[name] ?? [])
    }
    function stand(): real {
        const zone = root.known.find(mark => mark.zoned)
        return Math.max(0, Ruling.number(root.barHeight, zone ? zone.height : (root.from + root.to) / 2))
    }
    /** x of a line at a height, along its own points; NaN where it has none. */
    function at(line: var, height: real): real {
        return LineReading.at(line, height)
    }
    function find(): var {
        const least = 0.004 * (root.pullTo - root.pullFrom), zero = LineReading.onAxis(root.lines.iron)
        const pairs = [[zero, root.lines.iron], [root.lines.iron, root.lines.chain], [root.lines.chain, root.lines.band]]
        const made = []
        pairs.forEach((pair, i) => {
            if (LineReading.parted(pair[0], pair[1], least))
                made.push({name: root.shareNames[i], low: pair[0], high: pair[1], band: i === 2})
        })
        return made
    }
    /** The thinnest share at a height, as a part of the scale; none: all of it. */
    function thinnest(height: real): real {
        return Math.min(1, ...root.present.map(share => Ruling.number(Math.abs(root.at(share.high, height) - root.at(share.low, height)), 0) / (root.pullTo - root.pullFrom)))
    }
    /** Names of the shares with the pull at the middle of each at a height, from left to right. */
    function sharesAt(height: real): var {
        const total = root.at(root.lines.band, height)
        return root.present.map(share => {
            const a = root.at(share.low, height), b = root.at(share.high, height)
            // what help from above takes off is not there to be named
            const low = share.band ? Math.min(a, b) : a, high = share.band ? Math.max(a, b) : Number.isFinite(total) && total > a ? Math.min(b, total) : b
            return {name: share.name, pull: Ruling.number((low + high) / 2, Ruling.number(a, 0))}
        }).sort((a, b) => a.pull - b.pull)
    }
}
