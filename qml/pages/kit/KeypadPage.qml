// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Key one number; when the form needs another one next, the page goes on to it. */
Sheet {
    id: root

    required property NumberPad pad
    // on a phone's side the digits have the whole height beside the page
    readonly property bool digitsInPage: Theme.stacked && !Theme.low
    signal done

    heading: root.pad.subject
    back: qsTr("Leave")
    pinned: KeyedNumber {
        Layout.fillWidth: true
        objectName: "keyNumber"
        name: root.pad.subject
        text: root.pad.text
        unit: root.pad.unit
        hint: root.pad.hint
        refusal: root.pad.refusal
    }
    foot: [
        NumberKeys {
            Layout.fillWidth: true
            visible: !Theme.wide && !root.digitsInPage
            onPressed: key => root.pad.press(key)
            onPasted: root.pad.pasteClipboard()
        },
        KeyRow {
            id: offers
            Layout.fillWidth: true
            visible: root.pad.offers.length > 0
            Repeater {
                model: root.pad.offers
                PressKey {
                    id: offer
                    required property int index
                    required property string modelData
                    objectName: "offer:" + offer.index
                    outlined: true
                    least: Theme.touchMain
                    text: qsTr("Hang %1").arg(offer.modelData)
                    size: Theme.key
                    onClicked: {
                        if (root.pad.take(offer.index))
                            root.done()
                    }
                }
            }
        },
        PressKey {
            Layout.fillWidth: true
            objectName: visible ? "mainAction" : ""
            visible: root.pad.offers.length === 0
            // a question looks otherwise than an answer, so that no second tap out of habit says yes
            main: root.pad.state !== NumberPad.Asking
            outlined: !main
            least: Theme.touchMain
            enabled: root.pad.state !== NumberPad.Wanting
            text: root.pad.state === NumberPad.Asking ? qsTr("IT IS RIGHT") : qsTr("KEEP")
            fact: root.pad.fact
            onClicked: root.keep()
        }
    ]

    // the largest text leaves the foot to the key that keeps: the digits stand in the page
    NumberKeys {
        Layout.fillWidth: true
        visible: root.digitsInPage
        onPressed: key => root.pad.press(key)
        onPasted: root.pad.pasteClipboard()
    }
    Pair {
        Layout.fillWidth: true
        first: PressKey {
            Layout.fillWidth: true
            objectName: "leaveEmpty"
            visible: root.pad.canClear
            text: qsTr("Leave it out")
            onClicked: {
                if (root.pad.clear())
                    root.done()
            }
        }
        second: NumberKeys {
            Layout.fillWidth: true
            visible: Theme.wide
            onPressed: key => root.pad.press(key)
            onPasted: root.pad.pasteClipboard()
        }
    }

    function keep() {
        if (!root.pad.keep())
            return
        const next = root.pad.next()
        if (next === "")
            root.done()
        else
            root.pad.key = next
    }
}
