// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** How one thing hangs on the bar; every change shows at once in the set-up. */
Sheet {
    id: root

    required property HangEditor editor
    readonly property HangChoice fromKit: HangChoice { form: root.editor }
    readonly property HungDrawing drawing: HungDrawing { form: root.editor }
    signal numberRequested(string key)
    signal measureRequested
    signal done

    heading: root.editor.what
    under: qsTr("how it hangs")
    back: qsTr("Set-up")
    tools: ThrowKey {
        objectName: "takeOff"
        tight: true
        least: Theme.touchFloor
        text: qsTr("Take off")
        size: Theme.key
        onClicked: {
            root.editor.takeOff()
            root.done()
        }
    }
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        text: qsTr("DONE")
        fact: qsTr("see what she lifts")
        onClicked: root.done()
    }

    Notice {
        Layout.fillWidth: true
        visible: root.editor.trouble !== ""
        head: root.editor.trouble
    }
    Pair {
        id: pair
        Layout.fillWidth: true
        first: [
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "sides"
                visible: root.editor.kind !== "aid"
                label: qsTr("Sides")
                options: [qsTr("both"), qsTr("left only"), qsTr("right only")]
                current: root.editor.sides
                onChosen: index => root.editor.sides = index
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "way"
                visible: root.editor.kind !== "aid"
                label: qsTr("Hangs")
                options: root.editor.kind === "chain" ? [qsTr("straight"), qsTr("doubled"), qsTr("bunched")] : [qsTr("single"), qsTr("doubled")]
                current: root.editor.way
                onChosen: index => root.editor.way = index
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "anchor"
                visible: root.editor.kind === "band"
                label: qsTr("Anchored")
                options: [qsTr("below"), qsTr("above")]
                current: root.editor.anchor
                onChosen: index => root.editor.anchor = index
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "lean"
                visible: root.editor.kind === "band"
                label: qsTr("Anchor, to the bar")
                options: [qsTr("in line"), qsTr("in front"), qsTr("behind")]
                current: root.editor.lean
                onChosen: index => root.editor.lean = index
            },
            Words {
                Layout.fillWidth: true
                objectName: "worn"
                visible: root.editor.kind === "aid"
                text: qsTr("For a press from the chest: worn in the middle of the bar, it helps most where the bar touches her. In any other lift it is for you to say whether that holds.")
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "fromKit"
                visible: root.fromKit.names.length > 0
                label: root.fromKit.label
                options: root.fromKit.names
                current: root.fromKit.chosen
                onChosen: index => root.fromKit.chosen = index
            }
        ]
        second: [
            FieldList {
                Layout.fillWidth: true
                fields: root.editor.fields
                onOpened: key => root.numberRequested(key)
            },
            SideElevation {
                Layout.preferredWidth: Math.ceil(Math.max(reach, 0.5) * perMetre)
                Layout.preferredHeight: Math.round(0.7 * Theme.pictureHeight)
                objectName: "asHung"
                visible: pair.beside && root.drawing.items.length > 0
                barHeight: root.drawing.barHeight
                pixelsPerMetre: (floorY - Theme.apart) / Math.max(0.5, root.drawing.reach)
                floorY: height - 2 * Theme.apart
                items: root.drawing.items
                sentence: root.drawing.caption
            },
            Words {
                Layout.fillWidth: true
                visible: pair.beside && text !== ""
                text: root.drawing.caption
                size: Theme.note
                quiet: true
            },
            PressKey {
                Layout.fillWidth: true
                objectName: "measureAgain"
                text: qsTr("Measure it again")
                onClicked: root.measureRequested()
            }
        ]
    }
}
