// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** One day status: all, some with what not, or none; who set it, from when until when. */
Sheet {
    id: root

    required property StatusEditor editor
    readonly property bool some: root.editor.fitness === 1
    property bool allLifts: false
    signal fromRequested(string key)
    signal untilRequested(string key)
    signal endRequested
    signal done

    heading: root.editor.words.name
    under: root.editor.drafted ? qsTr("not kept yet") : root.editor.words.there ? qsTr("put right") : qsTr("how much she may do")
    back: qsTr("Status")
    tools: ThrowKey {
        objectName: "throw"
        visible: root.editor.drafted || root.editor.words.there
        tight: true
        least: Theme.touchFloor
        text: root.editor.drafted ? qsTr("Forget") : qsTr("Lift it")
        size: Theme.key
        onClicked: {
            if (root.editor.drafted)
                root.editor.throwDraft()
            else
                root.endRequested()
        }
    }
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.editor.canKeep
        text: qsTr("KEEP")
        fact: root.editor.canKeep ? root.editor.period.text : root.editor.words.trouble !== "" ? "" : qsTr("once it is said who")
        factSize: Theme.note
        onClicked: root.keep()
    }

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.editor.book.head
        body: root.editor.book.body
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "fitness"
        label: qsTr("She may do")
        options: [qsTr("all"), qsTr("some"), qsTr("none")]
        current: root.editor.fitness
        onChosen: index => root.editor.fitness = index
    }
    ManyRow {
        Layout.fillWidth: true
        objectName: "groups"
        visible: root.some && root.editor.words.waits === ""
        label: qsTr("Not these lifts")
        options: root.editor.groups
        chosen: root.editor.notGroups
        onTurned: index => root.editor.turnGroup(index)
    }
    ManyRow {
        Layout.fillWidth: true
        objectName: "methods"
        visible: root.some && root.editor.words.waits === ""
        label: qsTr("Not in this way")
        options: root.editor.methods
        chosen: root.editor.notMethods
        onTurned: index => root.editor.turnMethod(index)
    }
    ManyRow {
        Layout.fillWidth: true
        objectName: "lifts"
        visible: root.some && root.editor.words.waits === "" && options.length > 0
        label: qsTr("Not this lift")
        options: root.allLifts ? root.editor.lifts : Array.from(root.editor.lifts).slice(0, root.editor.herLiftCount)
        chosen: root.editor.notLifts
        onTurned: index => root.editor.turnLift(index)
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "allLifts"
        visible: root.some && root.editor.words.waits === "" && !root.allLifts
        text: qsTr("Another single lift")
        onClicked: root.allLifts = true
    }
    NameField {
        id: words
        Layout.fillWidth: true
        objectName: "words"
        visible: root.editor.text !== "" || root.editor.words.waits === "" && root.editor.fitness >= 0
        label: qsTr("In words; no diagnoses")
        text: root.editor.text
        maximumLength: 200
        onEdited: text => root.editor.text = text
    }
    Notice {
        Layout.fillWidth: true
        objectName: "waits"
        visible: root.editor.words.waits !== ""
        head: qsTr("All or none can be set now, what not has to wait")
        body: root.editor.words.waits
    }
    WhoSays {
        id: who
        Layout.fillWidth: true
        label: qsTr("Who set it")
        names: root.editor.names
        who: root.editor.who
        hint: qsTr("by name or task, as the physiotherapist")
        onNamed: who => root.editor.who = who
    }
    WhenHolds {
        Layout.fillWidth: true
        form: root.editor
        onFromRequested: key => root.fromRequested(key)
        onUntilRequested: key => root.untilRequested(key)
    }
    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: head !== "" && root.editor.drafted
        head: root.editor.words.trouble
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }

    function keep() {
        who.read()
        root.editor.text = words.read()
        root.editor.keep()
    }
}
