// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model

/** The first start: what a vault is, and the two ways to a passphrase. */
DoorSheet {
    id: root

    required property VaultMaker maker
    readonly property bool working: root.maker.vault.state === VaultService.Working
    signal chosen

    heading: qsTr("Make your vault")
    under: qsTr("once, on this device")
    foot: [
        PressKey {
            width: parent.width
            objectName: "mainAction"
            main: true
            enabled: !root.working
            text: qsTr("FIVE WORDS")
            fact: qsTr("drawn for me")
            onClicked: root.choose(true)
        },
        PressKey {
            width: parent.width
            objectName: "own"
            enabled: !root.working
            text: qsTr("A passphrase of my own")
            onClicked: root.choose(false)
        }
    ]

    Words {
        width: parent.width
        text: qsTr("Everything about your athletes goes into a vault on this device. Nobody reads it without the passphrase: no thief, no finder, nobody at a repair shop.")
    }
    Words {
        width: parent.width
        text: qsTr("A recovery code opens it should you forget the passphrase. Without both, nobody can open it, and that includes us.")
        strong: true
    }
    Words {
        width: parent.width
        text: qsTr("You need paper, a pen and two minutes.")
        quiet: true
    }
    Working {
        width: parent.width
        vault: root.maker.vault
    }

    function choose(drawn: bool) {
        root.maker.vault.hush()
        root.maker.choose(drawn)
        root.chosen()
    }
}
