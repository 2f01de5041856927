// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Steelyard.Theme

/** A cam with its lever, cable and stack; the stack, the angle, the radius, the travel or the pull stands out where it is asked. */
Item {
    id: root

    /** The key of what is asked. */
    property string part: ""
    property string sentence: ""
    // the whole figure, in its own measure: from the hand's arc to the stack's edge, from the cam down to the last plate
    readonly property real wideShare: 2.9
    readonly property real deepShare: 2.25
    readonly property real leftShare: 1.65
    readonly property real overShare: 0.65
    readonly property real size: Math.max(Theme.apart, Math.min(root.width / root.wideShare, root.height / root.deepShare))
    readonly property point axis: Qt.point(Math.round((root.width - root.wideShare * root.size) / 2 + root.leftShare * root.size),
                                           Math.round((root.height - root.deepShare * root.size) / 2 + root.overShare * root.size))
    /** Where the cable leaves the cam, straight beside the axis. */
    readonly property real arm: Math.round(0.62 * root.size)
    // the hand goes down, so that the cable lifts the stack
    readonly property point hand: Qt.point(root.axis.x - Math.round(1.5 * root.size), root.axis.y + Math.round(0.6 * root.size))
    readonly property point hook: Qt.point(root.hand.x + 0.2 * root.size, root.hand.y + 0.5 * root.size)
    readonly property real stackY: root.axis.y + Math.round(0.75 * root.size)
    readonly property real plate: Math.max(Theme.rule, 0.15 * root.size)
    readonly property bool byPull: root.part === "travel" || root.part === "pull" || root.part === "scaleStep"

    implicitWidth: 40 * Theme.apart
    implicitHeight: 2 * Theme.touchStep
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    Shape {
        ShapePath {
            strokeColor: Theme.role.ink
            strokeWidth: Theme.rule
            fillColor: Theme.role.wash
            PathSvg { path: root.cam() }
        }
        ShapePath {
            strokeColor: Theme.role.ink
            strokeWidth: 2 * Theme.ring
            capStyle: ShapePath.RoundCap
            fillColor: "transparent"
            PathPolyline { path: [root.axis, root.hand] }
        }
        ShapePath {
            strokeColor: Theme.role.ink
            strokeWidth: Theme.rule
            fillColor: "transparent"
            PathPolyline { path: [Qt.point(root.axis.x + root.arm, root.axis.y), Qt.point(root.axis.x + root.arm, root.stackY)] }
        }
        ShapePath {
            strokeColor: root.part === "angle" || root.part === "travel" ? Theme.role.accent : "transparent"
            strokeWidth: Theme.heavy
            fillColor: "transparent"
            PathSvg { path: root.turn() }
        }
        ShapePath {
            strokeColor: root.byPull ? Theme.role.edge : "transparent"
            strokeWidth: Theme.rule
            fillColor: "transparent"
            PathPolyline { path: [root.hand, root.hook] }
        }
    }
    Rectangle {
        x: root.axis.x - width / 2
        y: root.axis.y - height / 2
        width: Theme.tick
        height: width
        radius: width / 2
        objectName: "axis"
        color: Theme.role.ink
    }
    Tape {
        x: root.axis.x
        y: root.axis.y
        span: root.arm
        objectName: "radius"
        visible: root.part === "radius"
        asked: true
    }
    Rectangle {
        x: root.hook.x - width / 2
        y: root.hook.y
        width: 0.5 * root.size
        height: 0.3 * root.size
        objectName: "scale"
        visible: root.byPull
        color: root.part === "pull" || root.part === "scaleStep" ? Theme.role.accent : Theme.role.wash
        radius: Theme.corner
        border { width: Theme.rule; color: Theme.role.ink }
    }
    Repeater {
        model: 4
        Rectangle {
            required property int index
            x: root.axis.x + root.arm - Math.round(width / 2)
            y: root.stackY + index * (root.plate + 0.05 * root.size)
            width: Math.round(1.2 * root.size)
            height: root.plate
            objectName: "plate"
            radius: Theme.corner
            color: root.part === "stack" ? Theme.role.accent : Theme.role.edge
        }
    }

    /** Round where the cable lies, longer on the other side. */
    function cam(): string {
        const a = root.axis, r = root.arm, far = 1.25 * root.size
        return `M ${a.x + r} ${a.y} C ${a.x + r} ${a.y + 1.2 * r} ${a.x - 0.7 * far} ${a.y + 1.1 * r} ${a.x - 0.6 * far} ${a.y} C ${a.x - 0.5 * far} ${a.y - 1.1 * r} ${a.x + r} ${a.y - 1.3 * r} ${a.x + r} ${a.y} Z`
    }
    /** The way of the hand round the axis, from level down to the lever. */
    function turn(): string {
        const far = Math.hypot(root.hand.x - root.axis.x, root.hand.y - root.axis.y)
        return `M ${root.axis.x - far} ${root.axis.y} A ${far} ${far} 0 0 0 ${root.hand.x} ${root.hand.y}`
    }
}
