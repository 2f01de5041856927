// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** What is wanted at each place, and what to hang for it from the kit that is here: the best, and the best after it. */
Sheet {
    id: root

    required property HangAsker asker
    signal numberRequested(string key)
    signal taken

    heading: qsTr("What do I hang?")
    under: qsTr("both sides alike, from what is here and free")
    back: qsTr("Set-up")
    Component.onCompleted: root.asker.lookOn()
    Component.onDestruction: root.asker.lookAway()
    foot: [
        PressKey {
            Layout.fillWidth: true
            objectName: visible ? "stop" : ""
            visible: root.asker.state === HangAsker.Looking
            text: qsTr("Stop looking")
            size: Theme.key
            onClicked: root.asker.stop()
        },
        PressKey {
            Layout.fillWidth: true
            objectName: visible ? "mainAction" : ""
            visible: root.asker.best !== ""
            main: true
            text: qsTr("HANG THIS")
            fact: root.asker.best
            onClicked: root.hang(0)
        }
    ]

    Pair {
        Layout.fillWidth: true
        first: [
            Column {
                id: targets
                Layout.fillWidth: true
                spacing: Theme.block

                Repeater {
                    model: root.asker.targets
                    Column {
                        id: target

                        required property string key
                        required property string name
                        required property string value
                        required property bool wanted

                        width: targets.width
                        objectName: "target:" + target.key
                        spacing: Theme.line

                        FactRow {
                            width: target.width
                            visible: !target.wanted
                            objectName: "ask:" + target.key
                            label: target.name
                            value: qsTr("any")
                            onOpened: root.numberRequested(target.key)
                        }
                        Words {
                            width: target.width
                            visible: target.wanted
                            text: target.name
                            size: Theme.note
                            quiet: true
                        }
                        Stepper {
                            width: target.width
                            objectName: "step:" + target.key
                            visible: target.wanted
                            name: target.name
                            value: target.value
                            onStepDown: root.asker.step(target.key, false)
                            onStepUp: root.asker.step(target.key, true)
                            onTypeRequested: root.numberRequested(target.key)
                        }
                    }
                }
            }
        ]
        second: [
            Words {
                Layout.fillWidth: true
                objectName: "found"
                visible: text !== ""
                text: root.asker.state === HangAsker.Idle ? qsTr("Say what the pull should be, at one place or at several.") : root.asker.head
                size: Theme.act
                strong: true
                Accessible.role: Accessible.Heading
                Accessible.name: text
            },
            Column {
                id: answers
                Layout.fillWidth: true
                spacing: Theme.block

                Repeater {
                    model: root.asker.answers
                    AnswerCard {
                        id: answer
                        required property int index
                        width: answers.width
                        objectName: "answer:" + answer.index
                        first: answer.index === 0
                        onTaken: root.hang(answer.index)
                    }
                }
            },
            Words {
                Layout.fillWidth: true
                visible: text !== ""
                text: root.asker.body
                size: Theme.note
                quiet: true
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "chains"
                label: qsTr("Chains")
                options: [qsTr("may hang"), qsTr("stay off")]
                current: root.asker.chains ? 0 : 1
                onChosen: index => root.asker.chains = index === 0
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "bands"
                label: qsTr("Bands")
                options: [qsTr("may hang"), qsTr("stay off")]
                current: root.asker.bands ? 0 : 1
                onChosen: index => root.asker.bands = index === 0
            }
        ]
    }
    /** By the page: the answers go with the set-up they were for. */
    function hang(index: int) {
        root.asker.take(index)
        root.taken()
    }
}
