// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model

/** Asks once before the sample season goes. */
Sheet {
    id: root

    required property VaultService vault

    heading: qsTr("Remove the example?")
    back: qsTr("Preferences")
    foot: ThrowKey {
        Layout.fillWidth: true
        objectName: "removeSample"
        text: qsTr("Remove the example")
        onClicked: root.vault.removeSample()
    }

    Words {
        Layout.fillWidth: true
        text: qsTr("The invented people of Marrow Hill leave this device, with all that was tried out on them. This cannot be undone.")
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("A vault of your own is another one, and stays as it is. The app then starts as new.")
        quiet: true
    }
}
