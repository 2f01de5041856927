// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** What is on record about a kept thing besides its last measurement; of a measurement put right its day, and what changes by it. */
ColumnLayout {
    id: root

    required property ItemEditor editor
    readonly property itemRecordText record: root.editor.record
    readonly property bool righting: root.editor.measurementId !== ""
    signal measurementsRequested
    /** To what is asked for besides: "loan", "origin", "again". */
    signal wayRequested(string way)
    signal dayRequested(string key)

    visible: root.righting || root.record.measured !== ""
    spacing: Theme.block

    FactRow {
        Layout.fillWidth: true
        objectName: "measurements"
        visible: root.record.measured !== ""
        enabled: !root.record.listed
        label: qsTr("Measured")
        hint: root.record.listed ? qsTr("copied from a list: measure it here") : qsTr("%1 · look back, or put one right").arg(root.record.due)
        value: root.record.measured
        onOpened: root.measurementsRequested()
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "again"
        visible: (root.record.isDue || root.record.listed)
        text: root.record.listed ? qsTr("Measure it") : qsTr("Measure it again")
        fact: root.record.due
        factSize: Theme.note
        onClicked: root.wayRequested("again")
    }
    FactRow {
        Layout.fillWidth: true
        objectName: "origin"
        visible: !root.righting && root.record.number !== ""
        label: qsTr("Its number")
        hint: qsTr("where it comes from")
        value: root.record.number
        onOpened: root.wayRequested("origin")
    }
    FactRow {
        Layout.fillWidth: true
        objectName: "loan"
        visible: !root.righting && root.record.loan !== ""
        label: qsTr("Borrowed, or lent out")
        value: root.record.loan
        onOpened: root.wayRequested("loan")
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "belongs"
        visible: root.record.venues.length > 0
        label: qsTr("Belongs to")
        options: root.record.venues
        current: root.record.venue
        onChosen: index => root.editor.moveTo(index)
    }
    Words {
        Layout.fillWidth: true
        objectName: "said"
        visible: text !== ""
        text: root.record.said
        quiet: true
    }
    FieldList {
        Layout.fillWidth: true
        visible: root.righting
        fields: root.editor.day.fields
        onOpened: key => root.dayRequested(key)
    }
    Notice {
        Layout.fillWidth: true
        objectName: "dayTrouble"
        visible: head !== ""
        head: root.record.trouble
    }
    Words {
        Layout.fillWidth: true
        objectName: "changes"
        visible: text !== ""
        text: root.record.changes
        strong: true
    }
    Words {
        Layout.fillWidth: true
        visible: root.righting
        text: qsTr("What it said at first stays in the vault's journal and can be read here.")
        size: Theme.note
        quiet: true
    }
}
