// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit

/** One athlete's lifts: those with bar marks first, then the others to begin with. */
Sheet {
    id: root

    required property LiftsView view
    signal liftRequested(string lift)
    signal addRequested
    signal changeRequested(string lift)

    heading: root.view.name
    under: qsTr("bar marks of each lift")
    back: qsTr("Athlete")
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "addLift"
        text: qsTr("Add a lift")
        onClicked: root.addRequested()
    }

    UndoKey {
        Layout.fillWidth: true
        book: root.view.book
    }
    Repeater {
        model: root.view.lifts
        LiftLine {
            id: row
            required property string lift
            Layout.fillWidth: true
            objectName: "lift:" + row.lift
            onOpened: root.liftRequested(row.lift)
            onChangeRequested: root.changeRequested(row.lift)
        }
    }
}
