// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** All numbers of a thing read at several places on one page, with the curve through them. */
Sheet {
    id: root

    required property ReadingsEditor form
    /** What is measured, and how, as head and line under it. */
    required property string what
    required property string how
    property string firstAbout: ""
    property string secondAbout: ""
    readonly property bool righting: root.form.measurementId !== ""
    /** Between the curve and the numbers. */
    property alias choices: choices.data
    signal numberRequested(string key)
    signal measurementsRequested
    signal wayRequested(string way)
    signal dayRequested(string key)
    signal done

    heading: root.righting ? qsTr("Put right") : root.what
    under: root.form.drafted ? qsTr("not kept yet") : root.righting ? root.form.name : root.how
    back: root.righting ? qsTr("List") : qsTr("Kit")
    tools: ItemThrow {
        editor: root.form
        onDone: root.done()
    }
    foot: [
        PressKey {
            Layout.fillWidth: true
            objectName: "addReading"
            text: qsTr("One more reading")
            onClicked: root.numberRequested(root.form.addReading())
        },
        ItemFoot {
            Layout.fillWidth: true
            editor: root.form
            onClicked: root.form.keep()
        }
    ]

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.form.book ? root.form.book.head : ""
        body: root.form.book ? root.form.book.body : ""
    }
    Words {
        Layout.fillWidth: true
        objectName: "answer"
        text: root.form.answer
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Words {
        Layout.fillWidth: true
        visible: text !== ""
        text: root.form.trouble
        quiet: true
    }
    Pair {
        Layout.fillWidth: true
        share: 0.58
        first: [
            MeasuredChart {
                Layout.fillWidth: true
                visible: picture.there
                picture: root.form.picture
                sentence: root.form.answer
            },
            Words {
                Layout.fillWidth: true
                objectName: "comesTo"
                visible: text !== ""
                text: root.form.more
            }
        ]
        second: [
            Notice {
                Layout.fillWidth: true
                objectName: "odd"
                visible: head !== ""
                head: root.form.oddText
                body: qsTr("Read it again, or leave it out.")
            },
            Item {
                Layout.fillWidth: true
                implicitHeight: choices.implicitHeight
                visible: choices.children.length > 0
                ColumnLayout {
                    id: choices
                    width: parent.width
                    height: implicitHeight
                    spacing: Theme.block
                }
            },
            FieldList {
                Layout.fillWidth: true
                fields: root.form.fields
                onOpened: key => root.numberRequested(key)
            },
            Repeater {
                model: root.form.readings
                HangingLine {
                    id: line
                    required property int index
                    Layout.fillWidth: true
                    objectName: "reading:" + line.index
                    number: line.index + 1
                    massAbout: root.firstAbout
                    lengthAbout: root.secondAbout
                    leaveOutAbout: line.leftOut ? qsTr("Take in again: reading %1") : qsTr("Leave reading %1 out")
                    onMassRequested: root.numberRequested(root.form.keyOf(true, line.index))
                    onLengthRequested: root.numberRequested(root.form.keyOf(false, line.index))
                    onLeftOutChosen: leftOut => root.form.setLeftOut(line.index, leftOut)
                }
            },
            NameField {
                Layout.fillWidth: true
                objectName: "name"
                visible: !root.righting
                label: qsTr("Name, if you give it one")
                text: root.form.name
                maximumLength: 30
                onEdited: text => root.form.name = text
            },
            ItemRecord {
                Layout.fillWidth: true
                editor: root.form
                onMeasurementsRequested: root.measurementsRequested()
                onWayRequested: way => root.wayRequested(way)
                onDayRequested: key => root.dayRequested(key)
            }
        ]
    }
    Connections {
        target: root.form
        function onKept() {
            root.done()
        }
    }
}
