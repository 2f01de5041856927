// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** A test of strength: what was lifted and how, and what follows from it while it is typed. */
Sheet {
    id: root

    required property TestEditor editor
    readonly property testShown shown: root.editor.shown
    readonly property testTyped typed: root.editor.typed
    readonly property bool old: root.editor.testId !== ""
    signal numberRequested(string key)
    signal dayRequested(string key)
    signal done

    heading: root.old ? qsTr("Put right") : qsTr("A test")
    under: root.editor.drafted ? qsTr("%1 · not kept yet").arg(root.shown.who) : root.shown.who
    back: qsTr("List")
    tools: ThrowKey {
        objectName: "throw"
        visible: root.editor.drafted || root.old
        tight: true
        least: Theme.touchFloor
        text: root.editor.drafted ? qsTr("Forget") : qsTr("Take out")
        size: Theme.key
        onClicked: {
            if (root.editor.drafted)
                root.editor.throwDraft()
            else
                root.editor.takeOut()
        }
    }
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.editor.canKeep
        text: qsTr("KEEP")
        fact: root.shown.fact
        factSize: Theme.note
        onClicked: root.editor.keep()
    }

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.editor.book.head
        body: root.editor.book.body
    }
    Words {
        Layout.fillWidth: true
        objectName: "follows"
        visible: text !== ""
        text: root.shown.head
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Words {
        Layout.fillWidth: true
        objectName: "how"
        visible: text !== ""
        text: root.shown.body
        size: Theme.body
    }
    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: head !== ""
        head: root.shown.trouble
    }
    Pair {
        Layout.fillWidth: true
        first: [
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "what"
                options: [qsTr("a set"), qsTr("a maximum tried out")]
                label: qsTr("What it was")
                current: root.typed.maximum ? 1 : 0
                onChosen: index => root.editor.setMaximum(index === 1)
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "helped"
                visible: root.typed.lifted
                options: [qsTr("hangs on her"), qsTr("helps her")]
                label: qsTr("The load")
                current: root.typed.helped ? 1 : 0
                onChosen: index => root.editor.setHelped(index === 1)
            },
            FieldList {
                Layout.fillWidth: true
                fields: root.editor.fields
                onOpened: key => root.numberRequested(key)
            },
            Words {
                Layout.fillWidth: true
                visible: !root.typed.maximum
                text: qsTr("Reps done")
                size: Theme.note
                quiet: true
            },
            CountRow {
                Layout.fillWidth: true
                objectName: "reps"
                visible: !root.typed.maximum
                name: qsTr("Reps done")
                value: root.typed.reps
                onStepped: up => root.editor.stepReps(up)
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "reserve"
                visible: !root.typed.maximum && !root.typed.missed
                options: [qsTr("not said"), "0", "1", "2", "3", "4", "5"]
                label: qsTr("Reps left in reserve, as she says")
                current: root.typed.reserve
                onChosen: index => root.editor.setReserve(index)
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "missed"
                visible: !root.typed.maximum
                options: [qsTr("no"), qsTr("one was missed")]
                label: qsTr("A rep missed behind them")
                current: root.typed.missed ? 1 : 0
                onChosen: index => root.editor.setMissed(index === 1)
            }
        ]
        second: [
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "setup"
                visible: root.typed.setups.length > 1
                options: root.typed.setups
                label: qsTr("In a kept set-up")
                current: root.typed.setup
                onChosen: index => root.editor.chooseSetup(index)
            },
            ToggleRow {
                Layout.fillWidth: true
                objectName: "hung"
                visible: root.typed.setup === 0
                label: qsTr("Hung besides iron")
                options: root.typed.things
                on: root.typed.hung
                onToggled: index => root.editor.hang(index)
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "when"
                options: [qsTr("today"), qsTr("another day")]
                label: qsTr("When")
                current: root.typed.today ? 0 : 1
                onChosen: index => root.editor.setToday(index === 0)
            },
            FieldList {
                Layout.fillWidth: true
                visible: !root.typed.today
                fields: root.editor.day.fields
                onOpened: key => root.dayRequested(key)
            },
            Notice {
                Layout.fillWidth: true
                objectName: "caution"
                head: qsTr("A maximal test is not for everybody")
                body: qsTr("Warm, screened and cleared for it; supervised, with safeties and spotters. Stop for pain, dizziness, chest pain, sudden headache or numbness. A set with reps in reserve says nearly as much. Your local rules come first.")
            },
            Notice {
                Layout.fillWidth: true
                objectName: "minor"
                visible: root.shown.minor
                head: qsTr("May be under age")
                body: qsTr("Technique before load, qualified supervision, and no maximal lift without an approval by name.")
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
