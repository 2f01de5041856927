// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** What she lifts at every height, with what hangs on the bar. Where the columns stand below each other the load steps under the thumb while the answer is in sight. */
Sheet {
    id: root

    required property SetupView view
    required property DeskWork work
    // large text needs the room above the thumb for the answer
    readonly property bool stepsInPage: pair.beside || Theme.stacked
    signal marksRequested
    signal numberRequested(string key)
    signal barRequested
    signal moreRequested
    signal hungRequested(int row)
    signal whoRequested
    signal originRequested
    signal heightsRequested
    signal askRequested
    signal strengthRequested
    signal rampRequested
    signal releaseRequested

    heading: root.work.who === "" ? qsTr("What she lifts") : root.work.who
    under: root.work.who === "" ? qsTr("for nobody yet, so it cannot be kept") : ""
    foot: [
        LoadStepper {
            Layout.fillWidth: true
            visible: !root.stepsInPage
            beam: root.view.beam
            onStepped: up => root.view.stepLoad(up)
            onTypeRequested: root.numberRequested("load")
        },
        SetupState {
            Layout.fillWidth: true
            objectName: "stateBlock"
            answer: root.view.answer
        }
    ]

    ReleasePlanner {
        id: planner
        desk: root.view.desk
        work: root.work
    }
    SetupNotices {
        id: stops
        Layout.fillWidth: true
        visible: stops.any
        notices: root.view.notices
        stops: true
    }
    Pair {
        id: pair
        Layout.fillWidth: true
        share: 0.54
        first: [
            SetupPicture {
                Layout.fillWidth: true
                view: root.view
                tall: pair.beside ? Math.round(root.height / 2) : -1
            },
            SetupMeans {
                Layout.fillWidth: true
                visible: pair.beside && root.view.answer.known
                answer: root.view.answer
                onOriginRequested: root.originRequested()
                onHeightsRequested: root.heightsRequested()
            },
            SetupKeeping {
                Layout.fillWidth: true
                visible: pair.beside
                work: root.work
                onWhoRequested: root.whoRequested()
            },
            PressKey {
                Layout.fillWidth: true
                objectName: visible ? "marks" : ""
                visible: pair.beside || !root.view.answer.known
                main: !root.view.answer.known
                text: root.view.answer.known ? qsTr("Her bar marks") : qsTr("Enter her bar marks")
                onClicked: root.marksRequested()
            }
        ]
        second: [
            SetupLoad {
                Layout.fillWidth: true
                stepper: root.stepsInPage
                beam: root.view.beam
                plates: root.view.strip
                onStepped: up => root.view.stepLoad(up)
                onTyped: root.numberRequested("load")
                onOpened: root.barRequested()
            },
            SetupHangs {
                Layout.fillWidth: true
                hanging: root.view.hanging
                onOpened: row => root.hungRequested(row)
                onMoreRequested: root.moreRequested()
                onAskRequested: root.askRequested()
            },
            FactRow {
                Layout.fillWidth: true
                objectName: "release"
                label: qsTr("Heavier on the way down")
                hint: planner.shown.state
                value: planner.planned ? planner.shown.inShort : qsTr("no")
                stop: planner.shown.forbidden
                onOpened: root.releaseRequested()
            },
            SetupNotices {
                id: notices
                Layout.fillWidth: true
                visible: notices.any
                notices: root.view.notices
                cautions: root.view.cautions
                onLookedOver: code => root.view.lookOver(code)
            },
            FactRow {
                Layout.fillWidth: true
                objectName: "percent"
                visible: root.work.name !== ""
                label: qsTr("Of her 1RM")
                besideLabel: true
                hint: root.view.answer.percents[1] ?? ""
                value: root.view.answer.percents[0] ?? ""
                onOpened: root.strengthRequested()
            },
            PressKey {
                Layout.fillWidth: true
                objectName: "ramp"
                visible: root.view.answer.known
                text: qsTr("Warm up to it")
                onClicked: root.rampRequested()
            },
            Words {
                Layout.fillWidth: true
                objectName: "gate"
                visible: text !== ""
                text: root.view.answer.gate
                size: Theme.note
                quiet: true
            },
            SetupMeans {
                Layout.fillWidth: true
                visible: !pair.beside && root.view.answer.known
                answer: root.view.answer
                onOriginRequested: root.originRequested()
                onHeightsRequested: root.heightsRequested()
            },
            SetupKeeping {
                Layout.fillWidth: true
                visible: !pair.beside
                work: root.work
                onWhoRequested: root.whoRequested()
            },
            PressKey {
                Layout.fillWidth: true
                objectName: visible ? "marks" : ""
                visible: !pair.beside && root.view.answer.known
                text: qsTr("Her bar marks")
                onClicked: root.marksRequested()
            }
        ]
    }
}
