// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** A number with its unit, and the rule below it that says how far it is: planned (dotted), entered, kept (double). */
Item {
    id: root

    enum State { None, Planned, Entered, Kept }

    required property string value
    property string unit: qsTr("kg")
    property string tail: ""
    property int size: Theme.figure
    property int entry: ReadOut.State.None
    property color ink: Theme.role.ink
    readonly property bool keyNumber: root.size >= Theme.keyNumber
    readonly property string spoken: root.value + (root.unit && " " + root.unit) + (root.tail && " " + root.tail)

    implicitWidth: row.width
    implicitHeight: Math.round(root.size * 0.92) + (root.entry === ReadOut.State.None ? 0 : 3 * Theme.rule)
    Accessible.role: Accessible.StaticText
    Accessible.name: root.entry === ReadOut.State.Planned ? qsTr("%1, filled in").arg(root.spoken)
                   : root.entry === ReadOut.State.Kept ? qsTr("%1, kept").arg(root.spoken) : root.spoken

    Row {
        id: row
        anchors.left: parent.left
        // digits before unit in every language
        LayoutMirroring.enabled: false
        LayoutMirroring.childrenInherit: true
        // the line box is trimmed to the figures, so rules sit where a pencil would draw them
        y: Math.round(root.size * 0.76 - digits.baselineOffset)
        spacing: root.size * 0.12
        Words {
            id: digits
            readonly property bool keyNumber: root.keyNumber
            text: root.value
            size: root.size
            strong: true
            color: root.ink
            wrapMode: Text.NoWrap
            font.letterSpacing: -root.size * 0.02
            Accessible.ignored: true
        }
        Words {
            anchors.baseline: digits.baseline
            visible: text !== ""
            text: root.unit
            size: Math.max(Theme.note, root.size * Theme.unitShare)
            color: root.ink
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
        Words {
            anchors.baseline: digits.baseline
            visible: text !== ""
            leftPadding: root.size * 0.06
            text: root.tail
            size: Math.max(Theme.note, root.size * Theme.tailShare)
            strong: true
            color: root.ink
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
    DottedRule {
        anchors { bottom: parent.bottom; left: parent.left; right: parent.right }
        visible: root.entry === ReadOut.State.Planned
        ink: root.ink
    }
    Rule {
        anchors { bottom: parent.bottom; left: parent.left; right: parent.right }
        visible: root.entry > ReadOut.State.Planned
        total: true
        closed: root.entry === ReadOut.State.Kept
        ink: root.ink
    }
}
