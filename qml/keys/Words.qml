// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Theme

/** Text by purpose. */
Text {
    id: root

    property int size: Theme.body
    property bool strong: false
    property bool quiet: false

    color: root.quiet ? Theme.role.inkSoft : Theme.role.ink
    font.family: Theme.face
    font.pixelSize: root.size
    font.weight: root.strong ? Theme.strong : Theme.plain
    wrapMode: Text.WordWrap
    textFormat: Text.PlainText
    // said aloud, so that right-to-left pages turn it
    horizontalAlignment: Text.AlignLeft
    Accessible.role: Accessible.StaticText
    Accessible.name: root.text
}
