// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** Left, right or both: letter and shape first, colour third. */
Item {
    id: root

    required property string side
    property bool lettered: true
    property int size: Theme.act
    readonly property color ink: root.side === "L" ? Theme.role.left : root.side === "R" ? Theme.role.right : Theme.role.ink
    readonly property string letter: root.side === "L" ? qsTr("L", "left") : root.side === "R" ? qsTr("R", "right") : qsTr("B", "both")

    implicitWidth: row.width
    implicitHeight: row.height
    Accessible.role: Accessible.StaticText
    Accessible.name: root.side === "L" ? qsTr("left") : root.side === "R" ? qsTr("right") : qsTr("both sides")

    Row {
        id: row
        spacing: Theme.line
        LayoutMirroring.enabled: false
        Rectangle {
            anchors.verticalCenter: parent.verticalCenter
            width: Theme.sideMark
            height: Theme.sideMark
            radius: root.side === "L" ? width / 2 : 0
            rotation: root.side === "B" ? 45 : 0
            scale: root.side === "B" ? 0.8 : 1
            color: root.side === "L" ? root.ink : "transparent"
            border { width: Theme.ring; color: root.ink }
        }
        Words {
            visible: root.lettered
            text: root.letter
            size: root.size
            strong: true
            Accessible.ignored: true
        }
    }
}
