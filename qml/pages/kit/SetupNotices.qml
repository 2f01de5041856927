// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Theme

/** Stops or warnings, and what has to be looked over. */
Column {
    id: root

    required property var notices
    property var cautions: []
    /** What forbids the lift, or what only warns. */
    property bool stops: false
    readonly property bool any: root.turns >= 0 && (warned.count > 0 && root.shows() || looks.count > 0)
    // a row that comes or goes says so here
    property int turns: 0
    signal lookedOver(int code)

    spacing: Theme.block

    Repeater {
        id: warned
        model: root.notices
        onItemAdded: ++root.turns
        onItemRemoved: ++root.turns
        Notice {
            id: notice
            required body
            required stop
            width: root.width
            objectName: notice.stop ? "stopNotice" : "warning"
            visible: notice.stop === root.stops
        }
    }
    Repeater {
        id: looks
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

    function shows(): bool {
        for (let i = 0; i < warned.count; ++i)
            if ((warned.itemAt(i) as Notice)?.stop === root.stops)
                return true
        return false
    }
}
