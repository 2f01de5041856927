// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Theme

/** The numbers of a form, each a row to tap. */
Column {
    id: root

    required property var fields
    signal opened(string key)

    spacing: Theme.apart

    Repeater {
        model: root.fields
        FactRow {
            id: row
            required property string key
            required property bool entered
            required unit
            required hint
            required filledIn
            width: root.width
            objectName: "field:" + row.key
            entry: row.filledIn ? ReadOut.State.Planned : row.entered ? ReadOut.State.Entered : ReadOut.State.None
            onOpened: root.opened(row.key)
        }
    }
}
