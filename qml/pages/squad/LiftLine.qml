// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** One lift with what is known of its marks; one of the coach's own has a key to change it. */
GridLayout {
    id: root

    required property string label
    required property string hint
    required property string value
    required property bool own
    signal opened
    signal changeRequested

    columns: Theme.stacked ? 1 : 2
    columnSpacing: Theme.apart
    rowSpacing: Theme.apart

    FactRow {
        Layout.fillWidth: true
        objectName: "lift"
        label: root.label
        hint: root.hint
        value: root.value
        strong: root.value !== ""
        onOpened: root.opened()
    }
    PressKey {
        Layout.fillWidth: Theme.stacked
        objectName: "change"
        visible: root.own
        tight: true
        text: qsTr("Change")
        name: qsTr("Change %1").arg(root.label)
        size: Theme.key
        onClicked: root.changeRequested()
    }
}
