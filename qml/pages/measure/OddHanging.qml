// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** The hanging that does not lie with the others: read again or left out. */
Item {
    id: root

    required property string odd
    signal againRequested
    signal leaveOutRequested

    implicitWidth: Theme.touchMain
    implicitHeight: column.implicitHeight

    ColumnLayout {
        id: column
        width: root.width
        height: implicitHeight
        spacing: Theme.apart

        Notice {
            Layout.fillWidth: true
            objectName: "odd"
            head: root.odd
        }
        KeyRow {
            Layout.fillWidth: true
            PressKey {
                objectName: "readAgain"
                text: qsTr("Read it again")
                size: Theme.key
                onClicked: root.againRequested()
            }
            PressKey {
                objectName: "leaveOut"
                text: qsTr("Leave it out")
                size: Theme.key
                onClicked: root.leaveOutRequested()
            }
        }
    }
}
