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
    signal pullsRequested
    signal taken

    heading: qsTr("What do I hang?")
    under: qsTr("both sides alike, from what is here and free")
    back: qsTr("Set-up")
    foot: [
        Words {
            Layout.fillWidth: true
            objectName: "bestOff"
            visible: text !== "" && !Theme.wide && !Theme.stacked
            text: root.asker.best[1] ?? ""
            size: Theme.note
            strong: true
            horizontalAlignment: Text.AlignHCenter
        },
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
            visible: root.asker.best.length > 0
            main: true
            text: qsTr("HANG THIS")
            fact: root.asker.best[2] ?? ""
            onClicked: root.hang(0)
        }
    ]

    Words {
        Layout.fillWidth: true
        objectName: "found"
        visible: text !== ""
        text: root.asker.state === HangAsker.Idle ? qsTr("Say what the pull should be, at one place or at several.") : root.asker.head
        size: Theme.act
        strong: root.asker.best.length === 0
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Words {
        Layout.fillWidth: true
        objectName: "bestTitle"
        visible: text !== ""
        text: String(root.asker.best[0] ?? "").split(" ± ").join("\u00a0±\u00a0")
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
    }
    Pair {
        Layout.fillWidth: true
        first: [
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "said"
                label: qsTr("Wanted")
                options: [qsTr("as a load"), qsTr("in % of a 1RM")]
                current: root.asker.inPercent ? 1 : 0
                onChosen: index => root.asker.inPercent = index === 1
            },
            FactRow {
                Layout.fillWidth: true
                visible: root.asker.inPercent
                objectName: "maximum"
                label: qsTr("1RM")
                hint: root.asker.maximum[1] ?? qsTr("typed for now, not tested")
                value: root.asker.maximum[0] ?? qsTr("not said")
                filledIn: root.asker.maximum[2] === "tests"
                onOpened: root.numberRequested("maximum")
            },
            WantedPlaces {
                Layout.fillWidth: true
                asker: root.asker
                onNumberRequested: key => root.numberRequested(key)
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "level"
                label: qsTr("Level with her strength")
                options: [qsTr("no matter"), qsTr("as level as it goes")]
                current: root.asker.level ? 1 : 0
                onChosen: index => root.asker.level = index === 1
            },
            FactRow {
                Layout.fillWidth: true
                visible: root.asker.level
                objectName: "pulls"
                label: qsTr("What she can hold")
                hint: qsTr("isometric pulls at three heights at least")
                value: root.asker.picture.pulls
                onOpened: root.pullsRequested()
            }
        ]
        second: [
            Answers {
                Layout.fillWidth: true
                asker: root.asker
                onTaken: index => root.hang(index)
            },
            Words {
                Layout.fillWidth: true
                objectName: "levelSentence"
                visible: root.asker.picture.pull.length > 0
                text: root.asker.picture.sentence
                size: Theme.body
            },
            AnswerPicture {
                Layout.fillWidth: true
                asker: root.asker
            },
            Answers {
                Layout.fillWidth: true
                asker: root.asker
                best: false
                onTaken: index => root.hang(index)
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
