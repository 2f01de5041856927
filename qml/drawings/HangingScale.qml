// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Theme

/** A hanging scale on its hook, with what hangs below it; its display stands out where its reading is asked for. */
Item {
    id: root

    property bool asked: false
    /** It grows with its room. */
    readonly property real unit: Math.max(Theme.indent, Math.round(root.height / 9))
    default property alias load: place.data

    Accessible.ignored: true

    Rectangle {
        anchors.horizontalCenter: parent.horizontalCenter
        width: 4 * root.unit
        height: Theme.bar
        color: Theme.role.ink
    }
    Rectangle {
        anchors.horizontalCenter: parent.horizontalCenter
        width: Theme.rule
        height: box.y
        color: Theme.role.ink
    }
    Rectangle {
        id: box
        y: root.unit
        anchors.horizontalCenter: parent.horizontalCenter
        width: 3 * root.unit
        height: 2 * root.unit
        color: Theme.role.wash
        radius: Theme.corner
        border { width: Theme.rule; color: Theme.role.ink }

        Rectangle {
            anchors.centerIn: parent
            width: 2 * root.unit
            height: 0.8 * root.unit
            color: Theme.role.paper
            border { width: root.asked ? Theme.ring : Theme.hair; color: root.asked ? Theme.role.accent : Theme.role.ink }
        }
    }
    Item {
        id: place
        anchors { left: parent.left; right: parent.right; top: box.bottom; bottom: parent.bottom }
    }
}
