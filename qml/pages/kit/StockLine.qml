// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** Plates of one mass and how many pairs are here. */
RowLayout {
    id: root

    required property string label
    required property string pairs
    required property bool canLess
    signal stepped(bool up)

    spacing: Theme.apart

    ColumnLayout {
        Layout.fillWidth: true
        spacing: 0
        Words { Layout.fillWidth: true; text: root.label; size: Theme.act; strong: true }
        Words { Layout.fillWidth: true; text: root.pairs; size: Theme.note; quiet: true }
    }
    PressKey {
        implicitWidth: Theme.touchMain
        objectName: "less"
        text: "−"
        size: Theme.title
        least: Theme.touchStep
        enabled: root.canLess
        Accessible.name: qsTr("One pair of %1 less").arg(root.label)
        onClicked: root.stepped(false)
    }
    PressKey {
        implicitWidth: Theme.touchMain
        objectName: "more"
        text: "+"
        size: Theme.title
        least: Theme.touchStep
        Accessible.name: qsTr("One pair of %1 more").arg(root.label)
        onClicked: root.stepped(true)
    }
}
