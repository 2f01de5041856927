// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** One answer: what comes of it, how near it is, what hangs then, and what comes off and goes on. */
Item {
    id: root

    required property string title
    required property string off
    required property string load
    required property var hangs
    required property var changes
    required property bool within
    required property string why
    /** The page's own head says what the best one pulls, and its own key takes it. */
    property bool first: false
    signal taken

    implicitWidth: Theme.touchMain
    implicitHeight: stack.height

    Column {
        id: stack
        width: root.width
        spacing: Theme.line

        Rule { width: root.width; total: root.first }
        Words { width: root.width; visible: !root.first; objectName: "title"; text: root.title; size: Theme.act; strong: true; lineHeight: Theme.snug }
        Words { width: root.width; objectName: "off"; text: root.off; size: Theme.body }
        Words { width: root.width; objectName: "load"; text: qsTr("iron: %1").arg(root.load); size: Theme.body }
        Repeater {
            model: root.hangs
            Words { required property string modelData; width: root.width; text: modelData; size: Theme.body }
        }
        Words { width: root.width; visible: text !== ""; objectName: "why"; text: root.why; size: Theme.body }
        Repeater {
            model: root.changes
            Words { required property string modelData; width: root.width; objectName: "change"; text: modelData; size: Theme.note; quiet: true }
        }
        PressKey {
            width: Math.min(implicitWidth, root.width)
            objectName: "take"
            visible: !root.first
            tight: true
            text: qsTr("Hang this one")
            size: Theme.key
            onClicked: root.taken()
        }
    }
}
