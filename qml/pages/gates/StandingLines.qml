// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Model
import Steelyard.Theme

/** What somebody may do today, and what she is cleared for, as two lines to tap. */
ColumnLayout {
    id: root

    required property StandingView view
    signal statusRequested
    signal clearancesRequested

    spacing: Theme.apart

    FactRow {
        Layout.fillWidth: true
        objectName: "dayStatus"
        label: qsTr("May train today")
        hint: root.view.what
        value: root.view.today
        stop: root.view.stop
        besideLabel: root.view.what !== ""
        onOpened: root.statusRequested()
    }
    FactRow {
        Layout.fillWidth: true
        objectName: "clearances"
        label: qsTr("Cleared for")
        hint: qsTr("lifts and methods, and by whom")
        value: root.view.cleared
        onOpened: root.clearancesRequested()
    }
}
