// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Theme

/** Stops and warnings, then what has to be looked over. */
Column {
    id: root

    required property var notices
    required property var cautions
    signal lookedOver(int code)

    spacing: Theme.block

    Repeater {
        model: root.notices
        Notice {
            required body
            required stop
            width: root.width
        }
    }
    Repeater {
        model: root.cautions
        CautionCard {
            id: card
            required property int code
            required points
            required looked
            width: root.width
            objectName: "caution:" + card.code
            onAccepted: root.lookedOver(card.code)
        }
    }
}
