// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Model
import Steelyard.Theme

/** The iron on the bar: the number, the loads that the plates here make, each side from the inside. */
ColumnLayout {
    id: root

    required property beamText beam
    required property var plates
    property bool stepper: true
    signal stepped(bool up)
    signal typed
    signal opened

    spacing: Theme.apart

    Beam {
        Layout.fillWidth: true
        visible: !Theme.stacked
        loads: root.beam.loads
        labelOf: root.beam.labels
        value: root.beam.value
        valueText: root.beam.valueText
    }
    LoadStepper {
        Layout.fillWidth: true
        visible: root.stepper
        beam: root.beam
        onStepped: up => root.stepped(up)
        onTypeRequested: root.typed()
    }
    PlateStrip {
        Layout.fillWidth: true
        plates: root.plates
        sideText: qsTr("each side")
    }
    FactRow {
        Layout.fillWidth: true
        objectName: "barHere"
        label: qsTr("Bar and plates here")
        value: qsTr("change")
        onOpened: root.opened()
    }
}
