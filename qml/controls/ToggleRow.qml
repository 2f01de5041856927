// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** Several worded things of which any may be so. */
Column {
    id: root

    required property string label
    required property var options
    required property var on
    signal toggled(int index)

    spacing: Theme.line
    Accessible.role: Accessible.Grouping
    Accessible.name: root.label

    Words {
        width: root.width
        text: root.label
        size: Theme.note
        quiet: true
    }
    Flow {
        id: flow
        width: root.width
        spacing: Theme.apart

        Repeater {
            model: root.options
            PressKey {
                id: key
                required property int index
                required property string modelData
                width: Math.min(implicitWidth, flow.width)
                objectName: "toggle:" + key.index
                markable: true
                tight: true
                text: key.modelData
                name: qsTr("%1: %2").arg(root.label).arg(key.modelData)
                about: key.chosen ? qsTr("chosen") : ""
                size: Theme.key
                chosen: root.on[key.index] === true
                onClicked: root.toggled(key.index)
            }
        }
    }
}
