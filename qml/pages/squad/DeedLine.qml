// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Keys
import Steelyard.Theme

/** One thing done, with the key that undoes it. */
GridLayout {
    id: root

    required property string label
    required property string hint
    required property bool undoable
    signal undoRequested

    columns: Theme.stacked ? 1 : 2
    columnSpacing: Theme.apart
    rowSpacing: Theme.line

    Column {
        Layout.fillWidth: true
        Words { width: parent.width; text: root.label; size: Theme.act }
        Words { width: parent.width; visible: text !== ""; text: root.hint; size: Theme.note; quiet: true }
    }
    PressKey {
        Layout.fillWidth: Theme.stacked
        objectName: "undo"
        enabled: root.undoable
        text: qsTr("Undo")
        name: qsTr("Undo: %1").arg(root.label)
        size: Theme.key
        onClicked: root.undoRequested()
    }
}
