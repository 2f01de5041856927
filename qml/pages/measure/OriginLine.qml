// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** One part of a number: what, how much, how it came to be known, and its share of what makes the number uncertain. */
Item {
    id: root

    required property string what
    required property string how
    required property string value
    required property string shareText
    required property real share
    readonly property bool beside: Theme.wide && root.width >= Theme.pairWidth
    readonly property real half: root.beside ? Math.round((root.width - Theme.gutter) / 2) : root.width

    implicitWidth: Theme.touchMain
    implicitHeight: root.beside ? Math.max(said.height, worth.height) : said.height + Theme.line + worth.height

    Column {
        id: said
        width: root.half
        spacing: Theme.line

        Words { width: said.width; objectName: "what"; text: root.what; size: Theme.act; strong: true }
        Words { width: said.width; objectName: "value"; visible: !root.beside; text: root.value; size: Theme.act }
        Words { width: said.width; text: root.how; size: Theme.note; quiet: true }
    }
    Column {
        id: worth
        anchors.right: parent.right
        y: root.beside ? 0 : said.height + Theme.line
        width: root.half
        spacing: Theme.line

        Words { width: worth.width; objectName: "valueBeside"; visible: root.beside; text: root.value; size: Theme.act }
        Rectangle {
            id: track
            width: Math.min(worth.width, 3 * Theme.touchMain)
            height: Theme.inset
            objectName: "share"
            visible: root.share > 0
            color: Theme.role.wash
            border { width: Theme.edging; color: Theme.role.edge }

            Rectangle {
                width: Math.max(Theme.rule, Math.round(track.width * root.share))
                height: track.height
                color: Theme.role.ink
            }
        }
        Words { width: worth.width; text: root.shareText; size: Theme.note }
    }
}
