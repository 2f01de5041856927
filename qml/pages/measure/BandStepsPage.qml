// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Charts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** A band measured in short steps: looked over, at rest, then a mass and a length in turn, until the curve is good enough. */
StepSheet {
    id: root

    required property BandGuide steps
    readonly property BandEditor band: root.steps.form as BandEditor
    readonly property bandAdvice advice: root.steps.advice
    readonly property fitPicture picture: root.band.picture
    readonly property bool loads: root.asks && root.steps.part === "mass"
    signal formRequested
    signal inspectRequested
    signal loanRequested

    guide: root.steps
    notes: [
        Words {
            Layout.fillWidth: true
            objectName: "how"
            visible: root.asks && text !== ""
            text: root.steps.how
            quiet: true
        },
        OddHanging {
            Layout.fillWidth: true
            visible: root.loads && root.advice.odd !== ""
            odd: root.advice.odd
            onAgainRequested: root.steps.readAgain()
            onLeaveOutRequested: root.steps.leaveOut()
        },
        Notice {
            Layout.fillWidth: true
            objectName: "goFor"
            visible: root.loads && head !== ""
            head: root.advice.head
            body: root.advice.body
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "enough"
            visible: root.loads && root.advice.curve
            text: qsTr("That is enough")
            size: Theme.key
            onClicked: root.steps.enough()
        },
        ChoiceRow {
            Layout.fillWidth: true
            objectName: "way"
            visible: root.loads && (root.advice.curve || root.steps.unloading)
            label: qsTr("The load")
            options: [qsTr("goes on"), qsTr("comes off again")]
            current: root.steps.unloading ? 1 : 0
            onChosen: index => root.steps.unloading = index === 1
        },
        BandMeasured {
            Layout.fillWidth: true
            Layout.preferredHeight: Theme.wide ? Theme.pictureHeight : Theme.touchMain + Theme.indent
            objectName: "drawing"
            visible: root.asks
            part: root.steps.part
            sentence: root.steps.heading
        }
    ]

    CautionCard {
        Layout.fillWidth: true
        objectName: "caution"
        visible: root.begins
        head: qsTr("A stretched band stores energy")
        points: [qsTr("Look it over, stretched by hand: a cut or a crack, and it is not measured but thrown away."),
            qsTr("Hang it from something that holds more than what goes on it; a rack is bolted or weighed down."),
            qsTr("Stand out of its line. Put plates on low over the floor, and never let go of a stretched band."),
            qsTr("A scale in between carries no more than it is made for.")]
        accept: qsTr("Looked over: begin")
        onAccepted: root.steps.next()
    }
    OddHanging {
        Layout.fillWidth: true
        visible: root.ends && root.advice.odd !== ""
        odd: root.advice.odd
        onAgainRequested: root.steps.readAgain()
        onLeaveOutRequested: root.steps.leaveOut()
    }
    FitChart {
        Layout.fillWidth: true
        Layout.preferredHeight: Theme.pictureHeight
        objectName: "fit"
        visible: root.ends && root.picture.points.length > 0
        points: root.picture.points
        fit: root.picture.fit
        low: root.picture.low
        high: root.picture.high
        xTo: root.picture.pullTo
        yFrom: root.picture.lengthFrom
        yTo: root.picture.lengthTo
        measuredTo: root.picture.measuredTo
        measuredText: qsTr("measured to here")
        sentence: root.band.answer
    }
    Words {
        Layout.fillWidth: true
        objectName: "wayBack"
        visible: root.ends && text !== ""
        text: root.advice.wayBack
    }
    KeyRow {
        Layout.fillWidth: true
        visible: root.ends
        PressKey {
            objectName: "more"
            text: qsTr("One more length")
            size: Theme.key
            onClicked: root.steps.more(false)
        }
        PressKey {
            objectName: "comeOff"
            text: qsTr("On the way back")
            size: Theme.key
            onClicked: root.steps.more(true)
        }
    }
    ItemEnd {
        Layout.fillWidth: true
        visible: !root.asks
        guide: root.steps
        brief: root.begins
        onFormRequested: root.formRequested()
        onInspectRequested: root.inspectRequested()
        onLoanRequested: root.loanRequested()
    }
}
