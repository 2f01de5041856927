// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** A measured distance: a line with a stroke at each end; what is asked for now is heavy. */
Item {
    id: root

    property bool upright: false
    property bool asked: false
    property real span: 0
    readonly property real thick: root.asked ? Theme.heavy : Theme.hair
    readonly property color tint: root.asked ? Theme.role.accent : Theme.role.edge

    Accessible.ignored: true

    Rectangle {
        x: root.upright ? -Math.floor(width / 2) : 0
        y: root.upright ? 0 : -Math.floor(height / 2)
        width: root.upright ? root.thick : root.span
        height: root.upright ? root.span : root.thick
        objectName: "tape"
        color: root.tint
    }
    Repeater {
        model: 2
        Rectangle {
            id: end
            required property int index
            readonly property real at: end.index * (root.span - root.thick)
            x: root.upright ? -Math.floor(Theme.tick / 2) : end.at
            y: root.upright ? end.at : -Math.floor(Theme.tick / 2)
            width: root.upright ? Theme.tick : root.thick
            height: root.upright ? root.thick : Theme.tick
            color: root.tint
        }
    }
}
