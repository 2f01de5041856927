// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The passphrase, or the recovery code, and the vault opens. */
DoorSheet {
    id: root

    required property VaultService vault
    property bool byCode: false
    readonly property bool locked: root.vault.state === VaultService.Locked

    heading: qsTr("Unlock")
    under: root.byCode ? qsTr("with the recovery code") : ""
    bodySpacing: Theme.apart
    foot: [
        PressKey {
            width: parent.width
            objectName: "openSample"
            visible: root.vault.sample
            enabled: root.locked
            text: qsTr("Open with this passphrase")
            onClicked: root.vault.unlockSample()
        },
        PressKey {
            width: parent.width
            objectName: "otherWay"
            visible: !root.vault.sample
            enabled: root.locked
            text: root.byCode ? qsTr("Use the passphrase") : qsTr("Use the recovery code")
            onClicked: root.turn()
        },
        PressKey {
            width: parent.width
            objectName: "mainAction"
            main: true
            enabled: root.locked && entry.count > 0
            text: qsTr("UNLOCK")
            onClicked: root.open()
        }
    ]
    Component.onCompleted: entry.field.forceActiveFocus()

    Words {
        width: parent.width
        objectName: "sampleNote"
        visible: root.vault.sample
        text: qsTr("This is a season of Marrow Hill, an invented club. Its passphrase is no secret: %1").arg(root.vault.samplePassphrase)
    }
    SecretEntry {
        id: entry
        width: parent.width
        objectName: "entry"
        enabled: root.locked
        label: root.byCode ? qsTr("Recovery code") : qsTr("Passphrase")
        hint: root.byCode ? qsTr("five groups, from your paper") : qsTr("five words with spaces, or your own")
        open: root.byCode
        onEdited: root.vault.hush()
        onAccepted: root.open()
    }
    Working {
        width: parent.width
        vault: root.vault
    }

    function open() {
        if (root.byCode)
            root.vault.unlockByCode(entry.field)
        else
            root.vault.unlock(entry.field)
    }
    function turn() {
        entry.wipe()
        root.vault.hush()
        root.byCode = !root.byCode
        entry.field.forceActiveFocus()
    }
}
