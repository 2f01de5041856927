// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** The way down heavier than the way up: what to hang, where it lets go, and whether she may. */
Sheet {
    id: root

    required property ReleasePlanner planner
    required property ReleaseForm form
    /** For the cautions of all that hangs. */
    required property SetupView view
    readonly property releaseShown shown: root.planner.shown
    readonly property bool planned: root.planner.planned
    signal askedRequested(string key)
    signal numberRequested(string key)
    signal measuresRequested
    signal done

    heading: qsTr("Heavier on the way down")
    under: root.planner.work.who === "" ? qsTr("for nobody yet") : root.planner.work.who
    back: qsTr("Set-up")
    tools: ThrowKey {
        objectName: "throw"
        visible: root.planned
        tight: true
        least: Theme.touchFloor
        text: qsTr("Leave out")
        size: Theme.key
        onClicked: root.planner.throwAway()
    }
    foot: [
        Words {
            Layout.fillWidth: true
            objectName: "state"
            visible: text !== "" && !root.shown.forbidden
            text: root.shown.state
            size: Theme.note
            strong: true
            horizontalAlignment: Text.AlignHCenter
        },
        PressKey {
            Layout.fillWidth: true
            objectName: visible ? "mainAction" : ""
            visible: root.planned && root.shown.hangs !== "" && !root.shown.forbidden
            main: true
            text: qsTr("HANG THIS BAR")
            fact: root.shown.hangs
            onClicked: {
                root.planner.hang()
                root.done()
            }
        }
    ]

    Repeater {
        model: root.planner.gate
        Notice {
            id: reason
            required body
            required stop
            Layout.fillWidth: true
            objectName: reason.stop ? "gateStop" : "gate"
        }
    }
    Words {
        Layout.fillWidth: true
        objectName: "title"
        text: root.planned ? root.shown.title : qsTr("What makes the way down heavier?")
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Repeater {
        model: [root.shown.bar, root.shown.letGo, root.shown.length, root.shown.free]
        Words {
            required property int index
            required property string modelData
            Layout.fillWidth: true
            objectName: ["barHangs", "letGo", "hookLength", "freeAt"][index]
            visible: text !== ""
            text: modelData
            size: Theme.act
        }
    }
    Words {
        Layout.fillWidth: true
        objectName: "oneSide"
        visible: text !== ""
        text: root.shown.oneSide
        strong: true
    }
    Words {
        Layout.fillWidth: true
        objectName: "off"
        visible: text !== ""
        text: root.shown.off
        size: Theme.note
        quiet: true
    }
    Pair {
        Layout.fillWidth: true
        first: [
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "way"
                label: qsTr("By")
                options: [qsTr("release hooks"), qsTr("partner lifts plates off"), qsTr("partner pushes"), qsTr("bands let go"), qsTr("dumbbells dropped")]
                current: root.planner.way
                onChosen: index => root.planner.way = index
            },
            AskedOfBoth {
                Layout.fillWidth: true
                visible: root.planned
                planner: root.planner
                onNumberRequested: key => root.askedRequested(key)
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "said"
                visible: root.planned
                label: qsTr("Asked")
                options: [qsTr("in % of her 1RM"), qsTr("as loads")]
                current: root.planner.inPercent ? 0 : 1
                onChosen: index => root.planner.inPercent = index === 0
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "base"
                visible: root.planned && root.planner.inPercent
                label: qsTr("The way down in % of")
                options: [qsTr("her 1RM"), qsTr("the way up")]
                current: root.planner.downOfWayUp ? 1 : 0
                onChosen: index => root.planner.downOfWayUp = index === 1
            },
            FieldList {
                Layout.fillWidth: true
                visible: root.planned
                fields: root.form.fields
                onOpened: key => root.numberRequested(key)
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "putBack"
                visible: root.planned
                label: qsTr("Put back")
                options: [qsTr("not in the set"), qsTr("at each rep"), qsTr("at each cluster")]
                current: root.planner.putBack
                onChosen: index => root.planner.putBack = index
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "putBackBy"
                visible: root.planned && root.planner.putBack > 0
                label: qsTr("By whom")
                options: [qsTr("spotters, one at each end"), qsTr("herself, bar in the rack")]
                current: root.planner.putBackBy - 1
                onChosen: index => root.planner.putBackBy = index + 1
            }
        ]
        second: [
            SetupNotices {
                Layout.fillWidth: true
                visible: root.planned
                notices: []
                cautions: root.view.cautions
                onLookedOver: code => root.view.lookOver(code)
            },
            PressKey {
                Layout.fillWidth: true
                objectName: "measures"
                visible: root.planned
                text: root.planner.way === 0 ? qsTr("Hook, depth and safeties") : qsTr("Depth and safeties")
                onClicked: root.measuresRequested()
            },
            HookReleased {
                Layout.fillWidth: true
                objectName: "drawing"
                visible: root.planner.drawn.there
                highest: root.planner.drawn.top
                touch: root.planner.drawn.touch
                free: root.planner.drawn.free
                lowest: root.planner.drawn.lowest
                length: root.planner.drawn.length
                sleeve: root.planner.drawn.radius
                names: [root.planner.drawn.topText, root.planner.drawn.touchText, root.planner.drawn.freeText]
                sentence: root.planner.drawn.sentence
            },
            HeadedFacts {
                Layout.fillWidth: true
                visible: root.planned
                facts: root.planner.facts
            }
        ]
    }
}
