// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** What is asked of the way up and of the way down: a stepper each. */
Column {
    id: root

    required property ReleasePlanner planner
    signal numberRequested(string key)

    spacing: Theme.block

    Repeater {
        model: root.planner.asked
        Column {
            id: asked

            required property string key
            required property string name
            required property string value

            width: root.width
            spacing: Theme.line

            Words {
                width: asked.width
                text: asked.name
                size: Theme.note
                quiet: true
            }
            Stepper {
                width: asked.width
                objectName: "step:" + asked.key
                name: asked.name
                value: asked.value
                onStepDown: root.planner.step(asked.key, false)
                onStepUp: root.planner.step(asked.key, true)
                onTypeRequested: root.numberRequested(asked.key)
            }
        }
    }
}
