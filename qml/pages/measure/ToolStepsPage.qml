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

/** A scale, iron, a strap or a rack measured in short steps. */
StepSheet {
    id: root

    required property ToolGuide steps
    readonly property ToolEditor tool: root.steps.form as ToolEditor
    readonly property toolWords words: root.tool.words
    readonly property bool choosing: root.begins && root.words.choices.length > 0 && root.words.choiceAt === ""
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
        ChoiceRow {
            Layout.fillWidth: true
            objectName: "choice"
            visible: root.asks && root.words.choiceAt !== "" && root.words.choiceAt === root.steps.key
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
            Layout.preferredHeight: Theme.wide ? Theme.pictureHeight : Theme.touchMain + Theme.indent
            objectName: "drawing"
            visible: root.asks
            tool: root.words.drawing
            part: root.steps.part
            sentence: root.steps.heading
        }
    ]

    Words {
        Layout.fillWidth: true
        objectName: "intro"
        visible: root.begins
        text: root.words.intro
    }
    Repeater {
        model: root.choosing ? root.words.choices : []
        PressKey {
            required property int index
            required property string modelData
            Layout.fillWidth: true
            objectName: "choose:" + index
            least: Theme.touchMain
            outlined: true
            text: modelData
            fact: root.words.choiceFacts[index] ?? ""
            factSize: Theme.note
            onClicked: root.steps.choose(index)
        }
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "begin"
        visible: root.begins && !root.choosing
        least: Theme.touchMain
        outlined: true
        text: qsTr("Begin")
        onClicked: root.steps.choose(-1)
    }
    Words {
        Layout.fillWidth: true
        objectName: "verdict"
        visible: root.ends && text !== ""
        text: root.tool.verdict
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "more"
        visible: root.ends && root.words.more !== ""
        text: root.words.more
        size: Theme.key
        onClicked: root.steps.more()
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
