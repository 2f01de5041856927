// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** One fact as a full-width row to tap: its name, what it means, its value with the unit at the end. */
Tappable {
    id: root

    required property string label
    required property string value
    property string unit: ""
    property string hint: ""
    property bool filledIn: false
    property int entry: root.filledIn ? ReadOut.State.Planned : ReadOut.State.None
    property bool strong: false
    /** The value says that it may not be used: its mark is the stop's colour, the word says why. */
    property bool stop: false
    /** The value stands on the label's line, and what it means has the whole width below. */
    property bool besideLabel: false

    signal opened

    implicitWidth: Theme.touchMain
    implicitHeight: Math.max(Theme.touch, root.contentHeight + Theme.apart)
    name: root.label + ": " + (root.unit ? root.value + " " + root.unit : root.value)
    about: root.filledIn ? qsTr("filled in, not yet confirmed. %1").arg(root.hint) : root.hint.split("\n").join(", ")
    ringInside: true
    onClicked: root.opened()

    background: Rectangle {
        anchors.fill: parent
        color: root.down ? Theme.role.wash : "transparent"
        Rule {
            anchors { left: parent.left; right: parent.right; top: parent.bottom; topMargin: Theme.apart / 2 }
        }
    }
    contentItem: Item {
        id: place

        readonly property bool below: texts.natural + answer.natural + Theme.indent > place.width
        readonly property real textWidth: place.below || root.besideLabel ? place.width : place.width - answer.width - Theme.indent

        anchors.fill: parent
        implicitHeight: place.below ? texts.height + Theme.line + answer.height : Math.max(texts.height, answer.height)

        Column {
            id: texts
            readonly property real natural: Math.max(labelMetrics.advanceWidth, root.besideLabel ? 0 : Math.min(hintMetrics.advanceWidth, place.width / 2))
            anchors.left: parent.left
            y: place.below ? Math.max(0, (place.height - place.implicitHeight) / 2) : Math.round((place.height - height) / 2)
            width: place.textWidth
            Words {
                id: labelWords
                readonly property real kept: root.besideLabel && !place.below ? answer.width + Theme.indent : 0
                width: parent.width
                leftPadding: LayoutMirroring.enabled ? labelWords.kept : 0
                rightPadding: LayoutMirroring.enabled ? 0 : labelWords.kept
                text: root.label
                size: Theme.act
                strong: root.strong
                Accessible.ignored: true
            }
            Words {
                id: hintWords
                width: parent.width
                visible: text !== ""
                text: root.hint
                size: Theme.note
                quiet: true
                Accessible.ignored: true
            }
        }
        Item {
            id: answer
            readonly property real natural: Math.ceil(valueMetrics.advanceWidth) + Theme.line + Theme.rule + answer.marked
            readonly property real marked: root.stop ? Theme.tick + Theme.apart : 0
            anchors.right: parent.right
            y: place.below ? texts.y + texts.height + Theme.line : root.besideLabel ? texts.y : Math.round((place.height - height) / 2)
            width: Math.min(answer.natural, place.width)
            height: valueWords.height + (root.entry === ReadOut.State.None ? 0 : 3 * Theme.rule)
            Rectangle {
                x: answer.LayoutMirroring.enabled ? parent.width - width : 0
                y: Math.round((valueWords.height - height) / 2)
                width: Theme.tick
                height: Theme.tick
                objectName: "stopMark"
                visible: root.stop
                color: Theme.role.stop
            }
            Words {
                id: valueWords
                anchors.right: parent.right
                width: parent.width - answer.marked
                text: root.unit ? root.value + " " + root.unit : root.value
                size: Theme.act
                strong: true
                horizontalAlignment: Text.AlignRight
                Accessible.ignored: true
            }
            Rule {
                anchors { left: parent.left; right: parent.right; bottom: parent.bottom; bottomMargin: root.entry === ReadOut.State.Kept ? 0 : 2 * Theme.rule }
                visible: root.entry !== ReadOut.State.None
                total: true
                dotted: root.entry === ReadOut.State.Planned
                closed: root.entry === ReadOut.State.Kept
            }
        }
        TextMetrics {
            id: labelMetrics
            text: root.label
            font: labelWords.font
        }
        TextMetrics {
            id: hintMetrics
            text: root.hint
            font: hintWords.font
        }
        TextMetrics {
            id: valueMetrics
            text: valueWords.text
            font: valueWords.font
        }
    }
}
