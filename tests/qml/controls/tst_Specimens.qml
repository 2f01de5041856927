// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** Every control in its states, as pages for the checker. */
Item {
    id: root

    width: 1280
    height: 1000

    PageChecker {
        id: checker
        testCase: testCase
    }
    Component {
        id: keys
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
            ThrowKey { text: "Take it off" }
            Stepper { Layout.fillWidth: true; value: "102.5 kg"; name: "load"; downText: "−2.5"; upText: "+2.5"; canUp: false }
            ChoiceRow { Layout.fillWidth: true; label: "How it hangs"; options: ["straight", "doubled", "bunched over the sleeve"]; current: 1 }
            PressKey { Layout.fillWidth: true; main: true; enabled: false; text: "KEEP"; fact: "once looked over"; size: Theme.title }
        }
    }
    Component {
        id: keypad
        Sheet {
            heading: "Bottom"
            under: "from the floor to the bar"
            back: "Marks"
            bar: false
            pinned: KeyedNumber { objectName: "keyNumber"; Layout.fillWidth: true; name: "Bottom"; text: "82.5"; unit: "cm"; refusal: "Only one point." }
            foot: [
                NumberKeys { Layout.fillWidth: true; visible: !Theme.wide },
                PressKey { objectName: "mainAction"; Layout.fillWidth: true; main: true; text: "KEEP"; fact: "82.5 cm"; size: Theme.title }
            ]

            Words { Layout.fillWidth: true; text: "Rack hole 14 is 82 cm." }
            NumberKeys { Layout.fillWidth: true; visible: Theme.wide }
        }
    }
    Component {
        id: rows
        Sheet {
            heading: "Rows"
            back: "Squad"
            places: ["Squad", "Kit"]
            tools: PressKey { text: "Preferences"; size: Theme.key; least: Theme.touchFloor; tight: true }

            Pair {
                Layout.fillWidth: true
                first: [
                    FactRow { Layout.fillWidth: true; label: "Bar"; value: "20"; unit: "kg"; hint: "weighed" },
                    FactRow { Layout.fillWidth: true; label: "Bottom, from the floor"; value: "82"; unit: "cm"; filledIn: true },
                    FactRow { Layout.fillWidth: true; label: "Sticking zone"; value: "97 to 111"; unit: "cm"; entry: ReadOut.State.Entered },
                    FactRow { Layout.fillWidth: true; label: "Top"; value: "140"; unit: "cm"; entry: ReadOut.State.Kept; hint: "rack hole 22" }
                ]
                second: [
                    ItemRow { Layout.fillWidth: true; what: "Plates 25 · 5 · 1.25"; how: "bar 20, no collars"; leftPiece: "31.25"; rightPiece: "31.25" },
                    ItemRow { Layout.fillWidth: true; what: "Chain, 16 mm, 70 cm"; how: "straight, on a 45 cm lead"; leftPiece: "C3"; rightPiece: "C4"; tagged: true },
                    ItemRow { Layout.fillWidth: true; what: "Band, wide"; how: "one loop, floor peg to sleeve" },
                    NameField { Layout.fillWidth: true; label: "Find"; hint: "a name or part of one" },
                    NameField { Layout.fillWidth: true; label: "Name"; text: "Ana Moreau"; refusal: "That name is taken." }
                ]
            }
        }
    }
    Component {
        id: notices
        Sheet {
            heading: "Ana Moreau, back squat"
            back: "Kit"
            places: ["Now", "Squad", "Kit", "Record"]
            place: 2
            pinned: ReadOut { objectName: "keyNumber"; value: "102.5"; unit: "kg"; tail: "× 5"; size: Theme.keyNumber; entry: ReadOut.State.Kept }

            Pair {
                Layout.fillWidth: true
                first: [
                    Notice { Layout.fillWidth: true; head: "Chain clears the floor at 115 cm"; body: "Above that only the band still adds." },
                    Notice { Layout.fillWidth: true; head: "Do not lift this"; body: "The band is stretched past what it was measured for."; stop: true },
                    Flow {
                        Layout.fillWidth: true
                        spacing: Theme.indent
                        SideTag { side: "L" }
                        SideTag { side: "R" }
                        SideTag { side: "B" }
                        ReadOut { value: "105"; unit: "kg"; entry: ReadOut.State.Planned }
                        ReadOut { value: "107.5"; unit: "kg"; entry: ReadOut.State.Entered }
                    }
                ]
                second: [
                    CautionCard {
                        Layout.fillWidth: true
                        head: "Before it is ready"
                        body: "Look over each side."
                        points: ["bands: no nick, no sticky patch", "collars on, both sides", "chains even, free of feet"]
                    },
                    CautionCard { Layout.fillWidth: true; head: "Bands"; looked: true }
                ]
            }
        }
    }

    ControlCase {
        id: testCase

        name: "Specimens"

        function cleanup() {
            checker.clear()
        }
        function test_specimen_data() {
            return [{tag: "keys", component: keys}, {tag: "keypad", component: keypad}, {tag: "rows", component: rows}, {tag: "notices", component: notices}]
        }
        function test_specimen(row) {
            checker.check({name: row.tag, component: row.component})
        }
    }
}
