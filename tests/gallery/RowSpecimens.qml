// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** Rows to tap, fields to type into, and what says how far something is. */
QtObject {
    id: root

    readonly property var entries: [{name: "facts", component: facts}, {name: "things", component: things}, {name: "counts and toggles", component: counts}, {name: "fields", component: fields},
        {name: "notices", component: notices}, {name: "cautions", component: cautions}, {name: "numbers", component: numbers}]

    readonly property Component facts: Component {
        Sheet {
            heading: "Facts"
            back: "Squad"
            places: ["Squad", "Kit"]
            tools: PressKey { text: "Preferences"; size: Theme.key; least: Theme.touchFloor; tight: true }

            Pair {
                Layout.fillWidth: true
                first: [
                    FactRow { Layout.fillWidth: true; label: "Bar"; value: "20"; unit: "kg"; hint: "weighed" },
                    FactRow { Layout.fillWidth: true; label: "Bottom, from the floor"; value: "82"; unit: "cm"; filledIn: true },
                    FactRow { Layout.fillWidth: true; label: "Sticking zone"; value: "97 to 111"; unit: "cm"; entry: ReadOut.State.Entered }
                ]
                second: [
                    FactRow { Layout.fillWidth: true; label: "Top"; value: "140"; unit: "cm"; entry: ReadOut.State.Kept; hint: "rack hole 22" },
                    FactRow { Layout.fillWidth: true; label: "Wide band"; value: "out of use"; stop: true; hint: "since 3 Mar: cut" },
                    FactRow { Layout.fillWidth: true; label: "Long chain"; value: "one free"; strong: true; besideLabel: true; hint: "5.70 kg a metre, 150 cm\nmeasured 2 Nov, due in 6 weeks" }
                ]
            }
        }
    }
    readonly property Component counts: Component {
        Sheet {
            heading: "Reps"
            back: "Tests"

            CountRow { Layout.fillWidth: true; name: "Reps done"; value: "5" }
            CountRow { Layout.fillWidth: true; name: "Reps done"; value: "not counted"; canLess: false }
            ToggleRow { Layout.fillWidth: true; label: "Hung besides iron"; options: ["chains", "bands from below", "bands from above", "a bench aid"]; on: [true, false, true, false] }
        }
    }
    readonly property Component things: Component {
        Sheet {
            heading: "What hangs"
            back: "Set-up"

            ItemRow { Layout.fillWidth: true; what: "Plates 25 · 5 · 1.25"; how: "bar 20, no collars"; leftPiece: "31.25"; rightPiece: "31.25" }
            ItemRow { Layout.fillWidth: true; what: "Chain, 16 mm, 70 cm"; how: "straight, on a 45 cm lead"; leftPiece: "C3"; rightPiece: "C4"; tagged: true }
            ItemRow { Layout.fillWidth: true; what: "Band, wide"; how: "one loop, floor peg to sleeve" }
            ItemRow { Layout.fillWidth: true; what: "Chain on one side"; how: "doubled, no lead"; leftPiece: "C1"; tagged: true }
        }
    }
    readonly property Component fields: Component {
        Sheet {
            heading: "Fields"
            back: "Squad"

            NameField { Layout.fillWidth: true; label: "Find"; hint: "a name or part of one" }
            NameField { Layout.fillWidth: true; label: "Name"; text: "Ana Moreau" }
            NameField { Layout.fillWidth: true; label: "Name"; text: "Ana Moreau"; refusal: "That name is taken." }
        }
    }
    readonly property Component notices: Component {
        Sheet {
            heading: "Ana Moreau, back squat"
            under: "what the page has to say"
            back: "Kit"
            places: ["Now", "Squad", "Kit", "Record"]
            place: 2

            Notice { Layout.fillWidth: true; head: "Chain clears the floor at 115 cm"; body: "Above that only the band still adds." }
            Notice { Layout.fillWidth: true; head: "Do not lift this"; body: "The band is stretched past what it was measured for."; stop: true }
            Notice { Layout.fillWidth: true; head: "A head alone" }
            Words { Layout.fillWidth: true; text: "Nobody is in the squad yet. A name is enough to begin with; bar marks, birth year and the rest can wait."; quiet: true }
        }
    }
    readonly property Component cautions: Component {
        Sheet {
            heading: "Cautions"
            back: "Kit"

            CautionCard {
                Layout.fillWidth: true
                head: "Before it is ready"
                body: "Look over each side."
                points: ["bands: no nick, no sticky patch", "collars on, both sides", "chains even, free of feet"]
            }
            CautionCard { Layout.fillWidth: true; head: "Bands"; looked: true }
        }
    }
    readonly property Component numbers: Component {
        Sheet {
            heading: "Numbers"
            back: "Kit"
            pinned: ReadOut { objectName: "keyNumber"; value: "102.5"; unit: "kg"; tail: "× 5"; size: Theme.keyNumber; entry: ReadOut.State.Kept }

            Flow {
                Layout.fillWidth: true
                spacing: Theme.indent
                ReadOut { value: "105"; unit: "kg"; entry: ReadOut.State.Planned }
                ReadOut { value: "107.5"; unit: "kg"; entry: ReadOut.State.Entered }
                ReadOut { value: "110"; unit: "kg"; entry: ReadOut.State.Kept }
                ReadOut { value: "112.5" }
            }
            Flow {
                Layout.fillWidth: true
                spacing: Theme.indent
                SideTag { side: "L" }
                SideTag { side: "R" }
                SideTag { side: "B" }
            }
            Words { Layout.fillWidth: true; text: "a note, quiet"; size: Theme.note; quiet: true }
            Words { Layout.fillWidth: true; text: "a sentence to read" }
            Words { Layout.fillWidth: true; text: "97 at the bottom, 126 ± 4 at the top"; size: Theme.title; strong: true }
        }
    }
}
