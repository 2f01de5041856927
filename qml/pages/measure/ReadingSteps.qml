// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** A thing read at several places in short steps: two numbers in turn, where to read next, and the curve at the end. */
StepSheet {
    id: root

    required property ReadingsGuide reading
    readonly property readingAdvice advice: root.reading.advice
    /** At the first number of a reading: there it is said where to go, and it can end. */
    property bool atFirst: false
    /** The drawing of a number's page. */
    property alias drawn: place.data
    /** What stands on the first page, and is agreed to there. */
    property alias beginning: beginning.data

    guide: root.reading
    pairs: false
    target: root.asks && root.atFirst ? root.advice.head : ""
    notes: [
        OddHanging {
            Layout.fillWidth: true
            visible: root.asks && root.atFirst && root.advice.odd !== ""
            odd: root.advice.odd
            onAgainRequested: root.reading.readAgain()
            onLeaveOutRequested: root.reading.leaveOut()
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "enough"
            visible: root.asks && root.atFirst && root.advice.enough
            text: qsTr("That is enough")
            size: Theme.key
            onClicked: root.reading.enough()
        },
        Words {
            Layout.fillWidth: true
            objectName: "why"
            visible: root.asks && root.atFirst && text !== ""
            text: root.advice.body
        },
        Words {
            Layout.fillWidth: true
            objectName: "how"
            visible: text !== ""
            text: root.reading.how
            quiet: true
        },
        Item {
            id: place
            Layout.fillWidth: true
            Layout.fillHeight: root.stretch
            Layout.preferredHeight: Theme.touchMain + Theme.indent
        }
    ]
    found: [
        Item {
            Layout.fillWidth: true
            implicitHeight: beginning.implicitHeight
            visible: root.begins
            ColumnLayout {
                id: beginning
                width: parent.width
                height: implicitHeight
                spacing: Theme.block
            }
        },
        OddHanging {
            Layout.fillWidth: true
            visible: root.ends && root.advice.odd !== ""
            odd: root.advice.odd
            onAgainRequested: root.reading.readAgain()
            onLeaveOutRequested: root.reading.leaveOut()
        },
        MeasuredChart {
            Layout.fillWidth: true
            visible: root.ends && picture.there
            picture: root.reading.readings.picture
            sentence: root.reading.readings.answer
        },
        Words {
            Layout.fillWidth: true
            objectName: "comesTo"
            visible: root.ends && text !== ""
            text: root.reading.readings.more
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "more"
            visible: root.ends
            text: qsTr("One more reading")
            size: Theme.key
            onClicked: root.reading.more()
        }
    ]
}
