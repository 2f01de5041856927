// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model

/** What was done since the vault was opened, the last first, each to be undone. */
Sheet {
    id: root

    required property DeedsView view

    heading: qsTr("Done lately")
    under: root.view.empty ? "" : qsTr("a tap undoes it; the last 20")
    back: qsTr("Squad")

    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: head !== ""
        head: root.view.book.head
        body: root.view.book.body
    }
    Words {
        Layout.fillWidth: true
        visible: root.view.empty
        text: qsTr("Nothing was kept since the vault was opened, or all of it has been undone.")
    }
    Repeater {
        model: root.view.deeds
        DeedLine {
            id: line
            required property int index
            Layout.fillWidth: true
            objectName: "deed:" + line.index
            onUndoRequested: root.view.book.undo(line.index)
        }
    }
}
