// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Model

/** One athlete's lifts: those with bar marks first, then the others to begin with. */
Sheet {
    id: root

    required property LiftsView view
    signal liftRequested(int lift)

    heading: root.view.name
    under: qsTr("bar marks of each lift")
    back: qsTr("Athlete")

    Repeater {
        model: root.view.lifts
        FactRow {
            id: row
            required property int lift
            Layout.fillWidth: true
            objectName: "lift:" + row.lift
            strong: row.value !== ""
            onOpened: root.liftRequested(row.lift)
        }
    }
}
