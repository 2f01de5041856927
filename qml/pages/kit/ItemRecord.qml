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
    signal dayRequested(string key)

    visible: root.righting || root.record.measured !== ""
    spacing: Theme.block

    FactRow {
        Layout.fillWidth: true
        objectName: "measurements"
        visible: root.record.measured !== ""
        label: qsTr("Measured")
        hint: qsTr("look back, or put one right")
        value: root.record.measured
        onOpened: root.measurementsRequested()
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
