// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** A sled pulled on the spot: which ground, what lay on it, and what the scale in its strap showed. */
Sheet {
    id: root

    required property SurfaceEditor editor
    signal numberRequested(string key)
    signal done

    heading: qsTr("How it slides")
    under: root.editor.drafted ? qsTr("not kept yet") : qsTr("a steady walk, a scale in the strap")
    back: qsTr("Sled")
    tools: ThrowKey {
        objectName: "throw"
        visible: root.editor.drafted
        tight: true
        least: Theme.touchFloor
        text: qsTr("Forget")
        size: Theme.key
        onClicked: root.editor.throwDraft()
    }
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.editor.canKeep
        text: qsTr("KEEP")
        fact: root.editor.name
        factSize: Theme.note
        onClicked: root.editor.keep()
    }

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.editor.book.head
        body: root.editor.book.body
    }
    Words {
        Layout.fillWidth: true
        objectName: "answer"
        text: root.editor.answer
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "names"
        visible: root.editor.names.length > 0
        label: qsTr("Ground it was pulled on before")
        options: root.editor.names
        current: Array.from(root.editor.names).indexOf(root.editor.name)
        onChosen: index => root.editor.name = root.editor.names[index]
    }
    NameField {
        Layout.fillWidth: true
        objectName: "name"
        label: qsTr("Ground, as wet grass")
        text: root.editor.name
        maximumLength: 30
        onEdited: text => root.editor.name = text
    }
    FieldList {
        Layout.fillWidth: true
        fields: root.editor.fields
        onOpened: key => root.numberRequested(key)
    }
    Words {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: text !== ""
        text: root.editor.trouble
        quiet: true
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }
}
