// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** Keys in every state, the rows they stand in, steppers and the keypad. */
QtObject {
    id: root

    readonly property var entries: [{name: "keys", component: keys}, {name: "keys, weighty", component: weighty}, {name: "keys to throw away", component: throwing}, {name: "keys in rows", component: inRows},
        {name: "steppers", component: steppers}, {name: "keypad", component: keypad}, {name: "keypad, whole numbers", component: whole}]

    readonly property Component keys: Component {
        Sheet {
            heading: "Keys"
            under: "plain, chosen, planned, not yet"
            back: "Kit"
            places: ["Squad", "Kit"]
            place: 1
            tools: PressKey { text: "Sun"; size: Theme.key; least: Theme.touchFloor; tight: true }
            foot: [
                KeyRow {
                    Layout.fillWidth: true
                    gap: Theme.safeApart
                    PressKey { text: "Undo"; fact: "80 kg"; size: Theme.key }
                    PressKey { text: "Next"; fact: "Bo"; size: Theme.key }
                },
                PressKey { objectName: "mainAction"; Layout.fillWidth: true; main: true; text: "SET DONE"; fact: "82.5 kg × 5"; size: Theme.title }
            ]

            KeyRow {
                Layout.fillWidth: true
                PressKey { text: "3"; size: Theme.title }
                PressKey { text: "4"; chosen: true; size: Theme.title }
                PressKey { text: "5"; planned: true; size: Theme.title }
                PressKey { text: "6"; enabled: false; size: Theme.title }
            }
            PressKey { Layout.fillWidth: true; text: "Under the thumb"; spaceDown: true }
            PressKey { Layout.fillWidth: true; text: "With the keyboard on it"; Component.onCompleted: forceActiveFocus(Qt.TabFocusReason) }
            PressKey { Layout.fillWidth: true; text: "Bare"; bare: true }
            PressKey { Layout.fillWidth: true; text: "Light"; light: true; fact: "a fact" }
        }
    }
    readonly property Component weighty: Component {
        Sheet {
            heading: "Weightier keys"
            back: "Kit"
            foot: PressKey { objectName: "mainAction"; Layout.fillWidth: true; main: true; enabled: false; text: "KEEP"; fact: "once looked over"; size: Theme.title }

            PressKey { Layout.fillWidth: true; outlined: true; text: "Measure new kit" }
            PressKey { Layout.fillWidth: true; outlined: true; enabled: false; text: "Measure new kit" }
            PressKey { Layout.fillWidth: true; text: "Weigh it"; fact: "a scale and a tape"; factBelow: true }
            PressKey { Layout.fillWidth: true; main: true; spaceDown: true; text: "KEEP"; fact: "82.5 kg" }
            PressKey { Layout.fillWidth: true; chosen: true; enabled: false; text: "Chosen, and off" }
        }
    }
    readonly property Component throwing: Component {
        Sheet {
            heading: "Keys to throw away"
            back: "Kit"
            tools: ThrowKey { text: "Forget" }

            ThrowKey { Layout.fillWidth: true; text: "Take it off" }
            ThrowKey { Layout.fillWidth: true; text: "Take it off"; enabled: false }
        }
    }
    readonly property Component inRows: Component {
        Sheet {
            heading: "Rows of keys"
            back: "Kit"
            foot: KeyRow {
                Layout.fillWidth: true
                PressKey { text: "Before"; size: Theme.key }
                PressKey { text: "Later"; fact: "what is keyed waits"; size: Theme.key; factBelow: true }
            }

            ChoiceRow { Layout.fillWidth: true; label: "How it hangs"; options: ["straight", "doubled", "bunched over the sleeve"]; current: 1 }
            ChoiceRow { Layout.fillWidth: true; label: "Nothing chosen yet"; options: ["adding", "taking off"] }
            ChoiceRow { Layout.fillWidth: true; options: ["1", "2", "3", "4", "5"]; current: 4; tight: true }
            KeyRow {
                Layout.fillWidth: true
                PressKey { text: "At each height"; size: Theme.key; tight: true }
                PressKey { text: "Where it comes from"; size: Theme.key; tight: true }
            }
        }
    }
    readonly property Component steppers: Component {
        Sheet {
            heading: "Steppers"
            back: "Kit"

            Stepper { Layout.fillWidth: true; value: "102.5 kg"; name: "load"; downText: "−2.5"; upText: "+2.5" }
            Stepper { Layout.fillWidth: true; value: "20 kg"; name: "lightest"; downText: "−"; upText: "+2.5"; canDown: false }
            Stepper { Layout.fillWidth: true; value: "412.5 kg"; name: "heaviest"; downText: "−1.25"; upText: "+"; canUp: false }
        }
    }
    readonly property Component keypad: Component {
        Sheet {
            heading: "Bottom"
            under: "from the floor to the bar"
            back: "Marks"
            bar: false
            pinned: KeyedNumber { objectName: "keyNumber"; Layout.fillWidth: true; name: "Bottom"; text: "82.5"; unit: "cm"; refusal: "Only one point." }
            foot: [
                NumberKeys { Layout.fillWidth: true; visible: !Theme.wide; decimalPoint: "." },
                PressKey { objectName: "mainAction"; Layout.fillWidth: true; main: true; text: "KEEP"; fact: "82.5 cm"; size: Theme.title }
            ]

            Words { Layout.fillWidth: true; text: "Rack hole 14 is 82 cm." }
            NumberKeys { Layout.fillWidth: true; visible: Theme.wide; decimalPoint: "." }
        }
    }
    readonly property Component whole: Component {
        Sheet {
            heading: "How many"
            back: "Plates"
            bar: false
            pinned: KeyedNumber { objectName: "keyNumber"; Layout.fillWidth: true; name: "How many"; text: ""; unit: "plates"; hint: "on the scale together" }
            foot: [
                NumberKeys { Layout.fillWidth: true; visible: !Theme.wide; decimalPoint: "" },
                PressKey { objectName: "mainAction"; Layout.fillWidth: true; main: true; enabled: false; text: "KEEP"; fact: "once keyed"; size: Theme.title }
            ]

            KeyedNumber { Layout.fillWidth: true; name: "Kept"; text: "6"; unit: "plates"; entry: ReadOut.State.Kept; size: Theme.figure; spare: false }
            NumberKeys { Layout.fillWidth: true; visible: Theme.wide; decimalPoint: "" }
        }
    }
}
