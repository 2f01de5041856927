// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** What there is to measure: each kind with what it takes. */
Sheet {
    id: root

    required property MeasureWhat view
    signal measureRequested(string kind)

    heading: qsTr("Measure new kit")
    back: qsTr("Kit")

    GridLayout {
        Layout.fillWidth: true
        columns: Theme.wide && root.width >= Theme.pairWidth ? 2 : 1
        columnSpacing: Theme.block
        rowSpacing: Theme.block

        Repeater {
            model: root.view.kinds
            PressKey {
                id: row
                required property string kind
                required property string what
                required property string takes
                required property string begun
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: Theme.touchMain
                objectName: "kind:" + row.kind
                least: Theme.touchMain
                outlined: true
                text: row.what
                fact: row.begun === "" ? row.takes : row.begun
                factSize: Theme.note
                factBelow: true
                onClicked: root.measureRequested(row.kind)
            }
        }
    }
}
