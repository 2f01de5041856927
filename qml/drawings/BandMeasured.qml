// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** A band on its hook beside a tape: loose, or with plates on it. */
Item {
    id: root

    /** "rest", "mass" or "length". */
    property string part: ""
    property string sentence: ""
    readonly property bool loaded: root.part !== "rest"
    readonly property real hook: Theme.apart
    readonly property real plates: root.loaded ? 2 * Theme.indent : 0
    readonly property real span: Math.max(Theme.indent, root.loaded ? root.height - root.hook - root.plates - Theme.apart : 0.55 * (root.height - root.hook))

    implicitWidth: 40 * Theme.apart
    implicitHeight: 2 * Theme.touchStep
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    Item {
        id: middle
        x: Math.round(root.width / 2)
        height: root.height

        Rectangle {
            x: -Math.round(width / 2)
            width: 6 * Theme.indent
            height: Theme.bar
            color: Theme.role.ink
        }
        Rectangle {
            x: -Math.round(width / 2)
            y: Theme.bar
            width: Theme.line
            height: root.hook
            color: Theme.role.ink
        }
        Rectangle {
            id: band
            x: -Math.round(width / 2)
            y: Theme.bar + root.hook / 2
            width: root.loaded ? Theme.tick : Theme.indent + Theme.line
            height: root.span
            objectName: "band"
            color: "transparent"
            radius: width / 2
            border { width: root.loaded ? Theme.ring : Theme.bar; color: Theme.role.ink }
        }
        Rectangle {
            x: -Math.round(width / 2)
            y: band.y + band.height - Theme.line
            width: Theme.line
            height: Theme.apart
            visible: root.loaded
            color: Theme.role.ink
        }
        Repeater {
            model: root.loaded ? 2 : 0
            Rectangle {
                required property int index
                x: -Math.round(width / 2)
                y: band.y + band.height + Theme.line + index * (Theme.apart + Theme.rule)
                width: 4 * Theme.indent
                height: Theme.apart
                objectName: "plate"
                radius: Theme.corner
                color: root.part === "mass" ? Theme.role.accent : Theme.role.edge
            }
        }
        Tape {
            x: 3 * Theme.indent
            y: band.y
            upright: true
            span: band.height
            asked: root.part !== "mass"
        }
    }
}
