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

    Repeater {
        model: root.view.kinds
        PressKey {
            id: row
            required property string kind
            required property string what
            required property string takes
            required property string begun
            Layout.fillWidth: true
            objectName: "kind:" + row.kind
            least: Theme.touchMain
            outlined: true
            text: row.what
            fact: row.begun === "" ? row.takes : row.begun
            factSize: Theme.note
            onClicked: root.measureRequested(row.kind)
        }
    }
}
