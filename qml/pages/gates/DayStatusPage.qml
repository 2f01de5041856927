// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Right
import Steelyard.Theme

/** What somebody may do today, of which day status it comes, and those of other days. */
Sheet {
    id: root

    required property StandingView view
    signal addRequested
    signal statusRequested(string statusId)

    heading: root.view.name
    under: qsTr("may train today")
    back: qsTr("Athlete")
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        text: qsTr("SET ANEW")
        fact: qsTr("all, some or none")
        factSize: Theme.act
        onClicked: root.addRequested()
    }

    Words {
        Layout.fillWidth: true
        objectName: "today"
        text: root.view.today
        size: Theme.title
        strong: true
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Words {
        Layout.fillWidth: true
        objectName: "what"
        visible: text !== ""
        text: root.view.what
        size: Theme.act
    }
    UndoKey {
        Layout.fillWidth: true
        book: root.view.book
    }
    DatedRows {
        Layout.fillWidth: true
        objectName: "inForce"
        rows: root.view.inForce
        onOpened: statusId => root.statusRequested(statusId)
    }
    Words {
        Layout.fillWidth: true
        objectName: "addsUp"
        visible: root.view.today !== "" && root.view.inForce.rowCount() > 1
        text: qsTr("Each of them holds: what one forbids, none of the others allows.")
        quiet: true
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Whoever is licensed or responsible here decides. Note who and until when, and what not to do; no diagnoses.")
        size: Theme.note
        quiet: true
    }
    Words {
        Layout.fillWidth: true
        visible: root.view.today !== "" && root.view.otherDays.rowCount() > 0
        text: qsTr("Other days")
        size: Theme.act
        strong: true
    }
    DatedRows {
        Layout.fillWidth: true
        objectName: "otherDays"
        rows: root.view.otherDays
        onOpened: statusId => root.statusRequested(statusId)
    }
}
