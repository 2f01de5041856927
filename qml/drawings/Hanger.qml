// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** A chain or a band as it leaves the sleeve, for the plate strip. */
Item {
    id: root

    property bool chain: true
    readonly property real pitch: Theme.tickSmall + Theme.rule
    readonly property real link: root.pitch + Theme.line

    Repeater {
        model: root.chain ? Math.max(1, Math.floor((root.height - root.link) / root.pitch) + 1) : 0
        Rectangle {
            required property int index
            readonly property bool face: index % 2 === 0
            x: Math.round(root.width / 2 - width / 2)
            y: index * root.pitch
            width: face ? root.pitch : Theme.line
            height: root.link
            radius: width / 2
            color: face ? "transparent" : Theme.role.ink
            border { width: Theme.rule; color: Theme.role.ink }
        }
    }
    Rectangle {
        x: Math.round(root.width / 2 - width / 2)
        width: 2 * Theme.tickSmall
        height: root.height
        visible: !root.chain
        color: "transparent"
        radius: Theme.tickSmall
        border { width: Theme.ring; color: Theme.role.ink }
    }
}
