// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** One of many, a line each. */
Sheet {
    id: root

    required property var options
    property int current: -1
    signal chosen(int index)

    back: qsTr("Clearance")

    ColumnLayout {
        Layout.fillWidth: true
        spacing: Theme.apart

        Repeater {
            model: root.options
            PressKey {
                id: key
                required property int index
                required property string modelData
                Layout.fillWidth: true
                objectName: "pick:" + key.index
                markable: true
                text: key.modelData
                about: key.chosen ? qsTr("chosen") : ""
                chosen: key.index === root.current
                onClicked: root.chosen(key.index)
            }
        }
    }
}
