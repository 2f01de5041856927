// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Keys
import Steelyard.Theme

/** Down, type, up: each step is the smallest change the kit can make; less stays on the left, as on the beam. */
GridLayout {
    id: root

    required property string value
    property string name: ""
    property string downText: "−"
    property string upText: "+"
    property bool canDown: true
    property bool canUp: true

    signal stepDown
    signal stepUp
    signal typeRequested

    columns: Theme.stacked ? 2 : 3
    columnSpacing: Theme.apart
    rowSpacing: Theme.apart
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true

    component StepKey: PressKey {
        readonly property bool answersLift: true
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredWidth: Theme.touch
        least: Theme.touchLift
        size: Theme.title
        tight: true
        repeats: true
    }
    StepKey {
        objectName: "stepDown"
        Layout.row: Theme.stacked ? 1 : 0
        Layout.column: 0
        text: root.downText
        enabled: root.canDown
        name: qsTr("%1, less: %2").arg(root.name).arg(root.downText)
        onClicked: root.stepDown()
    }
    StepKey {
        objectName: "stepType"
        Layout.row: 0
        Layout.column: Theme.stacked ? 0 : 1
        Layout.columnSpan: Theme.stacked ? 2 : 1
        Layout.preferredWidth: 2 * Theme.touch
        text: root.value
        fact: qsTr("type")
        factSize: Theme.note
        repeats: false
        name: qsTr("%1: %2, type").arg(root.name).arg(root.value)
        onClicked: root.typeRequested()
    }
    StepKey {
        objectName: "stepUp"
        Layout.row: Theme.stacked ? 1 : 0
        Layout.column: Theme.stacked ? 1 : 2
        text: root.upText
        enabled: root.canUp
        name: qsTr("%1, more: %2").arg(root.name).arg(root.upText)
        onClicked: root.stepUp()
    }
}
