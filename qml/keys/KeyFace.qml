// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Theme

/** What stands on a key: the verb, and beside it (or below, if it must) the fact it will write. */
Item {
    id: root

    property string text: ""
    property string fact: ""
    property int size: Theme.act
    property int factSize: root.size
    property bool light: false
    /** The fact stands below also where it fits beside: keys of a list all look alike. */
    property bool factBelow: false
    property color front: Theme.role.ink
    readonly property real verbWidth: Math.ceil(textMetrics.advanceWidth) + Theme.line + Theme.rule
    readonly property real factWidth: Math.ceil(factMetrics.advanceWidth) + Theme.line + Theme.rule
    readonly property real natural: root.verbWidth + (root.fact ? root.factWidth + Theme.apart : 0)

    implicitWidth: root.natural
    implicitHeight: grid.implicitHeight

    Grid {
        id: grid
        anchors.centerIn: parent
        columns: root.fact === "" || root.factBelow || root.natural > root.width ? 1 : 2
        columnSpacing: Theme.apart
        rowSpacing: 0
        horizontalItemAlignment: Grid.AlignHCenter
        verticalItemAlignment: Grid.AlignVCenter
        Words {
            width: Math.min(root.verbWidth, root.width)
            text: root.text
            size: root.size
            strong: !root.light
            color: root.front
            horizontalAlignment: Text.AlignHCenter
            Accessible.ignored: true
        }
        Words {
            width: Math.min(root.factWidth, root.width)
            visible: root.fact !== ""
            text: root.fact
            size: root.factSize
            color: root.front
            horizontalAlignment: Text.AlignHCenter
            Accessible.ignored: true
        }
    }
    TextMetrics {
        id: textMetrics
        text: root.text
        font { family: Theme.face; pixelSize: root.size; weight: root.light ? Theme.plain : Theme.strong }
    }
    TextMetrics {
        id: factMetrics
        text: root.fact
        font { family: Theme.face; pixelSize: root.factSize; weight: Theme.plain }
    }
}
