// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** A bar that an elastic strap carries over the chest: the plates on it, or a tape from the chest up to it. */
Item {
    id: root

    /** "mass" or "height". */
    property string part: ""
    property string sentence: ""
    readonly property real deep: Math.min(root.height, 5 * Theme.touch)
    readonly property real ground: root.height - Theme.apart - Theme.indent
    readonly property real lie: root.ground - 0.3 * root.deep
    readonly property real barY: root.ground - 0.72 * root.deep
    readonly property real half: Math.min(0.4 * root.width, 1.6 * root.deep)

    implicitWidth: 40 * Theme.apart
    implicitHeight: 2 * Theme.touchStep
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    Floor {
        y: root.ground
        width: root.width
    }
    Item {
        id: middle
        x: Math.round(root.width / 2)

        // bench and chest, seen from her feet
        Rectangle {
            x: -Math.round(width / 2)
            y: root.lie
            width: 5 * Theme.indent
            height: root.ground - y
            color: Theme.role.wash
            border { width: Theme.hair; color: Theme.role.edge }
        }
        Rectangle {
            x: -Math.round(width / 2)
            y: root.lie - height / 2
            width: 7 * Theme.indent
            height: 2 * Theme.indent
            objectName: "chest"
            color: Theme.role.paper
            radius: height / 2
            border { width: Theme.rule; color: Theme.role.ink }
        }
        // the strap from arm to arm, under the bar
        Rectangle {
            x: -Math.round(width / 2)
            y: root.barY + Theme.bar
            width: 9 * Theme.indent
            height: Theme.tick
            objectName: "strap"
            color: "transparent"
            radius: height / 2
            border { width: Theme.ring; color: Theme.role.ink }
        }
        Rectangle {
            x: -Math.round(width / 2)
            y: root.barY - height / 2
            width: 2 * root.half
            height: 2 * Theme.ring
            objectName: "bar"
            color: Theme.role.ink
        }
        Repeater {
            model: 4
            Rectangle {
                required property int index
                readonly property real side: index % 2 === 0 ? -1 : 1
                x: Math.round(side * (root.half - Theme.apart - Math.floor(index / 2) * (Theme.apart + Theme.rule)) - width / 2)
                y: root.barY - height / 2
                width: Theme.apart
                height: Math.round(0.5 * root.deep)
                objectName: "plate"
                radius: Theme.corner
                color: root.part === "mass" ? Theme.role.accent : Theme.role.edge
            }
        }
        Tape {
            x: Math.round(0.62 * root.half)
            y: root.barY
            upright: true
            span: root.lie - Theme.indent - root.barY
            asked: root.part === "height"
        }
    }
}
