// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** A page's heading and the line under it. */
Item {
    id: root

    required property string heading
    required property string under
    // advanceWidth does not tell when the font changes, its height does
    readonly property real widestWord: metrics.height > 0 ? root.heading.split(/\s+/).reduce((most, word) => Math.max(most, Math.ceil(metrics.advanceWidth(word))), 0) : 0

    implicitWidth: Theme.touchMain
    implicitHeight: stack.height

    Column {
        id: stack
        width: root.width

        Words {
            id: headingWords
            width: parent.width
            visible: text !== ""
            text: root.heading
            size: Theme.low ? Theme.act : Theme.title
            strong: true
            lineHeight: Theme.snug
            // a word wider than the page breaks rather than leaves it
            wrapMode: Text.Wrap
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
    FontMetrics {
        id: metrics
        font: headingWords.font
    }
}
