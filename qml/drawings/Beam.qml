// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** The beam: one graduation for each load this kit can make; the poise hangs at the load, last time is an open mark. Reads only. */
Item {
    id: root

    /** Ascending, in kg: what this kit can make. Where one is missing the beam is thin. */
    required property var loads
    required property real value
    property real last: NaN
    property string valueText: ""
    property string lastText: ""
    /** Parallel to `loads`; an empty text wants no number. */
    property var labelOf: []
    property string sentence: root.valueText === "" || root.lastText === "" ? root.valueText + root.lastText : root.valueText + ", " + root.lastText

    readonly property real poiseHalf: Math.round(0.64 * Theme.marker)
    readonly property real poiseDeep: 2 * Theme.marker
    readonly property real beamY: Math.ceil(metrics.height) + Theme.tick
    readonly property bool hasLast: Number.isFinite(root.last)
    readonly property real sayWidth: root.hasLast && root.lastText !== "" ? Ruling.wide(metrics.height, metrics, root.lastText) + Theme.rule : 0
    // a long sentence gets its own row, whatever the load, so that nothing below jumps while stepping
    readonly property bool sayBelow: root.sayWidth > root.width / 2 - 3 * Theme.marker
    readonly property alias ruled: ruling.ruled

    implicitWidth: 40 * Theme.apart
    implicitHeight: root.beamY + Theme.ring + (root.sayBelow ? root.poiseDeep + say.height : Math.max(root.poiseDeep, root.sayWidth > 0 ? Math.ceil(metrics.height) + Theme.rule : 0))

    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    BeamRuling {
        id: ruling
        width: root.width
        loads: root.loads
        labelOf: root.labelOf
        value: root.value
        last: root.last
        poiseHalf: root.poiseHalf
        sayWidth: root.sayWidth
        sayBelow: root.sayBelow
        metrics: metrics
    }
    FontMetrics {
        id: metrics
        font { family: Theme.face; pixelSize: Theme.note; weight: Theme.plain }
    }
    Pool {
        list: root.ruled.pieces
        Rectangle {
            id: piece
            required property int index
            readonly property var of: root.ruled.pieces[piece.index] ?? {from: 0, to: 0, gap: false}
            x: piece.of.from
            y: root.beamY
            width: piece.of.to - piece.of.from
            height: piece.of.gap ? Theme.hair : Theme.ring
            objectName: piece.of.gap ? "gap" : "piece"
            visible: piece.index < root.ruled.pieces.length
            color: Theme.role.ink
        }
    }
    Pool {
        list: root.ruled.marks
        Item {
            id: mark
            required property int index
            readonly property var of: root.ruled.marks[mark.index] ?? {load: NaN, x: 0, text: ""}
            x: mark.of.x
            objectName: "graduation"
            visible: mark.index < root.ruled.marks.length
            Rectangle {
                x: -Math.floor(width / 2)
                y: root.beamY - height
                width: mark.of.text !== "" ? Theme.rule : Theme.hair
                height: mark.of.text !== "" ? Theme.tick : Theme.tickSmall
                color: Theme.role.ink
            }
        }
    }
    Pool {
        id: labels
        list: root.ruled.marks.filter(mark => mark.text !== "")
        Words {
            id: label
            required property int index
            readonly property var of: labels.list[label.index] ?? {x: 0, text: "", labelX: 0}
            x: label.of.x + Math.round(label.of.labelX - width / 2)
            objectName: "label"
            visible: text !== ""
            text: label.of.text
            size: Theme.note
            quiet: true
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
    Shape {
        id: poise
        x: root.ruled.value
        y: root.beamY
        objectName: "poise"
        visible: Number.isFinite(root.value) && root.ruled.inside
        ShapePath {
            fillColor: Theme.role.accent
            strokeColor: "transparent"
            PathPolyline { path: root.poiseShape() }
        }
    }
    Shape {
        id: lastMark
        x: root.ruled.last
        y: root.beamY + (root.ruled.lastAbove ? 0 : Theme.ring + Theme.rule)
        objectName: "last"
        visible: root.hasLast && !root.ruled.lastHidden
        rotation: root.ruled.lastAbove ? 180 : root.ruled.lastSide * 90
        transformOrigin: Item.TopLeft
        ShapePath {
            fillColor: Theme.role.paper
            strokeColor: Theme.role.ink
            strokeWidth: Theme.rule
            PathPolyline { path: root.triangle() }
        }
    }
    Words {
        id: say
        x: root.sayBelow ? Math.round(Ruling.within(root.ruled.last - width / 2, 0, root.width - width)) : root.ruled.say
        y: root.sayBelow ? root.beamY + Theme.ring + root.poiseDeep : root.beamY + Theme.ring + Theme.hair
        width: Math.min(root.width, root.sayWidth)
        objectName: "say"
        visible: root.hasLast && text !== ""
        text: root.lastText
        size: Theme.note
        quiet: true
        Accessible.ignored: true
    }

    function poiseShape(): var {
        const half = root.poiseHalf, deep = root.poiseDeep, stem = Theme.rule
        return [Qt.point(-stem, -Theme.tick), Qt.point(stem, -Theme.tick), Qt.point(stem, 0.3 * deep), Qt.point(half, 0.5 * deep),
                Qt.point(half, deep), Qt.point(-half, deep), Qt.point(-half, 0.5 * deep), Qt.point(-stem, 0.3 * deep), Qt.point(-stem, -Theme.tick)]
    }
    function triangle(): var {
        const half = Theme.marker / 2, deep = 0.8 * Theme.marker
        return [Qt.point(0, 0), Qt.point(half, deep), Qt.point(-half, deep), Qt.point(0, 0)]
    }
}
