// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Charts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** A thing read at several places in short steps: two numbers in turn, where to read next, and the curve at the end. */
StepSheet {
    id: root

    required property ReadingsGuide reading
    readonly property readingAdvice advice: root.reading.advice
    readonly property fitPicture picture: root.reading.readings.picture
    /** At the first number of a reading: there it is said where to go, and it can end. */
    property bool atFirst: false
    /** The drawing of a number's page. */
    property alias drawn: place.data
    /** What stands on the first page, and is agreed to there. */
    property alias beginning: beginning.data
    signal formRequested
    signal inspectRequested
    signal loanRequested

    guide: root.reading
    notes: [
        Words {
            Layout.fillWidth: true
            objectName: "how"
            visible: root.asks && text !== ""
            text: root.reading.how
            quiet: true
        },
        OddHanging {
            Layout.fillWidth: true
            visible: root.asks && root.atFirst && root.advice.odd !== ""
            odd: root.advice.odd
            onAgainRequested: root.reading.readAgain()
            onLeaveOutRequested: root.reading.leaveOut()
        },
        Notice {
            Layout.fillWidth: true
            objectName: "goFor"
            visible: root.asks && root.atFirst && head !== ""
            head: root.advice.head
            body: root.advice.body
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "enough"
            visible: root.asks && root.atFirst && root.advice.enough
            text: qsTr("That is enough")
            size: Theme.key
            onClicked: root.reading.enough()
        },
        Item {
            id: place
            Layout.fillWidth: true
            Layout.preferredHeight: Theme.wide ? Theme.pictureHeight : Theme.touchMain + Theme.indent
            visible: root.asks
        }
    ]

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
    }
    OddHanging {
        Layout.fillWidth: true
        visible: root.ends && root.advice.odd !== ""
        odd: root.advice.odd
        onAgainRequested: root.reading.readAgain()
        onLeaveOutRequested: root.reading.leaveOut()
    }
    FitChart {
        Layout.fillWidth: true
        Layout.preferredHeight: Theme.pictureHeight
        objectName: "fit"
        visible: root.ends && root.picture.there
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
        measuredText: qsTr("measured to here")
        sentence: root.reading.readings.answer
    }
    Words {
        Layout.fillWidth: true
        objectName: "comesTo"
        visible: root.ends && text !== ""
        text: root.reading.readings.more
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "more"
        visible: root.ends
        text: qsTr("One more reading")
        size: Theme.key
        onClicked: root.reading.more()
    }
    ItemEnd {
        Layout.fillWidth: true
        visible: !root.asks
        guide: root.reading
        brief: root.begins
        pairs: false
        onFormRequested: root.formRequested()
        onInspectRequested: root.inspectRequested()
        onLoanRequested: root.loanRequested()
    }
}
