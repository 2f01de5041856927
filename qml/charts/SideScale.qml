// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Theme

/** Numbers beside an upright axis, each at its height or as near as its neighbours let it. */
Item {
    id: root

    /** Texts from the top down, and the height on the page of each. */
    required property var texts
    required property var heights
    /** Where the axis stands; the words end left of it. */
    required property real axis
    property real lowest: root.height
    property bool ticked: true

    readonly property real wide: Math.max(0, ...root.texts.map(text => Ruling.wide(metrics.height, metrics, text))) + Theme.rule
    readonly property real least: root.wide + Theme.apart + (root.ticked ? Theme.tickSmall : 2 * Theme.line)
    readonly property var places: Ruling.apart(root.heights, root.heights.map(() => Math.ceil(metrics.height)), 0, 0, root.lowest)

    readonly property real highestWord: root.places.length > 0 ? root.places[0] - metrics.height / 2 : 0
    readonly property real lowestWord: root.places.length > 0 ? root.places[root.places.length - 1] + metrics.height / 2 : 0

    Accessible.ignored: true

    FontMetrics {
        id: metrics
        font { family: Theme.face; pixelSize: Theme.note; weight: Theme.plain }
    }
    Repeater {
        model: root.texts
        Item {
            id: stop
            required property string modelData
            required property int index
            readonly property real at: root.heights[stop.index] ?? 0
            readonly property real place: Math.round(root.places[stop.index] ?? stop.at)
            Rectangle {
                x: root.axis - width
                y: stop.at
                width: Theme.tickSmall
                height: Theme.hair
                visible: root.ticked
                color: Theme.role.ink
            }
            Leader {
                x: root.axis - Theme.line - span
                visible: !root.ticked && Math.abs(to - from) > Theme.line
                from: stop.place
                to: stop.at
                span: Theme.line
            }
            Words {
                id: words
                x: root.axis - width - Theme.apart - Theme.line
                y: Math.round(stop.place - height / 2)
                objectName: "sideText"
                text: stop.modelData
                size: Theme.note
                quiet: true
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }
}
