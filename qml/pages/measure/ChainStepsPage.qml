// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Tools
import Steelyard.Theme

/** A chain measured in short steps, by the scale or by one link. */
StepSheet {
    id: root

    required property ChainGuide steps
    readonly property ChainEditor chain: root.steps.form as ChainEditor

    guide: root.steps
    notes: [
        Words {
            Layout.fillWidth: true
            objectName: "how"
            visible: text !== ""
            text: root.steps.how
            quiet: true
        },
        ScaleRow {
            Layout.fillWidth: true
            visible: root.asks && root.steps.key === "scaleStep" && scale.names.length > 0
            editor: root.chain
        },
        ChainMeasured {
            Layout.fillWidth: true
            Layout.fillHeight: root.stretch
            Layout.preferredHeight: Theme.touchMain + Theme.indent
            objectName: "drawing"
            part: root.steps.part
            sentence: root.steps.heading
            longLink: root.steps.longLink
        }
    ]
    found: [
        Words {
            Layout.fillWidth: true
            visible: root.begins
            text: qsTr("What hangs of a chain is what it weighs, so its mass by length counts. Weighing is surer: gauged is within 6 %.")
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "byWeight"
            visible: root.begins
            least: Theme.touchMain
            outlined: true
            text: qsTr("Weigh it")
            fact: qsTr("scale and tape")
            factSize: Theme.note
            onClicked: root.steps.choose(false)
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "byLink"
            visible: root.begins
            least: Theme.touchMain
            outlined: true
            text: qsTr("Gauge one link")
            fact: qsTr("caliper and tape")
            factSize: Theme.note
            onClicked: root.steps.choose(true)
        },
        Words {
            Layout.fillWidth: true
            objectName: "link"
            visible: root.ends && text !== ""
            text: root.chain.linkText
        }
    ]
}
