// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Model
import Steelyard.Theme

/** What she lifts at every height, with what hangs on the bar. */
Sheet {
    id: root

    required property SetupView view
    signal marksRequested
    signal numberRequested(string key)
    signal barRequested
    signal moreRequested
    signal hungRequested(int row)

    heading: qsTr("What she lifts")
    under: qsTr("Nothing is kept: closing the app forgets it")
    stretch: Theme.wide
    foot: SetupState {
        Layout.fillWidth: true
        objectName: "stateBlock"
        answer: root.view.answer
    }

    Pair {
        Layout.fillWidth: true
        Layout.fillHeight: true
        share: 0.54
        first: [
            SetupPicture {
                Layout.fillWidth: true
                view: root.view
            },
            PressKey {
                Layout.fillWidth: true
                objectName: "marks"
                main: !root.view.answer.known
                text: root.view.answer.known ? qsTr("Her bar marks") : qsTr("Enter her bar marks")
                onClicked: root.marksRequested()
            }
        ]
        second: [
            SetupLoad {
                Layout.fillWidth: true
                beam: root.view.beam
                plates: root.view.strip
                onStepped: up => root.view.stepLoad(up)
                onTyped: root.numberRequested("load")
                onOpened: root.barRequested()
            },
            SetupHangs {
                Layout.fillWidth: true
                hanging: root.view.hanging
                onOpened: row => root.hungRequested(row)
                onMoreRequested: root.moreRequested()
            },
            SetupNotices {
                Layout.fillWidth: true
                notices: root.view.notices
                cautions: root.view.cautions
                onLookedOver: code => root.view.lookOver(code)
            }
        ]
    }
}
