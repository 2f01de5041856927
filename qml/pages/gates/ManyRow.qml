// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** Any number of worded options, each turned on and off by its key; those that are on are filled and carry a short rule. */
Column {
    id: root

    required property string label
    required property var options
    required property var chosen
    signal turned(int index)

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
                objectName: "option:" + key.index
                markable: true
                tight: true
                text: key.modelData
                name: qsTr("%1: %2").arg(root.label).arg(key.modelData)
                about: key.chosen ? qsTr("chosen") : ""
                size: Theme.key
                chosen: Array.from(root.chosen).includes(key.index)
                onClicked: root.turned(key.index)
            }
        }
    }
}
