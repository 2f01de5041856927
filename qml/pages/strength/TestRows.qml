// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** Tests by day; a tap puts one right or takes it out. A layout would give no width to rows that came while another page stood above. */
Column {
    id: root

    required property var tests
    signal opened(string testId)

    spacing: Theme.apart

    Repeater {
        model: root.tests
        Column {
            id: one

            required property int index
            required property string testId
            required property string label
            required property string hint
            required property string day
            required property string range
            required property string why
            required property string cut
            required property bool refused

            width: root.width
            objectName: "test:" + one.index
            spacing: Theme.line

            Notice {
                width: one.width
                objectName: "cut"
                visible: head !== ""
                head: one.cut
            }
            Words {
                width: one.width
                objectName: "day"
                visible: text !== ""
                topPadding: Theme.apart
                text: one.day
                size: Theme.note
                quiet: true
            }
            Words {
                width: one.width
                objectName: "range"
                visible: text !== ""
                text: one.range
                size: Theme.act
                strong: true
            }
            Words {
                width: one.width
                objectName: "why"
                visible: text !== ""
                text: one.why
                size: Theme.body
            }
            FactRow {
                width: one.width
                objectName: "open:" + one.index
                label: one.label
                hint: one.hint
                value: one.refused ? qsTr("not counted") : qsTr("put right")
                onOpened: root.opened(one.testId)
            }
        }
    }
}
