// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The places where a pull may be wanted: a row to key it, and a stepper once it is. */
Column {
    id: root

    required property HangAsker asker
    signal numberRequested(string key)

    spacing: Theme.block

    Repeater {
        model: root.asker.targets
        Column {
            id: target

            required property string key
            required property string name
            required property string value
            required property bool wanted

            width: root.width
            objectName: "target:" + target.key
            spacing: Theme.line

            FactRow {
                width: target.width
                visible: !target.wanted
                objectName: "ask:" + target.key
                label: target.name
                value: qsTr("any")
                onOpened: root.numberRequested(target.key)
            }
            Words {
                width: target.width
                visible: target.wanted
                text: target.name
                size: Theme.note
                quiet: true
            }
            Stepper {
                width: target.width
                objectName: "step:" + target.key
                visible: target.wanted
                name: target.name
                value: target.value
                onStepDown: root.asker.step(target.key, false)
                onStepUp: root.asker.step(target.key, true)
                onTypeRequested: root.numberRequested(target.key)
            }
        }
    }
}
