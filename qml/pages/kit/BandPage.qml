// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Charts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Measure a band: hang known plates on it, read its length, see the fit. */
Sheet {
    id: root

    required property BandEditor editor
    readonly property fitPicture picture: root.editor.picture
    readonly property bool righting: root.editor.measurementId !== ""
    signal numberRequested(string key)
    signal measurementsRequested
    signal wayRequested(string way)
    signal dayRequested(string key)
    signal done

    heading: root.righting ? qsTr("Put right") : qsTr("Measure a band")
    under: root.editor.drafted ? qsTr("not kept yet") : root.righting ? root.editor.name : qsTr("hang plates, read the length")
    back: root.righting ? qsTr("List") : qsTr("Kit")
    tools: ItemThrow {
        editor: root.editor
        onDone: root.done()
    }
    foot: [
        PressKey {
            Layout.fillWidth: true
            objectName: "addHanging"
            text: qsTr("Hang a mass")
            onClicked: root.numberRequested(root.editor.addHanging())
        },
        ItemFoot {
            Layout.fillWidth: true
            editor: root.editor
            onClicked: root.editor.keep()
        }
    ]

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
        visible: text !== ""
        text: root.editor.trouble
        quiet: true
    }
    Pair {
        Layout.fillWidth: true
        share: 0.58
        first: [
            FitChart {
                Layout.fillWidth: true
                Layout.preferredHeight: Theme.pictureHeight
                objectName: "fit"
                visible: root.picture.points.length > 0
                points: root.picture.points
                fit: root.picture.fit
                low: root.picture.low
                high: root.picture.high
                xTo: root.picture.pullTo
                yFrom: root.picture.lengthFrom
                yTo: root.picture.lengthTo
                xUnit: root.picture.pullUnit
                yUnit: root.picture.lengthUnit
                measuredTo: root.picture.measuredTo
                measuredText: root.picture.measuredText
                sentence: root.editor.answer
            },
            Words {
                Layout.fillWidth: true
                visible: text !== ""
                text: root.editor.modelText
                size: Theme.note
                quiet: true
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "model"
                visible: root.editor.modelText !== ""
                label: qsTr("Curve")
                options: [qsTr("best"), qsTr("straight"), qsTr("bent"), qsTr("rubber")]
                current: root.editor.model
                onChosen: index => root.editor.model = index
            }
        ]
        second: [
            Notice {
                Layout.fillWidth: true
                objectName: "odd"
                visible: root.editor.oddText !== ""
                head: root.editor.oddText
                body: qsTr("Hang it again, or leave it out.")
            },
            FieldList {
                Layout.fillWidth: true
                fields: root.editor.fields
                onOpened: key => root.numberRequested(key)
            },
            Repeater {
                model: root.editor.hangings
                HangingLine {
                    id: line
                    required property int index
                    Layout.fillWidth: true
                    objectName: "hanging:" + line.index
                    number: line.index + 1
                    onMassRequested: root.numberRequested("mass:" + line.index)
                    onLengthRequested: root.numberRequested("length:" + line.index)
                    onLeftOutChosen: leftOut => root.editor.setLeftOut(line.index, leftOut)
                }
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "pair"
                visible: !root.righting
                label: qsTr("How many?")
                options: [qsTr("two alike"), qsTr("one")]
                current: root.editor.pair ? 0 : 1
                onChosen: index => root.editor.pair = index === 0
            },
            Words {
                Layout.fillWidth: true
                visible: root.editor.pair && !root.righting
                text: qsTr("The second stands on this one's measurement, with 3 % more doubt about its length. Measure it too and hang each on its own side to be surer.")
                size: Theme.note
                quiet: true
            },
            NameField {
                Layout.fillWidth: true
                objectName: "name"
                visible: !root.righting
                label: qsTr("Name, if you give it one")
                text: root.editor.name
                maximumLength: 30
                onEdited: text => root.editor.name = text
            },
            ItemRecord {
                Layout.fillWidth: true
                editor: root.editor
                onMeasurementsRequested: root.measurementsRequested()
                onWayRequested: way => root.wayRequested(way)
                onDayRequested: key => root.dayRequested(key)
            }
        ]
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }
}
