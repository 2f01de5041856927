// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model

/** Asks once before a person is taken out of the squad. */
Sheet {
    id: root

    required property AthleteEditor editor
    signal done

    heading: qsTr("Take out %1?").arg(root.editor?.name ?? "")
    back: qsTr("Athlete")
    foot: ThrowKey {
        Layout.fillWidth: true
        objectName: "takeOut"
        text: qsTr("Take out %1").arg(root.editor?.name ?? "")
        onClicked: root.editor.takeOut()
    }

    Words {
        Layout.fillWidth: true
        text: qsTr("The squad shows this person no more, with bar marks and set-ups. What was entered stays in the vault's journal: this is no erasure.")
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("You can undo it until the vault is locked.")
        quiet: true
    }
    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: head !== ""
        head: root.editor?.book.head ?? ""
        body: root.editor?.book.body ?? ""
    }
    Connections {
        target: root.editor
        function onTakenOut() {
            root.done()
        }
    }
}
