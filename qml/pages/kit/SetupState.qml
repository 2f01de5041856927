// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Whether the load may be lifted, and what settles it. */
Rectangle {
    id: root

    required property setupAnswer answer
    readonly property color front: root.answer.stop ? Theme.role.stopText : Theme.role.ink

    implicitWidth: words.implicitWidth
    implicitHeight: Math.max(Theme.touch, words.height + 2 * Theme.apart)
    color: root.answer.stop ? Theme.role.stop : root.answer.ready ? Theme.role.paper : Theme.role.wash
    radius: Theme.corner
    border { width: root.answer.ready ? Theme.rule : root.answer.stop ? 0 : Theme.edging; color: root.answer.ready ? Theme.role.ink : Theme.role.edge }
    Accessible.role: Accessible.StaticText
    Accessible.name: root.answer.state + ". " + root.answer.reason

    Column {
        id: words
        anchors { left: parent.left; right: parent.right; leftMargin: Theme.indent; rightMargin: Theme.indent; verticalCenter: parent.verticalCenter }
        Words {
            width: parent.width
            objectName: "state"
            text: root.answer.state
            size: Theme.act
            strong: true
            color: root.front
            Accessible.ignored: true
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.answer.reason
            size: Theme.wide ? Theme.body : Theme.note
            color: root.front
            Accessible.ignored: true
        }
    }
}
