// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Theme

/** What was measured, by day; a tap opens one to be put right. A plain column that stands alone in a page would get no width. */
ColumnLayout {
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
            Layout.fillWidth: true
            objectName: "dated:" + row.index
            onOpened: root.opened(row.recordId)
        }
    }
}
