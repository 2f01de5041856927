// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Measure a chain: weigh it, or gauge one link. */
Sheet {
    id: root

    required property ChainEditor editor
    signal numberRequested(string key)
    signal done

    heading: qsTr("Measure a chain")
    under: root.editor.drafted ? qsTr("not kept yet") : ""
    back: qsTr("Kit")
    tools: ThrowKey {
        objectName: "throw"
        visible: root.editor.drafted || root.editor.itemId !== ""
        tight: true
        least: Theme.touchFloor
        text: root.editor.itemId !== "" ? qsTr("Out of the kit") : qsTr("Throw away")
        size: Theme.key
        onClicked: {
            if (root.editor.itemId !== "")
                root.editor.remove()
            else
                root.editor.throwDraft()
            root.done()
        }
    }
    foot: ItemFoot {
        Layout.fillWidth: true
        editor: root.editor
        onClicked: root.editor.keep()
    }

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.editor.book ? root.editor.book.head : ""
        body: root.editor.book ? root.editor.book.body : ""
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
    NameField {
        Layout.fillWidth: true
        objectName: "name"
        label: qsTr("Name, if you give it one")
        text: root.editor.name
        maximumLength: 30
        onEdited: text => root.editor.name = text
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "gauged"
        label: qsTr("By")
        options: [qsTr("weighing it"), qsTr("its links")]
        current: root.editor.gauged ? 1 : 0
        onChosen: index => root.editor.gauged = index === 1
    }
    FieldList {
        Layout.fillWidth: true
        fields: root.editor.fields
        onOpened: key => root.numberRequested(key)
    }
    Words {
        Layout.fillWidth: true
        visible: text !== ""
        text: root.editor.trouble
        quiet: true
    }
    Words {
        Layout.fillWidth: true
        objectName: "link"
        visible: text !== ""
        text: root.editor.linkText
        size: Theme.note
        quiet: true
    }
    Words {
        Layout.fillWidth: true
        visible: root.editor.gauged
        text: qsTr("Gauged within 3 %. Weighing is better. Of a long-link chain take the middle between the least inner and the greatest outer width, less two wires.")
        size: Theme.note
        quiet: true
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "pair"
        label: qsTr("There")
        options: [qsTr("are two alike"), qsTr("is one")]
        current: root.editor.pair ? 0 : 1
        onChosen: index => root.editor.pair = index === 0
    }
    ItemRecord {
        Layout.fillWidth: true
        editor: root.editor
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }
}
