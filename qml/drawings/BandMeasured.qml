// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** A band on its hook beside a tape: loose, or with plates on it and longer than loose. */
Item {
    id: root

    /** "rest", "mass" or "length". */
    property string part: ""
    property string sentence: ""
    readonly property bool loaded: root.part !== "rest"
    readonly property real hook: Theme.apart
    readonly property real plates: 2 * (Theme.apart + Theme.rule)
    /** Loaded, it and its plates fill the height; loose, it is a share of that. */
    readonly property real stretched: Math.max(Theme.indent, root.height - Theme.bar - root.hook / 2 - Theme.line - root.plates)
    readonly property real span: Math.round((root.loaded ? 1 : 0.6) * root.stretched)
    readonly property real across: Math.max(4 * Theme.indent, 0.3 * root.height)

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
            width: 1.5 * root.across
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
                width: Math.round(root.across)
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
