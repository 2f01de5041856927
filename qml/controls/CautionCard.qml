// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** A caution that has to be looked over before a load counts as ready; afterwards one quiet line. */
Rectangle {
    id: root

    required property string head
    property string body: ""
    property var points: []
    /** Empty where the page has a key of its own for it. */
    property string accept: qsTr("Looked over")
    property string lookedText: qsTr("looked over")
    property bool looked: false
    readonly property real pad: root.looked ? 0 : Theme.indent

    signal accepted

    implicitWidth: Theme.touchMain
    implicitHeight: root.looked ? quietLine.height : texts.height + (key.visible ? Theme.apart + key.height : 0) + 2 * Theme.inset
    color: root.looked ? "transparent" : Theme.role.wash
    border { width: root.looked ? 0 : Theme.rule; color: Theme.role.ink }
    Accessible.role: Accessible.Grouping
    Accessible.name: root.looked ? quietLine.text : root.head

    Words {
        id: quietLine
        anchors { left: parent.left; right: parent.right }
        visible: root.looked
        text: qsTr("%1: %2").arg(root.head).arg(root.lookedText)
        size: Theme.note
        quiet: true
    }
    Column {
        id: texts
        anchors { left: parent.left; right: parent.right; top: parent.top; leftMargin: root.pad; rightMargin: root.pad; topMargin: Theme.inset }
        visible: !root.looked
        spacing: Theme.line
        Words {
            width: parent.width
            text: root.head
            strong: true
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.body
        }
        Repeater {
            model: root.points
            Item {
                id: point
                required property string modelData
                width: texts.width
                height: pointWords.height
                Rectangle {
                    anchors { left: parent.left; top: parent.top; topMargin: Math.round(pointWords.font.pixelSize * 0.6) }
                    width: Theme.apart
                    height: Theme.rule
                    color: Theme.role.ink
                }
                Words {
                    id: pointWords
                    anchors { left: parent.left; right: parent.right; leftMargin: Theme.indent }
                    text: point.modelData
                }
            }
        }
    }
    PressKey {
        id: key
        anchors { left: parent.left; leftMargin: root.pad; bottom: parent.bottom; bottomMargin: Theme.inset }
        width: Math.min(implicitWidth, root.width - 2 * root.pad)
        objectName: "accept"
        visible: !root.looked && root.accept !== ""
        text: root.accept
        size: Theme.key
        name: qsTr("%1: %2").arg(root.head).arg(root.accept)
        onClicked: root.accepted()
    }
}
