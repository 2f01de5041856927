// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** One of a few worded options; the chosen one is filled and carries a short rule. Wraps to as many rows as it needs. */
Item {
    id: root

    required property var options
    property string label: ""
    property int current: -1
    property bool tight: false
    // advanceWidth does not tell when the font changes, its height does
    readonly property real words: metrics.height > 0 ? Array.from(root.options).reduce((sum, option) => sum + Math.ceil(metrics.advanceWidth(option)) + Theme.line + Theme.rule, 0) : 0
    readonly property int count: root.options.length
    /** Keys a little narrower where that lets all of them stand in one row. */
    readonly property bool closer: root.tight || root.inOneRow(2) && !root.inOneRow(4)

    signal chosen(int index)

    implicitWidth: Theme.touchMain
    implicitHeight: stack.height
    Accessible.role: Accessible.Grouping
    Accessible.name: root.label

    Column {
        id: stack
        width: root.width
        spacing: Theme.line

        Words {
            width: root.width
            visible: text !== ""
            text: root.label
            size: Theme.note
            quiet: true
        }
        Flow {
            id: flow
            width: root.width
            spacing: Theme.apart

            Repeater {
                model: root.options
                PressKey {
                    id: key
                    required property int index
                    required property string modelData
                    width: Math.min(implicitWidth, flow.width)
                    markable: true
                    tight: root.closer
                    text: key.modelData
                    name: root.label ? qsTr("%1: %2").arg(root.label).arg(key.modelData) : key.modelData
                    about: key.chosen ? qsTr("chosen") : ""
                    size: Theme.key
                    chosen: key.index === root.current
                    onClicked: root.chosen(key.index)
                }
            }
        }
    }
    FontMetrics {
        id: metrics
        font { family: Theme.face; pixelSize: Theme.key; weight: Theme.strong }
    }

    function inOneRow(padding: int): bool {
        return root.words + (root.count * padding + root.count - 1) * Theme.apart <= root.width
    }
}
