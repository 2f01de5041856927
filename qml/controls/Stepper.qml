// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** Down, type, up: each step is the smallest change the kit can make; less stays on the left, as on the beam. The steps stand below the number where it has no room between them. */
Item {
    id: root

    required property string value
    property string name: ""
    property string downText: "−"
    property string upText: "+"
    property bool canDown: true
    property bool canUp: true
    // advanceWidth does not tell when the font changes, its height does
    readonly property real valueWide: metrics.height > 0 ? Math.ceil(metrics.advanceWidth(root.value)) + 3 * Theme.apart : 0
    readonly property real stepWide: Math.max(down.implicitWidth, up.implicitWidth, Math.round((root.width - 2 * Theme.apart) / 4))
    readonly property real between: root.width - 2 * (root.stepWide + Theme.apart)
    readonly property bool below: Theme.stacked || root.between < Math.max(Theme.touchStep, root.valueWide)
    readonly property real stepHigh: Math.max(down.implicitHeight, up.implicitHeight)
    readonly property real rowHigh: root.below ? root.stepHigh : Math.max(root.stepHigh, type.implicitHeight)
    readonly property real stepsY: root.below ? type.implicitHeight + Theme.apart : 0

    signal stepDown
    signal stepUp
    signal typeRequested

    implicitWidth: 3 * Theme.touchMain
    implicitHeight: root.stepsY + root.rowHigh
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true

    component StepKey: PressKey {
        readonly property bool answersLift: true
        y: root.stepsY
        width: root.below ? Math.floor((root.width - Theme.apart) / 2) : root.stepWide
        height: root.rowHigh
        least: Theme.touchLift
        size: Theme.title
        tight: true
        repeats: true
    }
    StepKey {
        id: down
        objectName: "stepDown"
        text: root.downText
        enabled: root.canDown
        name: qsTr("%1, less: %2").arg(root.name).arg(root.downText)
        onClicked: root.stepDown()
    }
    PressKey {
        id: type
        x: root.below ? 0 : root.stepWide + Theme.apart
        width: root.below ? root.width : root.between
        height: root.below ? implicitHeight : root.rowHigh
        objectName: "stepType"
        least: Theme.touchStep
        size: Theme.title
        tight: true
        text: root.value
        fact: qsTr("type")
        factSize: Theme.note
        name: qsTr("%1: %2, type").arg(root.name).arg(root.value)
        onClicked: root.typeRequested()
    }
    StepKey {
        id: up
        x: root.width - width
        objectName: "stepUp"
        text: root.upText
        enabled: root.canUp
        name: qsTr("%1, more: %2").arg(root.name).arg(root.upText)
        onClicked: root.stepUp()
    }
    FontMetrics {
        id: metrics
        font { family: Theme.face; pixelSize: Theme.title; weight: Theme.strong }
    }
}
