// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** One part of a number: what, how much, how it came to be known, and a bar as long as its share of what makes the number uncertain. */
Column {
    id: root

    required property string what
    required property string how
    required property string value
    required property string shareText
    required property real share

    spacing: Theme.line

    Words { width: root.width; objectName: "what"; text: root.what; size: Theme.act; strong: true }
    Words { width: root.width; objectName: "value"; text: root.value; size: Theme.act }
    Words { width: root.width; text: root.how; size: Theme.note; quiet: true }
    Item {
        width: root.width
        height: Theme.apart
        Rule { anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter } }
        Rectangle {
            anchors { left: parent.left; verticalCenter: parent.verticalCenter }
            width: Math.round(root.width * root.share)
            height: Theme.line
            color: Theme.role.ink
        }
    }
    Words { width: root.width; text: root.shareText; size: Theme.note }
}
