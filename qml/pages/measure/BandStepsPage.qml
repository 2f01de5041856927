// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
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
    readonly property bool loads: root.asks && root.steps.part === "mass"

    guide: root.steps
    target: root.loads ? root.advice.head : ""
    beginText: qsTr("Looked over: begin")
    notes: [
        OddHanging {
            Layout.fillWidth: true
            visible: root.loads && root.advice.odd !== ""
            odd: root.advice.odd
            onAgainRequested: root.steps.readAgain()
            onLeaveOutRequested: root.steps.leaveOut()
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "enough"
            visible: root.loads && root.advice.curve
            text: qsTr("That is enough")
            size: Theme.key
            onClicked: root.steps.enough()
        },
        Words {
            Layout.fillWidth: true
            objectName: "how"
            visible: text !== ""
            text: root.steps.how
            quiet: true
        },
        Words {
            Layout.fillWidth: true
            objectName: "why"
            visible: root.loads && text !== ""
            text: root.advice.body
        },
        BandMeasured {
            Layout.fillWidth: true
            Layout.fillHeight: root.stretch
            Layout.preferredHeight: Theme.touchMain + Theme.indent
            objectName: "drawing"
            part: root.steps.part
            sentence: root.steps.heading
        },
        ChoiceRow {
            Layout.fillWidth: true
            objectName: "way"
            visible: root.loads && (root.advice.curve || root.steps.unloading)
            label: qsTr("Next reading")
            options: [qsTr("adding"), qsTr("taking off")]
            current: root.steps.unloading ? 1 : 0
            onChosen: index => root.steps.unloading = index === 1
        }
    ]
    found: [
        CautionCard {
            Layout.fillWidth: true
            objectName: "caution"
            visible: root.begins
            head: qsTr("A stretched band stores energy")
            points: [qsTr("Look it over, stretched by hand: a cut or a crack, and it is not measured but thrown away."),
                qsTr("Hang it from something that holds more than what goes on it; a rack is bolted or weighed down."),
                qsTr("Stand out of its line. Put plates on low over the floor, and never let go of a stretched band."),
                qsTr("A scale in between carries no more than it is made for.")]
            accept: ""
        },
        OddHanging {
            Layout.fillWidth: true
            visible: root.ends && root.advice.odd !== ""
            odd: root.advice.odd
            onAgainRequested: root.steps.readAgain()
            onLeaveOutRequested: root.steps.leaveOut()
        },
        MeasuredChart {
            Layout.fillWidth: true
            visible: root.ends && picture.there
            picture: root.band.picture
            sentence: root.band.answer
        },
        Words {
            Layout.fillWidth: true
            objectName: "unsure"
            visible: root.ends && text !== ""
            text: root.advice.unsure
            quiet: true
        },
        Words {
            Layout.fillWidth: true
            objectName: "wayBack"
            visible: root.ends && text !== ""
            text: root.advice.wayBack
        },
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
                text: qsTr("Read while taking off")
                size: Theme.key
                onClicked: root.steps.more(true)
            }
        }
    ]
    onBeginRequested: root.steps.next()
}
