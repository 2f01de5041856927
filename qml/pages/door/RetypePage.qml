// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The recovery code typed back from paper; then the vault is made. */
Sheet {
    id: root

    required property VaultMaker maker

    heading: qsTr("From your paper")
    back: qsTr("Code")
    bodySpacing: Theme.apart
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.maker.agreed
        text: qsTr("MAKE THE VAULT")
        onClicked: root.maker.finish(entry.field)
    }

    SecretEntry {
        id: entry
        Layout.fillWidth: true
        objectName: "entry"
        label: qsTr("Recovery code; hyphens and capitals do not matter")
        open: true
        onEdited: root.maker.compare(entry.field)
        onAccepted: root.maker.finish(entry.field)
    }
    CodeGroups {
        Layout.fillWidth: true
        groups: root.maker.groups
    }
    Notice {
        Layout.fillWidth: true
        objectName: "refusal"
        visible: head !== ""
        head: root.maker.refusal
    }
    Working {
        Layout.fillWidth: true
        vault: root.maker.vault
    }
}
