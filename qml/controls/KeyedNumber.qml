// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** The number exactly as it was keyed, with its unit, and one line below: a hint, or why a key was refused. */
Item {
    id: root

    required property string text
    property string name: ""
    property string unit: ""
    property string hint: ""
    property string refusal: ""
    /** Room for one line is kept, so that no key moves under a thumb when a refusal comes; where the keys stand apart it is not. */
    property bool spare: true
    property int size: Theme.keyNumber
    property int entry: root.text === "" ? ReadOut.State.Planned : ReadOut.State.Entered

    implicitWidth: number.implicitWidth
    implicitHeight: number.height + (root.spare || said.text !== "" ? Theme.line + Math.max(said.height, said.least) : 0)

    ReadOut {
        id: number
        anchors.left: parent.left
        width: Math.min(Math.max(implicitWidth, root.size), root.width)
        height: Math.round(root.size * 0.92) + 3 * Theme.rule
        value: root.text
        unit: root.unit
        size: root.size
        entry: root.entry
        Accessible.name: root.text === "" ? qsTr("%1: nothing keyed yet").arg(root.name)
                       : qsTr("%1: %2").arg(root.name).arg(number.spoken)
    }
    Rectangle {
        anchors { left: said.left; top: said.top; bottom: said.bottom }
        width: Theme.bar
        visible: root.refusal !== ""
        color: Theme.role.ink
    }
    Words {
        id: said
        readonly property real least: root.spare ? measure.height : 0
        anchors { left: parent.left; right: parent.right; top: number.bottom; topMargin: Theme.line }
        leftPadding: LayoutMirroring.enabled || root.refusal === "" ? 0 : Theme.inset
        rightPadding: LayoutMirroring.enabled && root.refusal !== "" ? Theme.inset : 0
        text: root.refusal || root.hint
        strong: root.refusal !== ""
        quiet: root.refusal === ""
        Accessible.role: root.refusal !== "" ? Accessible.AlertMessage : Accessible.StaticText
    }
    FontMetrics {
        id: measure
        font: said.font
    }
}
