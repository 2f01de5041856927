// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Theme

/** Keys side by side at one width and height; below each other when their words do not fit. */
Item {
    id: root

    default property alias keys: grid.data
    property int gap: Theme.apart
    readonly property var shown: root.visibleKeys()
    readonly property int count: Math.max(1, root.shown.length)
    readonly property real need: root.shown.reduce((most, key) => Math.max(most, key.implicitWidth), 0)
    readonly property real tallest: root.shown.reduce((most, key) => Math.max(most, key.implicitHeight), 0)
    readonly property real cell: Math.floor((root.width - (root.count - 1) * root.gap) / root.count)
    readonly property bool beside: root.need <= root.cell

    implicitWidth: Theme.touchMain
    implicitHeight: grid.height

    Grid {
        id: grid
        width: root.width
        columns: root.beside ? root.count : 1
        spacing: root.gap
        onChildrenChanged: root.adopt()
    }

    function visibleKeys(): var {
        const list = []
        for (let i = 0; i < grid.children.length; ++i)
            if (grid.children[i].least !== undefined && grid.children[i].visible)
                list.push(grid.children[i])
        return list
    }
    function adopt() {
        for (let i = 0; i < grid.children.length; ++i) {
            const key = grid.children[i]
            if (key.least === undefined)
                continue
            key.width = Qt.binding(() => root.beside ? root.cell : root.width)
            key.height = Qt.binding(() => root.beside ? root.tallest : key.implicitHeight)
        }
    }
}
