// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model

/** What was not as usual when the vault was opened: each with what to do about it, before the work goes on. */
Sheet {
    id: root

    required property VaultService vault

    heading: qsTr("Before you go on")
    foot: [
        PressKey {
            Layout.fillWidth: true
            objectName: "mainAction"
            main: true
            text: qsTr("I HAVE READ IT")
            onClicked: root.backRequested()
        }
    ]

    Repeater {
        model: root.vault.news
        Notice {
            required property var modelData
            required property int index
            Layout.fillWidth: true
            objectName: "news:" + index
            head: modelData.head
            body: modelData.body
        }
    }
}
