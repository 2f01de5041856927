// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** What is measured for a heavier way down: the hook, how deep she goes, where her hands and the safeties are. */
Sheet {
    id: root

    required property ReleasePlanner planner
    required property ReleaseForm hook
    required property ReleaseForm depth
    required property ReleaseForm sides
    readonly property releaseShown shown: root.planner.shown
    signal numberRequested(var form, string key)

    heading: root.planner.way === 0 ? qsTr("Hook, depth and safeties") : qsTr("Depth and safeties")
    under: root.planner.work.who === "" ? qsTr("for nobody yet") : root.planner.work.who
    back: qsTr("Way down")
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        text: qsTr("BACK TO THE LOAD")
        onClicked: root.backRequested()
    }

    component Part: Words {
        Layout.fillWidth: true
        size: Theme.act
        strong: true
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }

    Repeater {
        model: [root.shown.length, root.shown.free]
        Words {
            required property int index
            required property string modelData
            Layout.fillWidth: true
            objectName: ["hookLength", "freeAt"][index]
            visible: text !== ""
            text: modelData
            size: Theme.act
            strong: true
        }
    }
    Pair {
        Layout.fillWidth: true
        first: [
            Part {
                visible: root.planner.way === 0
                text: qsTr("The hook")
            },
            FieldList {
                Layout.fillWidth: true
                visible: root.planner.way === 0
                fields: root.hook.fields
                onOpened: key => root.numberRequested(root.hook, key)
            }
        ]
        second: [
            HookReleased {
                Layout.fillWidth: true
                objectName: "drawing"
                visible: root.planner.drawn.there
                highest: root.planner.drawn.top
                touch: root.planner.drawn.touch
                free: root.planner.drawn.free
                lowest: root.planner.drawn.lowest
                length: root.planner.drawn.length
                sleeve: root.planner.drawn.radius
                names: [root.planner.drawn.topText, root.planner.drawn.touchText, root.planner.drawn.freeText]
                sentence: root.planner.drawn.sentence
            },
            Part { text: qsTr("How deep she goes") },
            FieldList {
                Layout.fillWidth: true
                fields: root.depth.fields
                onOpened: key => root.numberRequested(root.depth, key)
            },
            Part { text: qsTr("Sides and safeties") },
            FieldList {
                Layout.fillWidth: true
                fields: root.sides.fields
                onOpened: key => root.numberRequested(root.sides, key)
            }
        ]
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Rehearse with empty hooks and set the safeties before anything is hung on them. A bar that comes down one degree out of level lets one side go late: it has to come down level.")
        size: Theme.note
        quiet: true
    }
}
