// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model

/** The set-ups kept for one athlete; a tap lays one out again. */
Sheet {
    id: root

    required property LiftsView view
    signal setupRequested(string setupId)

    heading: root.view.name
    under: qsTr("kept set-ups, the last first")
    back: qsTr("Athlete")

    Words {
        Layout.fillWidth: true
        visible: setups.count === 0
        text: qsTr("None is kept yet. Choose a lift under Bar marks, hang what she lifts, and keep it there.")
    }
    Repeater {
        id: setups
        model: root.view.setups
        FactRow {
            id: row
            required property string setupId
            required hint
            Layout.fillWidth: true
            objectName: "setup:" + row.setupId
            onOpened: root.setupRequested(row.setupId)
        }
    }
}
