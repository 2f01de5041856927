// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** Body mass and height of one day, put right or taken out. */
Sheet {
    id: root

    required property SizeEditor editor
    signal numberRequested(string key)
    signal dayRequested(string key)
    signal done

    heading: qsTr("Put right")
    under: root.editor.drafted ? qsTr("not kept yet") : root.editor.name
    back: qsTr("List")
    tools: ThrowKey {
        objectName: "throw"
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
        fact: qsTr("in place of %1").arg(root.editor.stands)
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
        objectName: "said"
        visible: text !== ""
        text: root.editor.said
        quiet: true
    }
    FieldList {
        Layout.fillWidth: true
        fields: root.editor.fields
        onOpened: key => root.numberRequested(key)
    }
    FieldList {
        Layout.fillWidth: true
        fields: root.editor.day.fields
        onOpened: key => root.dayRequested(key)
    }
    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: head !== ""
        head: root.editor.trouble
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("What it said at first stays in the vault's journal and can be read here.")
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
