// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Gates
import Steelyard.Pages.Kit
import Steelyard.Theme

/** One person: what is known, and the ways to her bar marks and set-ups. */
Sheet {
    id: root

    required property AthleteEditor editor
    signal numberRequested(string key)
    signal liftsRequested
    signal setupsRequested
    signal sizesRequested
    signal strengthRequested
    signal hereRequested
    signal statusRequested
    signal clearancesRequested
    signal agreementRequested
    signal removeRequested
    signal done

    heading: root.editor.name.trim() === "" ? qsTr("New athlete") : root.editor.name
    under: root.editor.drafted ? qsTr("not kept yet") : ""
    back: qsTr("Squad")
    tools: ThrowKey {
        objectName: "throw"
        visible: root.editor.drafted || root.editor.athleteId !== ""
        tight: true
        least: Theme.touchFloor
        text: root.editor.drafted ? qsTr("Forget") : qsTr("Take out")
        size: Theme.key
        onClicked: {
            if (root.editor.drafted)
                root.editor.throwDraft()
            else
                root.removeRequested()
        }
    }
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.editor.canKeep
        text: qsTr("KEEP")
        fact: root.editor.name
        factSize: Theme.act
        onClicked: root.keep()
    }

    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: head !== ""
        head: root.editor.book.head
        body: root.editor.book.body
    }
    NameField {
        id: name
        Layout.fillWidth: true
        objectName: "name"
        label: qsTr("Name")
        text: root.editor.name
        maximumLength: 60
        onEdited: text => root.editor.name = text
    }
    NameField {
        id: squad
        Layout.fillWidth: true
        objectName: "squad"
        label: qsTr("Squad")
        text: root.editor.squad
        maximumLength: 40
        onEdited: text => root.editor.squad = text
    }
    StandingLines {
        Layout.fillWidth: true
        visible: root.editor.athleteId !== ""
        view: standing
        onStatusRequested: root.statusRequested()
        onClearancesRequested: root.clearancesRequested()
    }
    KeyRow {
        Layout.fillWidth: true
        visible: root.editor.athleteId !== ""
        PressKey {
            objectName: "lifts"
            text: qsTr("Bar marks")
            fact: root.editor.ways[0]
            factSize: Theme.note
            onClicked: root.liftsRequested()
        }
        PressKey {
            objectName: "setups"
            text: qsTr("Set-ups")
            fact: root.editor.ways[1]
            factSize: Theme.note
            onClicked: root.setupsRequested()
        }
    }
    KeyRow {
        Layout.fillWidth: true
        visible: root.editor.athleteId !== ""
        PressKey {
            objectName: "strength"
            text: qsTr("Strength")
            fact: root.editor.ways[3] ?? ""
            factSize: Theme.note
            onClicked: root.strengthRequested()
        }
        PressKey {
            objectName: "here"
            text: qsTr("What is here")
            fact: qsTr("and she may use")
            factSize: Theme.note
            onClicked: root.hereRequested()
        }
    }
    FactRow {
        Layout.fillWidth: true
        objectName: "again"
        visible: root.editor.again.length > 0
        label: qsTr("Take bar marks again")
        hint: root.editor.again[0] ?? ""
        value: root.editor.again[1] ?? ""
        onOpened: root.liftsRequested()
    }
    FieldList {
        Layout.fillWidth: true
        fields: root.editor.fields
        onOpened: key => root.numberRequested(key)
    }
    FactRow {
        Layout.fillWidth: true
        objectName: "sizes"
        visible: value !== ""
        label: qsTr("Measured by day")
        hint: qsTr("look back, or put one right")
        value: root.editor.ways[2] ?? ""
        onOpened: root.sizesRequested()
    }
    Notice {
        Layout.fillWidth: true
        objectName: "minor"
        visible: root.editor.waits && root.editor.minor
        head: qsTr("Under 18")
        body: qsTr("Until a parent or guardian has agreed, only name, squad and loads are kept. Your local rules may ask for more.")
    }
    FactRow {
        Layout.fillWidth: true
        objectName: "agreement"
        visible: root.editor.minor
        label: qsTr("Guardian's agreement")
        hint: root.editor.agreement === "" ? qsTr("who agreed, and when") : ""
        value: root.editor.agreement === "" ? qsTr("not recorded") : root.editor.agreement
        onOpened: root.agreementRequested()
    }
    NameField {
        id: notes
        Layout.fillWidth: true
        objectName: "notes"
        visible: !root.editor.waits
        label: qsTr("Notes; no diagnoses")
        text: root.editor.notes
        maximumLength: 500
        onEdited: text => root.editor.notes = text
    }

    StandingView {
        id: standing
        book: root.editor.book
        athleteId: root.editor.athleteId
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }

    function keep() {
        for (const field of [name, squad, notes])
            field.read()
        root.editor.keep()
    }
}
