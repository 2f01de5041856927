// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** Her isometric pulls in this lift: the next one, and those that count. */
Sheet {
    id: root

    required property PullsEditor editor
    /** The pull that was touched: it can be taken out. */
    property string chosen: ""
    signal numberRequested(string key)

    heading: qsTr("What she can hold")
    under: root.editor.who
    back: qsTr("Wanted")
    tools: ThrowKey {
        objectName: "out"
        visible: root.chosen !== ""
        tight: true
        least: Theme.touchFloor
        text: qsTr("Take out")
        size: Theme.key
        onClicked: {
            root.editor.takeOut(root.chosen)
            root.chosen = ""
        }
    }
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.editor.fact !== ""
        text: qsTr("KEEP THIS PULL")
        fact: root.editor.fact
        factSize: Theme.act
        onClicked: root.editor.keep()
    }

    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: head !== ""
        head: root.editor.work.book.head
        body: root.editor.work.book.body
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("She pulls as hard as she can on a bar that the rack holds, at three heights at least, from near her lowest to near her highest; a scale or a plate shows how hard.")
        size: Theme.body
    }
    Pair {
        Layout.fillWidth: true
        first: [
            FieldList {
                Layout.fillWidth: true
                fields: root.editor.fields
                onOpened: key => root.numberRequested(key)
            }
        ]
        second: [
            Words {
                Layout.fillWidth: true
                objectName: "counts"
                text: root.editor.counts
                size: Theme.act
                strong: true
                Accessible.role: Accessible.Heading
                Accessible.name: text
            },
            Column {
                id: list
                Layout.fillWidth: true
                spacing: Theme.apart

                Repeater {
                    model: root.editor.pulls
                    PressKey {
                        id: pull

                        required property string recordId
                        required property string label
                        required property string hint
                        required property string value

                        width: list.width
                        objectName: "pull:" + pull.recordId
                        chosen: root.chosen === pull.recordId
                        text: pull.label
                        fact: pull.hint === "" ? pull.value : qsTr("%1, %2").arg(pull.value).arg(pull.hint)
                        factSize: Theme.act
                        onClicked: root.chosen = pull.chosen ? "" : pull.recordId
                    }
                }
            }
        ]
    }
    Notice {
        Layout.fillWidth: true
        objectName: "caution"
        head: qsTr("A greatest pull is a maximal test")
        body: qsTr("Warm, cleared for it and supervised; the rack bolted or loaded so that it cannot move, and the bar under pins, never on hooks alone. Build the pull up over a second, without a jerk. Stop for pain, dizziness, chest pain, sudden headache or numbness. Under 18 only with a named approval. Your local rules come first.")
    }
    Words {
        Layout.fillWidth: true
        text: root.editor.nobodys ? qsTr("The desk is laid out for nobody: these pulls go with the marks. Choose an athlete and a lift to keep them.") : qsTr("Pulls count together for 28 days; an older one is another strength. One pull is taken to spread by 5 % until three are repeats.")
        size: Theme.note
        quiet: true
    }
}
