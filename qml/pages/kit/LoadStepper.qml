// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Model

/** The load on the bar, stepped by what the plates here make. */
Stepper {
    id: root

    required property beamText beam
    signal stepped(bool up)

    objectName: "load"
    name: qsTr("Load on the bar")
    value: root.beam.valueText
    downText: root.beam.down
    upText: root.beam.up
    canDown: root.beam.canDown
    canUp: root.beam.canUp
    onStepDown: root.stepped(false)
    onStepUp: root.stepped(true)
}
