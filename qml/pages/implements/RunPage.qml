// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** A timed run with a sled: what lay on it, how far, how long it took. */
Sheet {
    id: root

    required property RunEditor editor
    signal numberRequested(string key)
    signal done

    heading: root.editor.who
    under: root.editor.drafted ? qsTr("not kept yet") : qsTr("a timed run on %1").arg(root.editor.surface)
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
        fact: root.editor.canKeep ? root.editor.answer : ""
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
    Words {
        Layout.fillWidth: true
        text: qsTr("Three runs with different loads, fresh for each, make her own line. Nobody else's line is used for her.")
        size: Theme.note
        quiet: true
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }
}
