// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Theme

/** A page's heading and the line under it. */
ColumnLayout {
    id: root

    required property string heading
    required property string under

    spacing: 0

    Words {
        Layout.fillWidth: true
        visible: text !== ""
        text: root.heading
        size: Theme.low ? Theme.act : Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
    }
    Words {
        Layout.fillWidth: true
        visible: text !== ""
        text: root.under
        size: Theme.note
        quiet: true
    }
}
