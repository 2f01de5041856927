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
