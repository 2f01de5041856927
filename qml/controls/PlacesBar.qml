// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Keys
import Steelyard.Theme

/** The places, always in this order; the heavy rule stands over where you are. */
GridLayout {
    id: root

    required property var places
    property int place: 0

    signal chosen(int index)

    columns: Theme.stacked && !Theme.low && root.places.length > 2 ? 2 : Math.max(1, root.places.length)
    columnSpacing: Theme.apart
    rowSpacing: Theme.apart
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")

    Repeater {
        model: root.places
        PressKey {
            id: key
            required property int index
            required property string modelData
            readonly property bool here: root.place === key.index
            Layout.fillWidth: true
            Layout.preferredWidth: root.columns < root.places.length ? Theme.touch : -1
            text: key.modelData
            about: key.here ? qsTr("you are here") : ""
            marked: key.here
            bare: true
            tight: true
            padding: 0
            light: !key.here
            size: Theme.key
            least: Theme.low ? Theme.touchFloor : Theme.touch
            onClicked: root.chosen(key.index)

            Rectangle {
                width: parent.width
                height: key.here ? Theme.bar : Theme.hair
                color: key.here ? Theme.role.ink : Theme.role.edge
            }
        }
    }
}
