// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** Stands over every page of a sample, so that nobody takes its people for real. */
Rectangle {
    id: root

    implicitHeight: words.height + 2 * Theme.line
    color: Theme.role.ink
    Accessible.role: Accessible.StaticText
    Accessible.name: words.text

    Words {
        id: words
        anchors {
            left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter
            leftMargin: Theme.edgeGap; rightMargin: Theme.edgeGap
        }
        text: qsTr("EXAMPLE: nobody here is real")
        size: Theme.note
        strong: true
        color: Theme.role.paper
        Accessible.ignored: true
    }
}
