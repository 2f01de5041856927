// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** A secret to type: dots and their number, letters while Show is held or for a moment after it was tapped. */
Item {
    id: root

    required property string label
    property alias field: field
    property bool open: false
    property int lines: Theme.stacked ? 3 : 2
    property string hint: ""
    readonly property alias count: field.count
    readonly property bool below: Theme.stacked

    signal accepted
    signal edited

    implicitWidth: Theme.touchMain
    implicitHeight: stack.height

    Column {
        id: stack
        width: root.width
        spacing: Theme.line

        Words {
            width: root.width
            text: root.label
            size: Theme.note
            quiet: true
            Accessible.ignored: true
        }
        Rectangle {
            width: root.width
            height: field.implicitHeight + 2 * Theme.apart
            color: Theme.role.paper
            radius: Theme.corner
            border {
                width: field.activeFocus ? Theme.ring : Theme.edging
                color: field.activeFocus ? Theme.role.accent : Theme.role.edge
            }
            SecretField {
                id: field
                anchors { fill: parent; leftMargin: Theme.inset; rightMargin: Theme.inset }
                objectName: "secret"
                enabled: root.enabled
                lines: root.lines
                revealed: root.open || show.down || peek.running
                color: Theme.role.ink
                font { family: Theme.face; pixelSize: Theme.act; weight: Theme.plain }
                // said to be a password it would lose its name; it has no text to be read aloud either way
                Accessible.role: Accessible.EditableText
                Accessible.name: root.label
                Accessible.description: counted.text
                onAccepted: root.accepted()
                onEdited: root.edited()
            }
        }
        Item {
            width: root.width
            height: !show.visible ? counted.height : root.below ? counted.height + Theme.line + show.height : Math.max(counted.height, show.height + Theme.line)

            Words {
                id: counted
                anchors { left: parent.left; right: show.visible && !root.below ? show.left : parent.right; rightMargin: show.visible ? Theme.apart : 0 }
                y: root.below || !show.visible ? 0 : Math.round((parent.height - height) / 2)
                objectName: "count"
                text: field.full ? qsTr("That did not fit: nothing was added")
                    : field.count === 0 ? root.hint : qsTr("%n characters", "", field.count)
                quiet: !field.full
                strong: field.full
            }
            PressKey {
                id: show
                anchors { right: parent.right; bottom: parent.bottom }
                objectName: "show"
                visible: !root.open
                tight: true
                text: qsTr("Show")
                name: qsTr("Show what was typed: %1").arg(root.label)
                size: Theme.key
                onClicked: peek.restart()
            }
        }
    }
    Timer {
        id: peek
        interval: 10 * Theme.tapQuiet
    }

    function wipe() {
        field.wipe()
    }
}
