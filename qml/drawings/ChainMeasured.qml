// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** A chain as it is measured: straight on the floor beside a tape, on a hanging scale, or one link of it. */
Item {
    id: root

    /** The key of what is asked. */
    property string part: ""
    property string sentence: ""
    property bool longLink: false
    readonly property bool lying: root.part === "length"
    readonly property bool weighed: root.part === "mass" || root.part === "scaleStep"
    /** The height of a link that lies; the chain lies in the middle of its room. */
    readonly property real link: Math.max(Theme.tick, Math.min(2 * Theme.indent, Math.round(root.height / 6)))
    readonly property real pitch: 2 * root.link

    implicitWidth: 40 * Theme.apart
    implicitHeight: 2 * Theme.touchStep
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    LinkGauge {
        anchors.fill: parent
        visible: !root.lying && !root.weighed
        part: root.part
        longLink: root.longLink
    }
    Item {
        id: floor
        readonly property int links: Math.max(3, Math.floor((root.width - 2 * Theme.indent) / root.pitch / 2) * 2 - 1)
        readonly property real span: floor.links * root.pitch + Theme.apart
        anchors { horizontalCenter: parent.horizontalCenter; verticalCenter: parent.verticalCenter }
        width: floor.span
        height: Theme.apart + root.link
        visible: root.lying

        Repeater {
            model: root.lying ? floor.links : 0
            Rectangle {
                required property int index
                readonly property bool face: index % 2 === 0
                x: index * root.pitch
                anchors.bottom: parent?.bottom
                anchors.bottomMargin: Theme.apart + (face ? 0 : root.link / 2 - Theme.line / 2)
                width: root.pitch + Theme.apart
                height: face ? root.link : Theme.line
                radius: height / 2
                color: face ? "transparent" : Theme.role.ink
                border { width: Theme.ring; color: Theme.role.ink }
            }
        }
        Floor {
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom; leftMargin: -Theme.indent; rightMargin: -Theme.indent }
        }
        Tape {
            y: -Theme.indent
            span: floor.span
            asked: true
        }
    }
    HangingScale {
        anchors { top: parent.top; bottom: parent.bottom; horizontalCenter: parent.horizontalCenter }
        width: Math.min(root.width, Math.max(10 * Theme.apart, root.height / 2))
        visible: root.weighed
        asked: root.part === "scaleStep"

        Hanger {
            anchors.fill: parent
            visible: root.weighed
        }
    }
}
