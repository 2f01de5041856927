// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Tools
import Steelyard.Theme

/** Measure a chain: weigh it, or gauge one link. */
Sheet {
    id: root

    required property ChainEditor editor
    readonly property bool righting: root.editor.measurementId !== ""
    signal numberRequested(string key)
    signal measurementsRequested
    signal wayRequested(string way)
    signal dayRequested(string key)
    signal done

    heading: root.righting ? qsTr("Put right") : qsTr("Measure a chain")
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
        objectName: "gauged"
        label: qsTr("By")
        options: [qsTr("weighing it"), qsTr("its links")]
        current: root.editor.gauged ? 1 : 0
        onChosen: index => root.editor.gauged = index === 1
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
        visible: !root.righting
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
