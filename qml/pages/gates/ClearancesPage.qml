// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Right
import Steelyard.Theme

/** What somebody is cleared for: lift and method, by whom, until when; a tap puts one right or takes it back. */
Sheet {
    id: root

    required property StandingView view
    signal addRequested
    signal clearanceRequested(string clearanceId)

    heading: root.view.name
    under: qsTr("cleared for")
    back: qsTr("Athlete")
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.view.waits === ""
        text: qsTr("CLEARED FOR MORE")
        fact: qsTr("a lift and a method")
        factSize: Theme.note
        onClicked: root.addRequested()
    }

    Notice {
        Layout.fillWidth: true
        objectName: "waits"
        visible: root.view.waits !== ""
        head: qsTr("A clearance has to wait")
        body: root.view.waits
    }
    UndoKey {
        Layout.fillWidth: true
        book: root.view.book
    }
    Words {
        Layout.fillWidth: true
        objectName: "none"
        visible: root.view.cleared !== "" && root.view.clearances.rowCount() === 0
        text: qsTr("Nobody has cleared her for anything yet.")
        size: Theme.act
    }
    DatedRows {
        Layout.fillWidth: true
        rows: root.view.clearances
        onOpened: clearanceId => root.clearanceRequested(clearanceId)
    }
    Words {
        Layout.fillWidth: true
        objectName: "deference"
        text: qsTr("Clearance is given by whoever is licensed or responsible here; Steelyard only remembers it. Nothing medical is kept: who, for what, and until when.")
        quiet: true
    }
}
