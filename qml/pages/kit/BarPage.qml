// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Tools
import Steelyard.Theme

/** The bar, its collars and the plates that are here. */
Sheet {
    id: root

    required property BarEditor editor
    required property WeighedIronView weighed
    signal numberRequested(string key)

    heading: qsTr("Bar and plates")
    under: qsTr("what is here to hang")
    back: qsTr("Set-up")

    Pair {
        Layout.fillWidth: true
        first: [
            FieldList {
                Layout.fillWidth: true
                fields: root.editor.fields
                onOpened: key => root.numberRequested(key)
            },
            WeighedHere {
                Layout.fillWidth: true
                iron: root.weighed
            },
            ChoiceRow {
                Layout.fillWidth: true
                objectName: "trust"
                label: qsTr("Plates weigh")
                options: [qsTr("as marked"), qsTr("2 % either way")]
                current: root.editor.asMarked ? 0 : 1
                onChosen: index => root.editor.asMarked = index === 0
            },
            Words {
                Layout.fillWidth: true
                text: root.editor.asMarked ? qsTr("Weighed, or made to a competition standard.") : qsTr("Gym plates nobody has weighed: our own allowance.")
                size: Theme.note
                quiet: true
            }
        ]
        second: [
            Repeater {
                model: root.editor.stock
                StockLine {
                    id: line
                    required property int index
                    Layout.fillWidth: true
                    objectName: "stock:" + line.index
                    onStepped: up => root.editor.stepPairs(line.index, up)
                }
            },
            PressKey {
                Layout.fillWidth: true
                objectName: "newPlate"
                text: qsTr("Other plates")
                onClicked: root.numberRequested("newPlate")
            }
        ]
    }
}
