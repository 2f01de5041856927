// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** A bar that an elastic strap carries over the chest: the plates on it, or a tape from the chest up to it. */
Item {
    id: root

    /** "mass" or "height". */
    property string part: ""
    property string sentence: ""
    /** Nothing rests on the strap yet: hands let the bar down. */
    property bool bare: false
    readonly property real ground: root.height - Theme.apart - Theme.rule
    // from the top of a plate down to the floor, in shares of what there is
    readonly property real plate: Math.round(0.4 * root.ground)
    readonly property real barY: Math.round(0.24 * root.ground)
    readonly property real chestTop: Math.round(0.58 * root.ground)
    readonly property real chest: Math.round(0.22 * root.ground)
    readonly property real half: Math.min(0.42 * root.width, 1.2 * root.ground)

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
            y: root.chestTop + root.chest
            width: Math.round(0.5 * root.half)
            height: root.ground - y
            color: Theme.role.wash
            border { width: Theme.hair; color: Theme.role.edge }
        }
        Rectangle {
            id: chest
            x: -Math.round(width / 2)
            y: root.chestTop
            width: Math.round(0.8 * root.half)
            height: root.chest
            objectName: "chest"
            color: Theme.role.paper
            radius: height / 2
            border { width: Theme.rule; color: Theme.role.ink }
        }
        // the strap from arm to arm, under the bar
        Rectangle {
            id: strap
            x: -Math.round(width / 2)
            y: root.barY + Theme.rule
            width: Math.round(0.9 * root.half)
            height: Math.max(Theme.tick, Math.round(0.1 * root.ground))
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
            model: root.bare ? 0 : 4
            Rectangle {
                required property int index
                readonly property real side: index % 2 === 0 ? -1 : 1
                x: Math.round(side * (root.half - Theme.apart - Math.floor(index / 2) * (Theme.apart + Theme.rule)) - width / 2)
                y: root.barY - height / 2
                width: Theme.apart
                height: root.plate
                objectName: "plate"
                radius: Theme.corner
                color: root.part === "mass" ? Theme.role.accent : Theme.role.edge
            }
        }
        Repeater {
            model: root.bare ? 2 : 0
            Item {
                id: hand
                required property int index
                x: Math.round((hand.index === 0 ? -1 : 1) * 0.72 * root.half)
                objectName: "hand"
                // the arm that comes down to it, and its fingers round the bar
                Rectangle {
                    x: -Math.round(width / 2)
                    width: Theme.indent
                    height: root.barY
                    color: Theme.role.paper
                    border { width: Theme.rule; color: Theme.role.ink }
                }
                Repeater {
                    model: 4
                    Rectangle {
                        required property int index
                        x: (index - 2) * Theme.tickSmall
                        y: root.barY - Theme.apart
                        width: Theme.tickSmall + Theme.hair
                        height: 2 * Theme.apart
                        radius: width / 2
                        color: Theme.role.paper
                        border { width: Theme.rule; color: Theme.role.ink }
                    }
                }
            }
        }
        Tape {
            x: Math.round(0.55 * root.half)
            y: root.barY
            upright: true
            span: root.chestTop - root.barY
            asked: root.part === "height"
        }
        Words {
            x: strap.x - width - Theme.line
            y: root.barY + Theme.ring
            visible: width + 2 * Theme.line < root.half - 4 * Theme.apart - strap.width / 2
            objectName: "strapWord"
            text: qsTr("strap")
            size: Theme.note
            quiet: true
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
        Words {
            x: -Math.round(width / 2)
            y: chest.y + Math.round((chest.height - height) / 2)
            visible: height <= chest.height && width + chest.height < chest.width
            objectName: "chestWord"
            text: qsTr("chest")
            size: Theme.note
            quiet: true
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
}
