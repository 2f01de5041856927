// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Theme

/** Names of the shares, each on a line from its share: in one row when they fit, else in steps that no line crosses. */
Item {
    id: root

    /** From left to right; the item's y is where the lines start, at these x. */
    required property var names
    required property var starts
    property real from: 0
    property real to: root.width
    property bool upwards: false

    readonly property var widths: root.names.map(name => Ruling.wide(metrics.height, metrics, name) + Theme.rule)
    readonly property real line: Math.ceil(metrics.height)
    /** Room that one row of all names takes. */
    readonly property real rowWide: root.widths.reduce((sum, wide) => sum + wide + Theme.apart, -Theme.apart)
    readonly property var spots: root.starts.length === root.names.length ? root.place() : []
    /** How far the names reach from where the lines start. */
    readonly property real deep: root.names.length === 0 ? 0 : Theme.tick + root.line * Math.max(1, ...root.spots.map(spot => spot.row + 1))

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
            readonly property real reach: Theme.tick - Theme.rule + share.spot.row * root.line

            Rectangle {
                x: share.start
                y: root.upwards ? -height : 0
                width: Theme.hair
                height: share.reach
                visible: share.spot.straight
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
                y: root.upwards ? -Theme.tick - (share.spot.row + 1) * root.line : Theme.tick + share.spot.row * root.line
                objectName: "shareName"
                text: share.modelData
                size: Theme.note
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }

    function place(): var {
        const wanted = root.starts
        if (root.rowWide <= root.to - root.from) {
            const centres = Ruling.apart(wanted, root.widths, Theme.apart, root.from, root.to)
            return centres.map((centre, i) => ({x: Math.round(centre - root.widths[i] / 2), row: 0,
                straight: Math.abs(centre - wanted[i]) <= root.widths[i] / 2 - Theme.line}))
        }
        return root.steps(wanted, true) ?? root.steps(wanted, false)
            ?? wanted.map((x, i) => ({x: Math.round(Ruling.within(x, root.from, Math.max(root.from, root.to - root.widths[i]))), row: i, straight: false}))
    }
    /** Steps down to the left, each word right of its line, or down to the right, each word left of it. */
    function steps(wanted: var, rightwards: bool): var {
        const made = wanted.map((x, i) => ({x: Math.round(rightwards ? x - Theme.line : x - root.widths[i] + Theme.line),
            row: rightwards ? wanted.length - 1 - i : i, straight: true}))
        return made.every((spot, i) => spot.x >= root.from && spot.x + root.widths[i] <= root.to
                                    && wanted.every((x, k) => made[k].row <= spot.row || x < spot.x || x > spot.x + root.widths[i])) ? made : null
    }
}
