// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** What the pull comes to over the whole way, and the keys to the picture as a table and to where it comes from. */
Column {
    id: root

    required property setupAnswer answer
    signal originRequested
    signal heightsRequested

    visible: root.answer.known
    spacing: Theme.apart

    Words {
        width: root.width
        objectName: "means"
        visible: text !== ""
        text: root.answer.means
        size: Theme.body
    }
    Words {
        width: root.width
        visible: text !== ""
        text: root.answer.more
        size: Theme.note
        quiet: true
    }
    KeyRow {
        width: root.width
        PressKey {
            objectName: "heights"
            tight: true
            text: qsTr("At each height")
            size: Theme.key
            onClicked: root.heightsRequested()
        }
        PressKey {
            objectName: "origin"
            tight: true
            text: qsTr("Where it comes from")
            size: Theme.key
            onClicked: root.originRequested()
        }
    }
}
