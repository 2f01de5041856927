// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Model
import Steelyard.Theme

/** What a form asks besides its numbers, each with its answers. */
ColumnLayout {
    id: root

    required property ToolEditor editor
    readonly property bool any: rows.count > 0

    spacing: Theme.block

    Repeater {
        id: rows
        model: root.editor.asked
        ChoiceRow {
            id: row
            required property string key
            required label
            required options
            required current
            Layout.fillWidth: true
            objectName: "asked:" + row.key
            onChosen: index => root.editor.choose(row.key, index)
        }
    }
}
