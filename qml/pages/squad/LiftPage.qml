// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** A lift of the coach's own: its name, where it starts, and which of the others it is like. */
Sheet {
    id: root

    required property LiftEditor editor
    signal done

    heading: root.editor.name.trim() === "" ? qsTr("A lift of your own") : root.editor.name
    under: root.editor.drafted ? qsTr("not kept yet") : ""
    back: qsTr("Lifts")
    tools: ThrowKey {
        objectName: "throw"
        visible: root.editor.drafted || root.editor.lift !== ""
        tight: true
        least: Theme.touchFloor
        text: root.editor.drafted ? qsTr("Forget") : qsTr("Take out")
        size: Theme.key
        onClicked: {
            if (root.editor.drafted)
                root.editor.throwDraft()
            else
                root.editor.takeOut()
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
        objectName: "notKept"
        visible: head !== ""
        head: root.editor.book.head
        body: root.editor.book.body
    }
    NameField {
        id: name
        Layout.fillWidth: true
        objectName: "name"
        label: qsTr("Name of the lift")
        hint: qsTr("as you call it; a bar moves along a path")
        text: root.editor.name
        maximumLength: 40
        onEdited: text => root.editor.name = text
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "start"
        label: qsTr("The lift starts")
        options: [qsTr("from her own bottom"), qsTr("with plates on the floor")]
        current: root.editor.fromFloor ? 1 : 0
        onChosen: index => root.editor.fromFloor = index === 1
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "like"
        label: qsTr("Most like")
        options: root.editor.likes
        current: root.editor.like
        onChosen: index => root.editor.like = index
    }
    Words {
        Layout.fillWidth: true
        visible: root.editor.lift !== ""
        text: qsTr("Taken out, it leaves the list; bar marks and set-ups for it stay.")
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
        name.read()
        root.editor.keep()
    }
}
