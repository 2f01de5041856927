// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** One clearance: for which lift and method, by whom, from when until when. */
Sheet {
    id: root

    required property ClearanceEditor editor
    signal fromRequested(string key)
    signal untilRequested(string key)
    signal pickRequested(string which)
    signal endRequested
    signal done

    heading: root.editor.words.name
    under: root.editor.drafted ? qsTr("not kept yet") : root.editor.words.there ? qsTr("put right") : qsTr("is cleared for")
    back: qsTr("Clearances")
    tools: ThrowKey {
        objectName: "throw"
        visible: root.editor.drafted || root.editor.words.there
        tight: true
        least: Theme.touchFloor
        text: root.editor.drafted ? qsTr("Forget") : qsTr("Take back")
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
    FactRow {
        Layout.fillWidth: true
        objectName: "lift"
        label: qsTr("Lift")
        value: root.editor.lifts[root.editor.lift] ?? qsTr("not chosen")
        onOpened: root.pickRequested("lift")
    }
    FactRow {
        Layout.fillWidth: true
        objectName: "method"
        label: qsTr("Method")
        value: root.editor.methods[root.editor.method] ?? qsTr("not chosen")
        onOpened: root.pickRequested("method")
    }
    WhoSays {
        id: who
        Layout.fillWidth: true
        label: qsTr("Who gives it")
        names: root.editor.names
        who: root.editor.who
        hint: qsTr("whoever is licensed or responsible here")
        onNamed: who => root.editor.who = who
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "approves"
        visible: root.editor.mayBeMinor || root.editor.approvesMinor
        label: qsTr("She may be under age. Is it given knowing that?")
        options: [qsTr("not said"), qsTr("yes, by name")]
        current: root.editor.approvesMinor ? 1 : 0
        onChosen: index => root.editor.approvesMinor = index === 1
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
    Words {
        Layout.fillWidth: true
        text: qsTr("Nothing medical belongs here. What a clinician decides goes before it, and so do local rules.")
        size: Theme.note
        quiet: true
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }

    function keep() {
        who.read()
        root.editor.keep()
    }
}
