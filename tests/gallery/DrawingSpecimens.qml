// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Pages.Tools
import Steelyard.Theme

/** The drawings: plates, beam, marks, and each thing as it is measured. */
QtObject {
    id: root

    readonly property var entries: [{name: "plates and beam", component: plates}, {name: "bar marks", component: marks}, {name: "side elevation", component: elevation}, {name: "ranges of strength", component: ranges}, {name: "release hooks", component: hooks},
        {name: "chain and band as measured", component: chains}, {name: "aid and cam as measured", component: aids}, {name: "tools as measured", component: tools},
        {name: "implements as measured", component: things}]
    readonly property var usualPlates: [{label: "25", diameterMm: 450, thicknessMm: 45}, {label: "5", diameterMm: 228, thicknessMm: 25}, {label: "1.25", diameterMm: 160, thicknessMm: 14}]
    readonly property var loads: Array.from({length: 41}, (_, i) => 20 + 2.5 * i)
    readonly property int high: Theme.stripHeightLarge + Theme.stripHeight

    readonly property Component plates: Component {
        Sheet {
            heading: "On the bar"
            back: "Kit"

            Beam { Layout.fillWidth: true; loads: root.loads; labelOf: root.loads.map(String); value: 82.5; valueText: "82.5 kg"; last: 80; lastText: "last time 80 kg" }
            PlateStrip { Layout.fillWidth: true; sideText: "each side"; plates: root.usualPlates.concat([{label: "chain", hang: "chain"}, {label: "band", hang: "band"}]) }
            PlateStrip { Layout.fillWidth: true; sideText: "each side"; plates: [root.usualPlates[0], Object.assign({change: 1}, root.usualPlates[1]), Object.assign({change: -1}, root.usualPlates[2])] }
            PlateStrip { Layout.fillWidth: true; sideText: "bare bar"; plates: [] }
        }
    }
    readonly property Component marks: Component {
        Sheet {
            heading: "Bar marks"
            back: "Athlete"

            MarksRule {
                Layout.fillWidth: true
                Layout.preferredHeight: Theme.pictureHeight
                // larger text says it in rows
                visible: Theme.textFactor < 1.5
                marks: [{name: "bottom", height: 0.82, text: "82 cm"}, {name: "sticking zone", height: 1.04, text: "98 to 110 cm", zoneFrom: 0.98, zoneTo: 1.1}, {name: "top", height: 1.4, text: "140 cm"}]
                reach: 1.5
            }
        }
    }
    readonly property Component ranges: Component {
        Sheet {
            heading: "Strength"
            back: "Athlete"

            StrengthRanges {
                Layout.fillWidth: true
                unit: "kg"
                sentence: "98 to 112 kg, then 106 to 118 kg"
                days: [{at: 0, low: 98, middle: 105, high: 112, tested: false, breaks: false, day: "3 Aug"}, {at: 42, low: 105, middle: 105, high: 107.5, tested: true, breaks: false, day: "14 Sep"},
                    {at: 60, low: 90, middle: 96, high: 101, tested: false, breaks: true, day: "2 Oct"}, {at: 91, low: 106, middle: 112, high: 118, tested: false, breaks: true, day: "2 Nov"}]
            }
        }
    }
    readonly property Component elevation: Component {
        Sheet {
            heading: "From the front"
            back: "Set-up"

            SideElevation {
                Layout.fillWidth: true
                Layout.preferredHeight: Theme.pictureHeight
                barHeight: 1.04
                pixelsPerMetre: Theme.pictureHeight / 1.5
                floorY: Theme.pictureHeight - Theme.apart
                plates: root.usualPlates
                items: [{kind: "chain", hang: "straight", lead: 0.45, length: 0.7, pitch: 0.048, wire: 0.016}, {kind: "chain", hang: "doubled", lead: 0.2, length: 1.5, pitch: 0.05, wire: 0.012},
                    {kind: "band", hang: "single", length: 0.5, anchorHeight: 0}, {kind: "band", hang: "doubled", length: 1, anchorHeight: 0.1}]
                sentence: "chains and bands"
            }
        }
    }
    readonly property Component chains: Component {
        Sheet {
            heading: "Chain and band"
            back: "Kit"

            Repeater {
                model: ["length", "mass", "wire", "pitch", "innerWidth"]
                ChainMeasured { required property string modelData; Layout.fillWidth: true; Layout.preferredHeight: root.high; part: modelData; sentence: modelData; longLink: modelData === "innerWidth" }
            }
            Repeater {
                model: ["rest", "mass", "length"]
                BandMeasured { required property string modelData; Layout.fillWidth: true; Layout.preferredHeight: 2 * root.high; part: modelData; sentence: modelData }
            }
        }
    }
    readonly property Component hooks: Component {
        Sheet {
            heading: "Release hooks"
            back: "Way down"

            Repeater {
                model: [{tag: "a squat", top: 1.505, touch: 0.975, free: 0.961, lowest: 0.913, length: 1}, {tag: "a bench press", top: 1.03, touch: 0.70, free: 0.688, lowest: 0.66, length: 0.725},
                    {tag: "no room below", top: 0.6, touch: 0.2, free: 0.19, lowest: 0, length: 0.225}]
                HookReleased {
                    required property var modelData
                    Layout.fillWidth: true
                    highest: modelData.top
                    touch: modelData.touch
                    free: modelData.free
                    lowest: modelData.lowest
                    length: modelData.length
                    sleeve: 0.025
                    names: ["top 150.5 cm", "foot stands 97.5 ± 0.6 cm", "free 96.1 ± 0.7 cm"]
                    sentence: modelData.tag
                }
            }
        }
    }
    readonly property Component aids: Component {
        Sheet {
            heading: "Aid and cam"
            back: "Kit"

            Repeater {
                model: ["mass", "height"]
                AidMeasured { required property string modelData; Layout.fillWidth: true; Layout.preferredHeight: 2 * root.high; part: modelData; sentence: modelData; bare: modelData === "height" }
            }
            Repeater {
                model: ["stack", "angle", "radius", "travel", "pull"]
                CamMeasured { required property string modelData; Layout.fillWidth: true; Layout.preferredHeight: 2 * root.high; part: modelData; sentence: modelData }
            }
        }
    }
    readonly property Component tools: Component {
        Sheet {
            heading: "Tools"
            back: "Kit"

            Repeater {
                model: ["scale known", "bar read", "plates count", "lead length", "lead mass", "rack lowest", "rack spacing", "rack anchor"]
                ToolMeasured {
                    required property string modelData
                    Layout.fillWidth: true
                    Layout.preferredHeight: root.high
                    tool: modelData.split(" ")[0]
                    part: modelData.split(" ")[1]
                    sentence: modelData
                }
            }
        }
    }
    readonly property Component things: Component {
        Sheet {
            heading: "Implements"
            back: "Kit"

            Repeater {
                model: ["tyre shown", "tyre lift", "tyre contact", "tyre width", "log second", "log length", "stone across", "keg depth", "bag read", "sled strap", "handles read", "yoke read", "bell window"]
                ImplementMeasured {
                    required property string modelData
                    Layout.fillWidth: true
                    Layout.preferredHeight: root.high
                    tool: modelData.split(" ")[0]
                    part: modelData.split(" ")[1]
                    sentence: modelData
                }
            }
        }
    }
}
