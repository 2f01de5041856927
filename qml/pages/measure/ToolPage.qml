// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Tools
import Steelyard.Theme

/** All numbers of a scale, of iron, of a strap, of a rack or of an implement on one page. */
Sheet {
    id: root

    required property ToolEditor editor
    readonly property toolWords words: root.editor.words
    readonly property bool righting: root.editor.measurementId !== ""
    signal numberRequested(string key)
    signal measurementsRequested
    signal wayRequested(string way)
    signal dayRequested(string key)
    signal done

    heading: root.righting ? qsTr("Put right") : root.words.title
    under: root.editor.drafted ? qsTr("not kept yet") : root.righting ? root.editor.name : ""
    back: root.righting ? qsTr("List") : qsTr("Kit")
    tools: ItemThrow {
        editor: root.editor
        onDone: root.done()
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
    Words {
        Layout.fillWidth: true
        objectName: "verdict"
        visible: text !== ""
        text: root.editor.verdict
    }
    NameField {
        Layout.fillWidth: true
        objectName: "name"
        visible: !root.righting
        label: qsTr("Name, if you give it one")
        text: root.editor.name
        maximumLength: 30
        onEdited: text => root.editor.name = text
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "choice"
        visible: root.words.choices.length > 0
        label: root.words.choiceLabel
        options: root.words.choices
        current: root.editor.choice
        onChosen: index => root.editor.choice = index
    }
    AskedRows {
        Layout.fillWidth: true
        visible: any
        editor: root.editor
    }
    ScaleRow {
        Layout.fillWidth: true
        editor: root.editor
    }
    FieldList {
        Layout.fillWidth: true
        fields: root.editor.fields
        onOpened: key => root.numberRequested(key)
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "more"
        visible: root.words.more !== ""
        text: root.words.more
        size: Theme.key
        onClicked: root.numberRequested(root.editor.addEntry())
    }
    NameField {
        Layout.fillWidth: true
        objectName: "note"
        visible: root.words.note !== ""
        label: root.words.note
        text: root.editor.note
        maximumLength: 80
        onEdited: text => root.editor.note = text
    }
    Words {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: text !== ""
        text: root.editor.trouble
        quiet: true
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "pair"
        visible: !root.righting && root.editor.mayBePair()
        label: qsTr("How many?")
        options: [qsTr("two alike"), qsTr("one")]
        current: root.editor.pair ? 0 : 1
        onChosen: index => root.editor.pair = index === 0
    }
    ItemRecord {
        Layout.fillWidth: true
        editor: root.editor
        onMeasurementsRequested: root.measurementsRequested()
        onWayRequested: way => root.wayRequested(way)
        onDayRequested: key => root.dayRequested(key)
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }
}
