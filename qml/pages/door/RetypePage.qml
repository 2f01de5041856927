// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The recovery code typed back from paper; then the vault is made. */
DoorSheet {
    id: root

    required property VaultMaker maker

    heading: qsTr("From your paper")
    back: qsTr("Code")
    bodySpacing: Theme.apart
    foot: PressKey {
        width: parent.width
        objectName: "mainAction"
        main: true
        enabled: root.maker.agreed
        text: qsTr("MAKE THE VAULT")
        onClicked: root.maker.finish(entry.field)
    }

    SecretEntry {
        id: entry
        width: parent.width
        objectName: "entry"
        label: qsTr("Recovery code; hyphens and capitals do not matter")
        open: true
        onEdited: root.maker.compare(entry.field)
        onAccepted: root.maker.finish(entry.field)
    }
    CodeGroups {
        width: parent.width
        groups: root.maker.groups
    }
    Notice {
        width: parent.width
        objectName: "refusal"
        visible: head !== ""
        head: root.maker.refusal
    }
    Working {
        width: parent.width
        vault: root.maker.vault
    }
}
