// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** What helps to measure and to hang, as it is measured: a scale, iron on it, a strap, a rack. */
Item {
    id: root

    /** "scale", "bar", "plates", "lead" or "rack". */
    property string tool: ""
    /** The key of what is asked, without its number. */
    property string part: ""
    property string sentence: ""
    readonly property bool strap: root.tool === "lead" && root.part === "length"

    implicitWidth: 40 * Theme.apart
    implicitHeight: 2 * Theme.touchStep
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    HangingScale {
        id: hanging
        anchors { top: parent.top; bottom: parent.bottom; horizontalCenter: parent.horizontalCenter }
        width: Math.min(root.width, 12 * hanging.unit)
        visible: root.tool !== "rack" && !root.strap
        asked: root.part === "empty" || root.part === "step" || root.part === "read" || root.part === "mass"

        Item {
            anchors.horizontalCenter: parent?.horizontalCenter
            width: parent?.width ?? 0
            height: parent?.height ?? 0

            Rectangle {
                anchors.horizontalCenter: parent.horizontalCenter
                width: Theme.rule
                height: hanging.unit
                color: Theme.role.ink
            }
            Rectangle {
                y: hanging.unit
                anchors.horizontalCenter: parent.horizontalCenter
                width: parent.width
                height: Math.max(Theme.line + Theme.rule, Math.round(0.25 * hanging.unit))
                objectName: "bar"
                visible: root.tool === "bar"
                color: root.part === "marked" ? Theme.role.accent : Theme.role.ink
            }
            Repeater {
                model: root.tool === "plates" || root.tool === "scale" && (root.part === "known" || root.part === "read") ? 2 : 0
                Rectangle {
                    required property int index
                    y: hanging.unit + index * (height + Theme.rule)
                    anchors.horizontalCenter: parent?.horizontalCenter
                    width: 5 * hanging.unit
                    height: Math.max(Theme.apart, Math.round(0.4 * hanging.unit))
                    objectName: "plate"
                    radius: Theme.corner
                    color: root.part === "known" || root.part === "marked" || root.part === "count" ? Theme.role.accent : Theme.role.edge
                }
            }
            Rectangle {
                y: hanging.unit
                anchors.horizontalCenter: parent.horizontalCenter
                width: Theme.tick
                height: parent.height - hanging.unit
                visible: root.tool === "lead"
                color: "transparent"
                radius: width / 2
                border { width: Theme.ring; color: Theme.role.ink }
            }
        }
    }
    Item {
        anchors { top: parent.top; bottom: parent.bottom; horizontalCenter: parent.horizontalCenter }
        width: 12 * Theme.indent
        visible: root.strap

        Rectangle {
            anchors.horizontalCenter: parent.horizontalCenter
            width: parent.width
            height: Theme.line + Theme.rule
            color: Theme.role.ink
        }
        Rectangle {
            y: Theme.line
            anchors.horizontalCenter: parent.horizontalCenter
            width: Theme.tick
            height: parent.height - Theme.indent
            color: "transparent"
            radius: width / 2
            border { width: Theme.ring; color: Theme.role.ink }
        }
        Tape {
            x: parent.width / 2 + 3 * Theme.indent
            y: Theme.line
            upright: true
            span: parent.height - Theme.indent
            asked: true
        }
    }
    Item {
        id: rack

        readonly property real foot: height - Theme.apart - Theme.rule
        // spacing: three holes, large; else the lowest one and what stands over it
        readonly property bool near: root.part === "spacing"
        readonly property int holes: rack.near ? 3 : Math.max(2, Math.min(6, Math.floor(0.6 * rack.foot / (2.5 * Theme.tick))))
        readonly property real pitch: rack.near ? 0.36 * rack.foot : 0.62 * rack.foot / rack.holes
        readonly property real lowest: rack.near ? 0.86 * rack.foot : 0.66 * rack.foot
        readonly property real hole: Math.min(0.5 * rack.pitch, rack.near ? 2 * Theme.indent : Theme.tick)

        anchors { top: parent.top; bottom: parent.bottom; horizontalCenter: parent.horizontalCenter }
        width: 12 * Theme.indent
        visible: root.tool === "rack"

        Rectangle {
            id: upright
            x: (parent.width - width) / 2
            width: 2 * rack.hole + Theme.apart
            height: rack.near ? parent.height : rack.foot
            color: Theme.role.wash
            border { width: Theme.rule; color: Theme.role.ink }
        }
        Repeater {
            model: rack.holes
            Rectangle {
                required property int index
                x: upright.x + (upright.width - width) / 2
                y: rack.lowest - index * rack.pitch - height / 2
                width: rack.hole
                height: width
                objectName: "hole"
                radius: width / 2
                color: Theme.role.paper
                border { width: Theme.rule; color: root.part === "count" || index === 0 && root.part === "lowest" ? Theme.role.accent : Theme.role.ink }
            }
        }
        Floor {
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
            visible: !rack.near
        }
        // from the middle of a hole
        Repeater {
            model: root.part === "lowest" ? [rack.lowest] : rack.near ? [rack.lowest, rack.lowest - rack.pitch] : []
            Rectangle {
                required property real modelData
                x: upright.x - 2 * Theme.indent
                y: modelData
                width: upright.width / 2 + 2 * Theme.indent
                height: Theme.hair
                color: Theme.role.accent
            }
        }
        Tape {
            x: upright.x - 2 * Theme.indent
            y: rack.lowest
            upright: true
            span: rack.foot - rack.lowest
            asked: true
            visible: root.part === "lowest"
        }
        Tape {
            x: upright.x - 2 * Theme.indent
            y: rack.lowest - rack.pitch
            upright: true
            span: rack.pitch
            asked: true
            objectName: "pitchTape"
            visible: rack.near
        }
        Tape {
            x: upright.x + upright.width + 2 * Theme.indent
            y: rack.lowest + rack.pitch / 2
            upright: true
            span: rack.foot - y
            asked: true
            visible: root.part === "anchor"
        }
    }
}
