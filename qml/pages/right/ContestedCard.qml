// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** One thing that devices said differently: each answer a row, and a tap makes it the one that counts. */
Column {
    id: root

    required property string what
    required property list<string> answers
    required property list<string> given
    signal chosen(int answer)

    spacing: Theme.apart
    Accessible.role: Accessible.Grouping
    Accessible.name: root.what

    Words {
        width: root.width
        text: root.what
        size: Theme.act
        strong: true
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Repeater {
        model: root.answers
        FactRow {
            id: row
            required property int index
            required property string modelData
            width: root.width
            objectName: "answer:" + row.index
            label: row.modelData
            hint: root.given[row.index] ?? ""
            value: row.index === 0 ? qsTr("stands now") : qsTr("choose")
            onOpened: root.chosen(row.index)
        }
    }
}
