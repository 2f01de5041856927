// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** How each group of a recovery code stands, in words and by the rule below it. */
Flow {
    id: root

    required property var groups
    readonly property var standings: [qsTr("to come"), qsTr("look again"), qsTr("as on paper")]

    spacing: Theme.apart

    Repeater {
        model: 5
        Column {
            id: group
            required property int index
            readonly property int standing: root.groups.length > group.index ? root.groups[group.index] : 0
            objectName: "group:" + group.index
            Words {
                text: qsTr("%1: %2").arg(group.index + 1).arg(root.standings[group.standing])
                strong: group.standing === 1
                quiet: group.standing === 0
            }
            Rule {
                width: parent.width
                dotted: group.standing === 0
                total: group.standing === 1
                closed: group.standing === 2
            }
        }
    }
}
