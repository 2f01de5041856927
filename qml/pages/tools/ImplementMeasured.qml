// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Drawings
import Steelyard.Theme

/** What is lifted, carried or dragged by itself, as it is measured: seen from the side on the ground, and what is asked stands out. */
Item {
    id: root

    /** "tyre", "log", "stone", "keg", "bag", "sled", "handles", "yoke" or "bell". */
    property string tool: ""
    /** The key of what is asked, without its number. */
    property string part: ""
    property string sentence: ""
    /** It is lifted by a scale: one end or edge, or all of it. */
    readonly property bool scaled: Array.from(["shown", "read", "first", "second", "step", "empty"]).includes(root.part)
    readonly property bool byEnd: root.tool === "tyre" || root.tool === "log"
    readonly property real unit: Math.max(Theme.apart, Math.round(Math.min(root.height / 12, root.width / 24)))
    readonly property real ground: root.height - floor.implicitHeight
    readonly property real middle: root.width / 2

    implicitWidth: 40 * Theme.apart
    implicitHeight: 2 * Theme.touchStep
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    component Solid: Rectangle {
        color: Theme.role.wash
        border { width: Theme.rule; color: Theme.role.ink }
    }
    component Line: Rectangle {
        color: Theme.role.ink
        antialiasing: true
    }

    // the scale's rope, from the end that it lifts up out of the picture
    Line {
        x: root.part === "second" ? root.middle - 0.5 * thing.width : root.byEnd ? root.middle + 0.5 * thing.width - width : root.middle
        width: Theme.rule
        height: Math.max(0, thing.y)
        objectName: "rope"
        visible: root.scaled
        color: Theme.role.accent
    }
    Item {
        id: thing
        width: ({tyre: 14, log: 18, stone: 6, keg: 5, bag: 8, sled: 8, handles: 10, yoke: 14, bell: 4}[root.tool] ?? 8) * root.unit
        height: ({tyre: 4, log: 3, stone: 6, keg: 7, bag: 3, sled: 2, handles: 2, yoke: 8, bell: 6}[root.tool] ?? 4) * root.unit
        x: root.middle - width / 2
        y: root.ground - height - (root.scaled && !root.byEnd ? root.unit : 0)
        objectName: "thing"
        rotation: root.byEnd && root.scaled && root.part !== "step" ? (root.part === "second" ? 5 : -5) : 0
        transformOrigin: root.part === "second" ? Item.BottomRight : Item.BottomLeft

        Solid {
            anchors.fill: parent
            visible: Array.from(["tyre", "log", "stone", "keg", "bag"]).includes(root.tool)
            radius: root.tool === "stone" ? width / 2 : root.tool === "log" ? Theme.corner : root.tool === "keg" ? Theme.apart : height / 2
        }
        // of a tyre the ring that it lies on, narrower than itself
        Line {
            anchors { bottom: parent.bottom; horizontalCenter: parent.horizontalCenter }
            width: 10 * root.unit
            height: Theme.rule
            objectName: "ring"
            visible: root.tool === "tyre"
            color: root.part === "contact" ? Theme.role.accent : Theme.role.ink
        }
        // what is in a keg
        Rectangle {
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Theme.rule }
            height: 0.4 * parent.height
            objectName: "filling"
            visible: root.tool === "keg" && root.part !== "empty"
            color: root.part === "content" || root.part === "depth" ? Theme.role.accent : Theme.role.edge
        }
        // a sled: its deck, a post for plates, the strap that leads up to a belt
        Line {
            anchors.bottom: parent.bottom
            width: parent.width
            height: Theme.bar
            visible: root.tool === "sled"
        }
        Line {
            x: 3 * root.unit
            anchors.bottom: parent.bottom
            width: Theme.bar
            height: 2 * root.unit
            visible: root.tool === "sled"
        }
        Line {
            x: parent.width
            y: parent.height - root.unit
            width: 9 * root.unit
            height: Theme.rule
            objectName: "strap"
            visible: root.tool === "sled" && !root.scaled
            transformOrigin: Item.Left
            rotation: -18
            color: root.part === "strap" ? Theme.role.accent : Theme.role.ink
        }
        // handles, or a yoke with what hangs at its feet
        Repeater {
            model: root.tool === "handles" ? 2 : 0
            Line {
                required property int index
                y: index * (parent?.height ?? 0)
                width: parent?.width ?? 0
                height: Theme.bar
            }
        }
        Line {
            y: 2 * root.unit
            width: parent.width
            height: Theme.bar
            visible: root.tool === "yoke"
        }
        Repeater {
            model: root.tool === "yoke" ? [0, 1] : []
            Line {
                required property int modelData
                x: modelData * ((parent?.width ?? 0) - width)
                width: Theme.bar
                height: parent?.height ?? 0
            }
        }
        // a bell: its handle over its body
        Solid {
            anchors.horizontalCenter: parent.horizontalCenter
            width: 3.2 * root.unit
            height: 3 * root.unit
            visible: root.tool === "bell"
            color: "transparent"
            radius: root.unit
            border { width: Theme.bar; color: root.part === "handle" || root.part === "window" ? Theme.role.accent : Theme.role.ink }
        }
        Solid {
            anchors { bottom: parent.bottom; horizontalCenter: parent.horizontalCenter }
            width: 4 * root.unit
            height: 4 * root.unit
            visible: root.tool === "bell"
            radius: width / 2
        }
    }
    Tape {
        x: root.tool === "tyre" && root.part !== "diameter" ? root.part === "contact" ? root.middle - 5 * root.unit : root.middle : thing.x
        y: thing.y - root.unit
        span: root.part === "lift" ? thing.width / 2 : root.part === "contact" ? 5 * root.unit : thing.width
        asked: true
        objectName: "levelTape"
        visible: Array.from(["lift", "contact", "diameter", "length", "span", "across", "inset"]).includes(root.part)
    }
    Tape {
        x: thing.x - root.unit
        y: root.part === "hook" ? thing.y + thing.height - root.unit : root.part === "depth" ? thing.y + 0.6 * thing.height : thing.y
        upright: true
        span: root.ground - y
        asked: true
        objectName: "uprightTape"
        visible: root.part === "width" || root.part === "depth" || root.part === "hook"
    }
    Floor {
        id: floor
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
    }
}
