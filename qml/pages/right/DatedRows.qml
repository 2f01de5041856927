// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Theme

/** What was measured, by day; a tap opens one to be put right. */
Column {
    id: root

    required property var rows
    signal opened(string recordId)

    spacing: Theme.apart

    Repeater {
        model: root.rows
        FactRow {
            id: row
            required property int index
            required property string recordId
            required hint
            width: root.width
            objectName: "dated:" + row.index
            onOpened: root.opened(row.recordId)
        }
    }
}
