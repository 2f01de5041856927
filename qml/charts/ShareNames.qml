// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Theme

/** Names of the shares, each on a line from its share: in one row when they fit, else in steps that no line crosses. */
Item {
    id: root

    /** Every name there is to place, in any order. */
    required property var every
    /** The same from left to right; the item's y is where the lines start, at these x. */
    required property var names
    required property var starts
    property real from: 0
    property real to: root.width
    property bool upwards: false
    /** Rows there is room for. */
    property int rows: 3
    /** How far below (or above) that the first row has to stand off besides. */
    property real skip: 0

    readonly property var widths: root.names.map(name => root.wideOf(name))
    readonly property real line: Math.ceil(metrics.height)
    /** Room that one row of all names takes. */
    readonly property real rowWide: root.every.reduce((sum, name) => sum + root.wideOf(name) + Theme.apart, -Theme.apart)
    readonly property real longest: Math.max(0, ...root.every.map(name => root.wideOf(name)))
    readonly property var spots: root.starts.length === root.names.length ? root.place() : []

    Accessible.ignored: true

    FontMetrics {
        id: metrics
        font { family: Theme.face; pixelSize: Theme.note; weight: Theme.plain }
    }
    Repeater {
        model: root.names
        Item {
            id: share
            required property string modelData
            required property int index
            readonly property real start: root.starts[share.index] ?? 0
            readonly property var spot: root.spots[share.index] ?? {x: 0, row: 0, straight: true}
            readonly property real reach: Theme.tick - Theme.rule + root.skip + (share.spot.ticked === true ? 0 : share.spot.row * root.line)

            Rectangle {
                x: share.start
                y: root.upwards ? -height : 0
                width: Theme.hair
                height: share.reach
                visible: share.spot.straight
                objectName: "shareLine"
                color: Theme.role.ink
            }
            Shape {
                visible: !share.spot.straight
                ShapePath {
                    strokeColor: Theme.role.ink
                    strokeWidth: Theme.hair
                    fillColor: "transparent"
                    PathPolyline {
                        path: [Qt.point(share.start, 0), Qt.point(share.spot.x + (root.widths[share.index] ?? 0) / 2, (root.upwards ? -1 : 1) * share.reach)]
                    }
                }
            }
            Words {
                x: share.spot.x
                y: root.upwards ? -Theme.tick - root.skip - (share.spot.row + 1) * root.line : Theme.tick + root.skip + share.spot.row * root.line
                objectName: "shareName"
                text: share.modelData
                size: Theme.note
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }

    function wideOf(name: string): real {
        return Ruling.wide(metrics.height, metrics, name) + Theme.rule
    }
    /** In one row, each below its start or nearly so; else in steps; else in one row on slanted lines, however far. */
    function place(): var {
        const fits = root.rowWide <= root.to - root.from
        const centres = Ruling.apart(root.starts, root.widths, Theme.apart, root.from, root.to)
        const row = centres.map((centre, i) => ({x: Math.round(centre - root.widths[i] / 2), row: 0,
            straight: Math.abs(centre - root.starts[i]) <= root.widths[i] / 2 - Theme.line}))
        if (fits && (root.rows === 1 || centres.every((centre, i) => Math.abs(centre - root.starts[i]) <= root.widths[i])))
            return row
        // a line at its neighbour's word reads as a letter of it, so it keeps off where there is room
        for (const off of [Theme.apart, Theme.rule]) {
            const found = root.steps([], 2, off) ?? (root.rows > 2 ? root.steps([], 3, off) : null)
            if (found)
                return found
        }
        return fits ? row : root.listed()
    }
    /** Names in rows of their own below short ticks, for shares so thin that no lines could part them. */
    function listed(): var {
        return root.widths.map((wide, i) => ({x: Math.round(Ruling.within(root.starts[i] - wide / 2, root.from, Math.max(root.from, root.to - wide))),
            row: i, straight: true, ticked: true}))
    }
    /** Finds every name a row and a side of its own straight line, so that no line crosses a name; null when there is no way. */
    function steps(placed: var, rows: int, off: real): var {
        const i = placed.length
        if (i === root.starts.length)
            return placed
        const start = root.starts[i], wide = root.widths[i]
        for (let row = 0; row < rows; ++row)
            for (const x of [start - wide / 2, start - Theme.rule, start - wide + Theme.rule].map(Math.round)) {
                const spot = {x: x, row: row, straight: true}
                if (x >= root.from && x + wide <= root.to && placed.every((other, k) => root.clear(spot, i, other, k, off) && root.clear(other, k, spot, i, off))) {
                    const found = root.steps(placed.concat(spot), rows, off)
                    if (found)
                        return found
                }
            }
        return null
    }
    /** Whether the line and the name of `spot` keep clear of the name of `other`, the line by so much. */
    function clear(spot: var, i: int, other: var, k: int, off: real): bool {
        const left = other.x - off, right = other.x + root.widths[k] + off
        const lineClear = spot.row < other.row || root.starts[i] <= left || root.starts[i] >= right
        return lineClear && (spot.row !== other.row || spot.x >= other.x + root.widths[k] + 2 * Theme.rule || spot.x + root.widths[i] <= other.x - 2 * Theme.rule)
    }
}
