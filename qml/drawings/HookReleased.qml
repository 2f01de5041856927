// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** One end of the bar with its release hook, to scale over the floor: at the top, where the hook's foot stands, and where the bar is free. */
Item {
    id: root

    /** Heights of the bar's centre, in metres: those of the three pictures, and the lowest that she goes. */
    required property real highest
    required property real touch
    required property real free
    /** Of the hook from seat to foot, and from the bar's centre to the seat. */
    required property real length
    required property real sleeve
    property real lowest: 0
    property var names: ["", "", ""]
    property string sentence: ""
    readonly property real below: labels.height + Theme.apart + Theme.rule + Theme.apart
    readonly property real ground: root.height - root.below
    readonly property real upmost: Math.max(0.1, root.highest + 3 * root.sleeve)
    readonly property real scaled: root.ground / root.upmost
    readonly property real third: Math.floor(root.width / 3)

    implicitWidth: 40 * Theme.apart
    implicitHeight: Math.round(Theme.pictureHeight * 0.65) + root.below
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    Floor {
        y: root.ground
        width: root.width
    }
    // how deep she goes, along all three
    Rectangle {
        y: root.yOf(root.lowest)
        width: root.width
        height: Theme.hair
        objectName: "lowest"
        visible: root.lowest > 0
        color: Theme.role.accent
    }
    Repeater {
        model: [root.highest, root.touch, root.free]
        Item {
            id: one

            required property int index
            required property real modelData
            readonly property real bar: one.modelData
            /** The seat rides on the sleeve until the foot stands; from there on the bar goes down without it. */
            readonly property real seat: Math.max(one.bar + root.sleeve, root.length)
            readonly property bool released: one.index === 2

            x: one.index * root.third
            width: root.third
            height: root.height
            objectName: "picture:" + one.index

            Rectangle {
                id: shank
                x: Math.round(one.width / 2) + Math.max(Theme.apart, Math.round(root.sleeve * root.scaled))
                y: root.yOf(one.seat)
                width: Theme.bar
                height: Math.round(root.length * root.scaled)
                objectName: "hook"
                color: one.released ? Theme.role.edge : Theme.role.ink
            }
            // over the sleeve, and the foot below
            Rectangle {
                x: sleeve.x + Math.round(sleeve.width / 2) - Theme.line
                y: shank.y
                width: shank.x - x + shank.width
                height: Theme.bar
                color: shank.color
            }
            Rectangle {
                x: shank.x - Theme.apart
                y: shank.y + shank.height - height
                width: 2 * Theme.apart + shank.width
                height: Theme.bar
                objectName: "foot"
                color: shank.color
            }
            Rectangle {
                x: shank.x - Math.round(width / 2) + Theme.rule
                y: shank.y + Math.round(0.55 * shank.height)
                width: 4 * Theme.apart
                height: Theme.inset
                objectName: "plates"
                radius: Theme.corner
                color: Theme.role.paper
                border { width: Theme.rule; color: shank.color }
            }
            Rectangle {
                id: sleeve
                readonly property real wide: Math.max(Theme.inset, Math.round(2 * root.sleeve * root.scaled))
                x: Math.round((one.width - width) / 2)
                y: root.yOf(one.bar) - Math.round(height / 2)
                width: sleeve.wide
                height: sleeve.wide
                objectName: "bar"
                radius: width / 2
                color: Theme.role.paper
                border { width: Theme.ring; color: Theme.role.ink }
            }
        }
    }
    // in a narrow column with large text one below the other, from left to right
    Grid {
        id: labels
        y: root.ground + Theme.apart + Theme.rule + Theme.apart
        columns: Theme.stacked ? 1 : 3
        Repeater {
            model: root.names
            Words {
                required property string modelData
                width: Theme.stacked ? root.width : root.third
                leftPadding: Theme.line
                rightPadding: Theme.line
                text: modelData
                size: Theme.note
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
            }
        }
    }

    function yOf(height: real): real {
        return Math.round(root.ground - height * root.scaled)
    }
}
