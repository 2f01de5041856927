// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** Moves the reading line by keys, so that nothing needs an exact finger. */
Item {
    id: root

    required property string lowerText
    required property string higherText
    property bool canLower: true
    property bool canRise: true
    readonly property bool stacked: Math.max(lower.implicitWidth, higher.implicitWidth) > (root.width - Theme.apart) / 2

    signal lowered
    signal raised

    implicitHeight: root.stacked ? 2 * lower.implicitHeight + Theme.apart : Math.max(lower.implicitHeight, higher.implicitHeight)

    PressKey {
        id: lower
        y: root.stacked ? higher.height + Theme.apart : 0
        width: root.stacked ? root.width : Math.floor((root.width - Theme.apart) / 2)
        objectName: "readLower"
        text: root.lowerText
        least: Theme.touchStep
        repeats: true
        enabled: root.canLower
        onClicked: root.lowered()
    }
    PressKey {
        id: higher
        x: root.stacked ? 0 : root.width - width
        width: lower.width
        objectName: "readHigher"
        text: root.higherText
        least: Theme.touchStep
        repeats: true
        enabled: root.canRise
        onClicked: root.raised()
    }
}
