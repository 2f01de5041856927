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
        anchors { top: parent.top; bottom: parent.bottom; horizontalCenter: parent.horizontalCenter }
        width: 20 * Theme.apart
        visible: root.tool !== "rack" && !root.strap
        asked: root.part === "empty" || root.part === "step" || root.part === "read" || root.part === "mass"

        Item {
            anchors.horizontalCenter: parent?.horizontalCenter
            width: parent?.width ?? 0
            height: parent?.height ?? 0

            Rectangle {
                anchors.horizontalCenter: parent.horizontalCenter
                width: Theme.rule
                height: Theme.indent
                color: Theme.role.ink
            }
            Rectangle {
                y: Theme.indent
                anchors.horizontalCenter: parent.horizontalCenter
                width: parent.width
                height: Theme.line + Theme.rule
                objectName: "bar"
                visible: root.tool === "bar"
                color: root.part === "marked" ? Theme.role.accent : Theme.role.ink
            }
            Repeater {
                model: root.tool === "plates" || root.tool === "scale" && (root.part === "known" || root.part === "read") ? 2 : 0
                Rectangle {
                    required property int index
                    y: Theme.indent + index * (Theme.apart + Theme.rule)
                    anchors.horizontalCenter: parent?.horizontalCenter
                    width: 5 * Theme.indent
                    height: Theme.apart
                    objectName: "plate"
                    radius: Theme.corner
                    color: root.part === "known" || root.part === "marked" || root.part === "count" ? Theme.role.accent : Theme.role.edge
                }
            }
            Rectangle {
                y: Theme.indent
                anchors.horizontalCenter: parent.horizontalCenter
                width: Theme.tick
                height: parent.height - Theme.indent
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

        readonly property int holes: 7
        readonly property real pitch: (height - 2 * Theme.indent) / holes
        readonly property real lowest: height - Theme.apart - 1.5 * rack.pitch

        anchors { top: parent.top; bottom: parent.bottom; horizontalCenter: parent.horizontalCenter }
        width: 12 * Theme.indent
        visible: root.tool === "rack"

        Rectangle {
            id: upright
            x: parent.width / 2
            width: Theme.indent + Theme.line
            height: parent.height - Theme.apart
            color: Theme.role.wash
            border { width: Theme.rule; color: Theme.role.ink }
        }
        Repeater {
            model: rack.holes
            Rectangle {
                required property int index
                x: upright.x + (upright.width - width) / 2
                y: rack.lowest - index * rack.pitch - height / 2
                width: Theme.tickSmall
                height: width
                objectName: "hole"
                radius: width / 2
                color: root.part === "count" ? Theme.role.accent : index === 0 && root.part === "lowest" ? Theme.role.accent : Theme.role.ink
            }
        }
        Floor {
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        }
        Tape {
            x: upright.x - 2 * Theme.indent
            y: rack.lowest
            upright: true
            span: rack.height - Theme.apart - rack.lowest
            asked: true
            visible: root.part === "lowest"
        }
        Tape {
            x: upright.x - 2 * Theme.indent
            y: rack.lowest - rack.pitch
            upright: true
            span: rack.pitch
            asked: true
            visible: root.part === "spacing"
        }
        Tape {
            x: upright.x + upright.width + 2 * Theme.indent
            y: rack.lowest + rack.pitch / 2
            upright: true
            span: rack.height - Theme.apart - y
            asked: true
            visible: root.part === "anchor"
        }
    }
}
