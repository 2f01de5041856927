// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The iron on the bar: the number, the loads that the plates here make, each side from the inside. */
Column {
    id: root

    required property beamText beam
    required property var plates
    property bool stepper: true
    signal stepped(bool up)
    signal typed
    signal opened

    spacing: Theme.apart

    Beam {
        width: root.width
        visible: !Theme.stacked
        loads: root.beam.loads
        labelOf: root.beam.labels
        value: root.beam.value
        valueText: root.beam.valueText
    }
    LoadStepper {
        width: root.width
        visible: root.stepper
        beam: root.beam
        onStepped: up => root.stepped(up)
        onTypeRequested: root.typed()
    }
    Words {
        width: root.width
        objectName: "enteredAs"
        visible: text !== ""
        text: root.beam.enteredAs
        size: Theme.note
        quiet: true
    }
    PlateStrip {
        width: root.width
        plates: root.plates
        sideText: qsTr("each side")
    }
    FactRow {
        width: root.width
        objectName: "barHere"
        label: qsTr("Bar and plates here")
        value: qsTr("change")
        onOpened: root.opened()
    }
}
