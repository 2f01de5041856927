// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Controls.Basic
import Steelyard.Keys
import Steelyard.Theme

/** A word to type: a name, or a part of one to find. */
Item {
    id: root

    required property string label
    property alias text: field.text
    property string hint: ""
    property alias maximumLength: field.maximumLength
    property string refusal: ""
    readonly property alias field: field
    readonly property var inputMethod: Qt.inputMethod

    signal edited(string text)
    signal accepted

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
        TextField {
            id: field
            width: root.width
            implicitHeight: Math.max(Theme.touch, contentHeight + 2 * Theme.apart)
            leftPadding: Theme.inset
            rightPadding: Theme.inset
            horizontalAlignment: TextInput.AlignLeft
            verticalAlignment: TextInput.AlignVCenter
            color: Theme.role.ink
            selectionColor: Theme.role.accent
            selectedTextColor: Theme.role.accentText
            selectByMouse: true
            font { family: Theme.face; pixelSize: Theme.act; weight: Theme.plain }
            Accessible.role: Accessible.EditableText
            Accessible.name: root.label
            Accessible.description: root.refusal || root.hint
            onTextEdited: root.edited(field.text)
            // what is too long for the field shows its beginning while nobody types in it
            onActiveFocusChanged: root.settle()
            onTextChanged: root.settle()
            onAccepted: root.accepted()

            background: Rectangle {
                color: Theme.role.paper
                radius: Theme.corner
                border {
                    width: field.activeFocus ? Theme.ring : Theme.edging
                    color: field.activeFocus ? Theme.role.accent : Theme.role.edge
                }
            }
        }
        Words {
            width: root.width
            visible: text !== ""
            text: root.refusal || root.hint
            strong: root.refusal !== ""
            quiet: root.refusal === ""
            Accessible.role: root.refusal !== "" ? Accessible.AlertMessage : Accessible.StaticText
        }
    }

    function settle() {
        if (!field.activeFocus)
            field.cursorPosition = 0
    }
    /** What stands in the field, with what the input method still holds. */
    function read(): string {
        root.inputMethod.commit()
        return field.text
    }
}
