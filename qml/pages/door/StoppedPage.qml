// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model

/** The vault cannot be opened by any secret as it stands: why, and what helps. */
DoorSheet {
    id: root

    required property VaultService vault
    readonly property bool looking: root.vault.state === VaultService.Looking

    heading: qsTr("Vault")
    foot: PressKey {
        width: parent.width
        objectName: "mainAction"
        main: true
        visible: !root.looking
        text: qsTr("TRY AGAIN")
        onClicked: root.vault.look()
    }

    Notice {
        width: parent.width
        objectName: "trouble"
        visible: head !== ""
        head: root.vault.head
        body: root.vault.body
    }
    Words {
        width: parent.width
        visible: !root.looking && root.vault.head !== ""
        text: qsTr("Nothing has been changed in the vault.")
        quiet: true
    }
    Words {
        width: parent.width
        visible: root.looking
        text: qsTr("Looking for the vault")
        quiet: true
    }
}
