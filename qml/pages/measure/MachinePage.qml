// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Model

/** Measure a machine with a cam: its radius by angle, or its pull by travel. */
ReadingsSheet {
    id: root

    required property MachineEditor editor

    form: root.editor
    what: qsTr("Measure a cam machine")
    how: root.editor.byPull ? qsTr("pull it on a scale along its way") : qsTr("turn it, read axis to cable")
    firstAbout: root.editor.byPull ? qsTr("Reading %1, travel: %2") : qsTr("Reading %1, angle: %2")
    secondAbout: root.editor.byPull ? qsTr("Reading %1, pull: %2") : qsTr("Reading %1, radius: %2")
    choices: ChoiceRow {
        Layout.fillWidth: true
        objectName: "by"
        label: qsTr("Read")
        options: [qsTr("by radius"), qsTr("by pull")]
        current: root.editor.byPull ? 1 : 0
        onChosen: index => root.editor.byPull = index === 1
    }
}
