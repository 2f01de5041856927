// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model

/** What went wrong at the door, or that a key is being made. */
Item {
    id: root

    required property VaultService vault
    readonly property bool working: root.vault.state === VaultService.Working

    implicitHeight: root.working ? wait.height : notice.visible ? notice.height : 0
    visible: root.working || notice.visible

    Words {
        id: wait
        width: root.width
        objectName: "working"
        visible: root.working
        // words out of sight are laid out too
        text: root.working ? qsTr("One moment: the key is being made. It takes a second or two on purpose, so that guessing costs as much each time.") : ""
        quiet: true
    }
    Notice {
        id: notice
        width: root.width
        objectName: "trouble"
        visible: !root.working && root.vault.head !== ""
        head: root.vault.head
        body: root.vault.body
    }
}
