// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** One limit: what it is, its steps, and the way back to what it was shipped as. */
Column {
    id: root

    required property string key
    required property string label
    required property string value
    required property string hint
    required property string shipped
    required property string down
    required property string up
    required property bool canDown
    required property bool canUp
    required property bool own
    signal stepped(bool up)
    signal typed
    signal reset

    spacing: Theme.line

    Words {
        width: root.width
        text: root.label
        size: Theme.act
        strong: true
    }
    Words {
        width: root.width
        text: root.hint
        size: Theme.note
        quiet: true
    }
    Stepper {
        width: root.width
        name: root.label
        value: root.value
        downText: root.down
        upText: root.up
        canDown: root.canDown
        canUp: root.canUp
        onStepDown: root.stepped(false)
        onStepUp: root.stepped(true)
        onTypeRequested: root.typed()
    }
    Words {
        width: root.width
        objectName: "shipped"
        text: root.shipped
        size: Theme.note
        quiet: !root.own
        strong: root.own
    }
    PressKey {
        objectName: "asShipped"
        visible: root.own
        tight: true
        text: qsTr("As it was shipped")
        name: qsTr("%1: as it was shipped").arg(root.label)
        size: Theme.key
        onClicked: root.reset()
    }
}
