// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** A count with a key for one less and one for one more; less stays on the left. */
Item {
    id: root

    required property string name
    required property string value
    property bool canLess: true
    property bool canMore: true
    readonly property real keyWide: Math.round((root.width - 2 * Theme.apart) / 4)
    signal stepped(bool up)

    implicitWidth: 3 * Theme.touchMain
    implicitHeight: Math.max(less.implicitHeight, said.implicitHeight)
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true

    component StepKey: PressKey {
        least: Theme.touchStep
        size: Theme.title
        tight: true
        repeats: true
    }
    StepKey {
        id: less
        width: Math.max(implicitWidth, root.keyWide)
        height: root.height
        objectName: "less"
        text: "−"
        enabled: root.canLess
        name: qsTr("%1: one less").arg(root.name)
        onClicked: root.stepped(false)
    }
    Words {
        id: said
        x: less.width + Theme.apart
        y: Math.round((root.height - height) / 2)
        width: Math.max(0, root.width - less.width - more.width - 2 * Theme.apart)
        objectName: "said"
        text: root.value
        size: Theme.title
        strong: true
        horizontalAlignment: Text.AlignHCenter
        Accessible.name: qsTr("%1: %2").arg(root.name).arg(root.value)
    }
    StepKey {
        id: more
        x: root.width - width
        width: Math.max(implicitWidth, root.keyWide)
        height: root.height
        objectName: "more"
        text: "+"
        enabled: root.canMore
        name: qsTr("%1: one more").arg(root.name)
        onClicked: root.stepped(true)
    }
}
