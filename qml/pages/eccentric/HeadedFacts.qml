// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** Facts with their heads, one below the other. */
Column {
    id: root

    required property var facts

    spacing: Theme.block

    Repeater {
        model: root.facts
        Column {
            id: fact

            required property int index
            required property string head
            required property string body

            width: root.width
            objectName: "fact:" + fact.index
            spacing: Theme.line

            Words {
                width: fact.width
                text: fact.head
                size: Theme.body
                strong: true
                Accessible.role: Accessible.Heading
                Accessible.name: text
            }
            Words {
                width: fact.width
                objectName: "factBody"
                text: fact.body
                size: Theme.body
            }
        }
    }
}
