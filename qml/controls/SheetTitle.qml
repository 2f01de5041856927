// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** A page's heading and the line under it. */
Item {
    id: root

    required property string heading
    required property string under

    implicitWidth: Theme.touchMain
    implicitHeight: stack.height

    Column {
        id: stack
        width: root.width

        Words {
            width: parent.width
            visible: text !== ""
            text: root.heading
            size: Theme.low ? Theme.act : Theme.title
            strong: true
            lineHeight: Theme.snug
            Accessible.role: Accessible.Heading
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.under
            size: Theme.note
            quiet: true
        }
    }
}
