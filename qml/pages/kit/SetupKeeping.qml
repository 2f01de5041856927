// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Keeps the set-up for whom it was laid out, undoes the last thing kept, and says what stood in the way. */
ColumnLayout {
    id: root

    required property DeskWork work
    signal whoRequested

    spacing: Theme.apart

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.work.book.head
        body: root.work.book.body
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "keepSetup"
        visible: root.work.setupDiffers
        text: qsTr("Keep set-up")
        fact: root.work.name
        onClicked: root.work.keepSetup()
    }
    Words {
        Layout.fillWidth: true
        objectName: "lookedOn"
        visible: root.work.lookedOn !== ""
        text: qsTr("What hangs was last looked over on %1.").arg(root.work.lookedOn)
        size: Theme.note
        quiet: true
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "who"
        visible: root.work.who === ""
        text: qsTr("Choose who lifts it")
        onClicked: root.whoRequested()
    }
    UndoKey {
        Layout.fillWidth: true
        book: root.work.book
    }
}
