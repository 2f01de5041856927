// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Tools
import Steelyard.Theme

/** A scale, iron, a strap, a rack or an implement measured in short steps. */
StepSheet {
    id: root

    required property ToolGuide steps
    readonly property ToolEditor tool: root.steps.form as ToolEditor
    readonly property toolWords words: root.tool.words
    readonly property bool implement: !Array.from(["scale", "bar", "plates", "lead", "rack"]).includes(root.words.drawing)
    readonly property bool choosing: root.begins && root.words.choices.length > 0 && root.words.choiceAt === ""

    guide: root.steps
    beginText: root.choosing ? "" : qsTr("Begin")
    warns: root.tool.doubtful
    notes: [
        Words {
            Layout.fillWidth: true
            objectName: "how"
            visible: text !== ""
            text: root.steps.how
            quiet: true
        },
        ChoiceRow {
            Layout.fillWidth: true
            objectName: "choice"
            visible: root.words.choiceAt !== "" && root.words.choiceAt === root.steps.key
            label: root.words.choiceLabel
            options: root.words.choices
            current: root.tool.choice
            onChosen: index => root.tool.choice = index
        },
        ScaleRow {
            Layout.fillWidth: true
            visible: root.asks && root.steps.key === "step" && scale.names.length > 0
            editor: root.tool
        },
        ToolMeasured {
            Layout.fillWidth: true
            Layout.fillHeight: root.stretch
            Layout.preferredHeight: Theme.touchMain + Theme.indent
            objectName: visible ? "drawing" : ""
            visible: !root.implement
            tool: root.words.drawing
            part: root.steps.part
            sentence: root.steps.heading
        },
        ImplementMeasured {
            Layout.fillWidth: true
            Layout.fillHeight: root.stretch
            Layout.preferredHeight: Theme.touchMain + Theme.indent
            objectName: visible ? "drawing" : ""
            visible: root.implement
            tool: root.words.drawing
            part: root.steps.part
            sentence: root.steps.heading
        }
    ]
    found: [
        Words {
            Layout.fillWidth: true
            objectName: "intro"
            visible: root.begins
            text: root.words.intro
        },
        // hidden, not taken away: a layout that turns at the same time would still reach for them
        Repeater {
            model: root.words.choices.length
            PressKey {
                required property int index
                Layout.fillWidth: true
                objectName: "choose:" + index
                visible: root.choosing
                least: Theme.touchMain
                outlined: true
                text: root.words.choices[index] ?? ""
                fact: root.words.choiceFacts[index] ?? ""
                factSize: Theme.note
                onClicked: root.steps.choose(index)
            }
        },
        AskedRows {
            Layout.fillWidth: true
            visible: any && root.ends
            editor: root.tool
        },
        Notice {
            Layout.fillWidth: true
            objectName: "notGood"
            visible: root.ends && root.warns
            head: root.tool.answer
            body: root.steps.gain
        },
        Words {
            Layout.fillWidth: true
            objectName: "verdict"
            visible: root.ends && text !== ""
            text: root.tool.verdict
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "more"
            visible: root.ends && root.words.more !== ""
            text: root.words.more
            size: Theme.key
            onClicked: root.steps.more()
        }
    ]
    onBeginRequested: root.steps.choose(-1)
}
