// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** A warning with its reason beside a bar, or a stop as a solid block: "do not lift this", the only use of red. */
Rectangle {
    id: root

    required property string head
    property string body: ""
    property bool stop: false
    readonly property color front: root.stop ? Theme.role.stopText : Theme.role.ink

    implicitWidth: Theme.touchMain
    implicitHeight: texts.height + 2 * (root.stop ? Theme.inset : Theme.line)
    color: root.stop ? Theme.role.stop : "transparent"
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.body ? root.head + ". " + root.body : root.head

    Rectangle {
        anchors.left: parent.left
        width: Theme.bar
        height: parent.height
        visible: !root.stop
        color: Theme.role.ink
    }
    Column {
        id: texts
        anchors {
            left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter
            leftMargin: Theme.indent; rightMargin: root.stop ? Theme.indent : 0
        }
        Words {
            width: parent.width
            text: root.head
            strong: true
            color: root.front
            Accessible.ignored: true
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.body
            color: root.front
            Accessible.ignored: true
        }
    }
}
