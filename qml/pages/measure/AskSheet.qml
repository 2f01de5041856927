// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** A page that asks for one number: the number, what to go for, the keys and the key that goes on are in sight at once, whatever the form and the text. */
Sheet {
    id: root

    required property NumberPad pad
    /** Another page of the same steps asks for nothing. */
    property bool asks: true
    /** How the number is called where it is read aloud. */
    property string name: root.heading
    /** What to go for, in one line by the number. */
    property string target: ""
    property string hint: ""
    readonly property bool stands: root.pad.text === "" && root.pad.standing !== ""

    /** The number was kept, or stands as it was. */
    signal answered

    headingBelow: !Theme.wide && !Theme.low
    footBeside: Theme.low || root.asks && Theme.wide && Theme.pageWidth > Theme.pageHeight
    footShare: Theme.wide ? 0.44 : 0.5
    stretch: root.asks && Theme.wide
    pinned: StepNumber {
        Layout.fillWidth: true
        visible: root.asks && (Theme.low || !root.footBeside)
        pad: root.pad
        name: root.name
        target: root.target
        hint: root.hint
        refuses: Theme.low || !Theme.stacked
    }
    foot: [
        StepNumber {
            Layout.fillWidth: true
            Layout.bottomMargin: Theme.apart
            visible: root.asks && !Theme.low && root.footBeside
            pad: root.pad
            name: root.name
            target: root.target
            hint: root.hint
        },
        NumberKeys {
            Layout.fillWidth: true
            visible: root.asks && !Theme.stacked
            onPressed: key => root.pad.press(key)
            onPasted: root.pad.pasteClipboard()
        },
        // above the keys of the page it would move them under the thumb
        Words {
            Layout.fillWidth: true
            objectName: "refused"
            visible: root.asks && Theme.stacked && !Theme.low && text !== ""
            text: root.pad.refusal
            strong: true
            Accessible.role: Accessible.AlertMessage
        },
        PressKey {
            Layout.fillWidth: true
            objectName: visible ? "mainAction" : ""
            visible: root.asks
            main: root.pad.state !== NumberPad.Asking
            outlined: !main
            least: Theme.touchMain
            text: root.pad.state === NumberPad.Asking ? qsTr("IT IS RIGHT") : qsTr("NEXT")
            fact: root.stands ? root.pad.standing + " " + root.pad.unit : root.pad.text === "" ? "" : root.pad.text + " " + root.pad.unit
            onClicked: root.goOn()
        }
    ]

    // the largest text leaves no room for keys and words beside one another: the keys come first, the words further down
    NumberKeys {
        Layout.fillWidth: true
        visible: root.asks && Theme.stacked
        onPressed: key => root.pad.press(key)
        onPasted: root.pad.pasteClipboard()
    }

    function goOn() {
        if (root.stands || root.pad.keep())
            root.answered()
    }
}
