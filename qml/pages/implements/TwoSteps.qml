// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** A number between less and more, which is only stepped. */
RowLayout {
    id: root

    required property string name
    required property string value
    signal stepped(bool up)

    spacing: Theme.apart
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true

    PressKey {
        objectName: "less"
        least: Theme.touchStep
        text: "−"
        size: Theme.title
        name: qsTr("%1: less").arg(root.name)
        repeats: true
        onClicked: root.stepped(false)
    }
    Words {
        Layout.fillWidth: true
        objectName: "value"
        text: root.value
        size: Theme.act
        strong: true
        horizontalAlignment: Text.AlignHCenter
    }
    PressKey {
        objectName: "more"
        least: Theme.touchStep
        text: "+"
        size: Theme.title
        name: qsTr("%1: more").arg(root.name)
        repeats: true
        onClicked: root.stepped(true)
    }
}
