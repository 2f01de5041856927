// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** One lifter's bar marks for one lift. */
Sheet {
    id: root

    required property MarksEditor editor
    required property DeskWork work
    signal numberRequested(string key)
    signal done
    signal runRequested

    heading: root.work.who === "" ? qsTr("Her bar marks") : root.work.who
    under: qsTr("floor to the bar's middle, read at the sleeve")
    back: qsTr("Leave")
    foot: [
        PressKey {
            Layout.fillWidth: true
            objectName: "keepMarks"
            visible: root.work.marksDiffer
            text: qsTr("Keep them")
            fact: root.work.name
            onClicked: root.work.keepMarks()
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "mainAction"
            main: true
            text: qsTr("SEE")
            fact: qsTr("what she lifts")
            onClicked: root.done()
        }
    ]

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.work.book.head
        body: root.work.book.body
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "inARow"
        visible: root.work.who !== ""
        text: qsTr("Read them one by one")
        fact: qsTr("bottom and top")
        factSize: Theme.note
        size: Theme.key
        onClicked: root.runRequested()
    }
    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: root.editor.trouble !== ""
        head: root.editor.trouble
    }
    Pair {
        Layout.fillWidth: true
        share: 0.62
        // what is read every time comes before what is said once
        first: [
            FieldList {
                Layout.fillWidth: true
                fields: root.editor.fields
                onOpened: key => root.numberRequested(key)
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "start"
                label: qsTr("The lift starts")
                options: [qsTr("from her own bottom"), qsTr("with plates on the floor")]
                current: root.editor.fromFloor ? 1 : 0
                onChosen: index => root.editor.fromFloor = index === 1
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "readBy"
                visible: root.editor.racks.length > 0
                label: qsTr("Read by")
                options: root.editor.racks
                current: root.editor.rack
                onChosen: index => root.editor.rack = index
            }
        ]
        second: MarksRule {
            Layout.fillWidth: true
            Layout.preferredHeight: Theme.pictureHeight
            visible: root.editor.marks.length > 0 && Theme.textFactor < 1.5
            marks: root.editor.marks
            unitLength: root.editor.unitLength
        }
    }
}
