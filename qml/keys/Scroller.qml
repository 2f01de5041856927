// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Theme

/** What is taller than its room: scrolled by finger where it has to, by the page keys, and to whatever has the keyboard. */
Flickable {
    id: root

    /** Something is typed into: it stands in the upper third, clear of a keyboard on the glass, and the page may be pushed up for that. */
    property bool typing: false
    readonly property bool overflowing: root.contentHeight > root.height + Theme.line

    boundsBehavior: Flickable.StopAtBounds
    interactive: contentHeight > height
    bottomMargin: root.typing ? Math.round(0.75 * root.height) : 0
    onTypingChanged: {
        if (!root.typing)
            root.contentY = Math.max(0, Math.min(root.contentY, root.contentHeight - root.height))
    }

    function holds(item: Item): bool {
        for (let up = item; up; up = up.parent)
            if (up === root.contentItem)
                return true
        return false
    }
    function reveal(item: Item) {
        const top = item.mapToItem(root.contentItem, 0, 0).y - Theme.apart
        const bottom = top + item.height + 2 * Theme.apart
        if (top < root.contentY)
            root.contentY = Math.max(0, top)
        else if (root.typing)
            root.contentY = Math.max(root.contentY, bottom - Math.max(bottom - top, root.height / 4))
        else if (bottom > root.contentY + root.height)
            root.contentY = Math.min(Math.max(0, root.contentHeight - root.height), bottom - root.height)
    }
    function page(event: var) {
        const step = event.key === Qt.Key_PageDown ? root.height : event.key === Qt.Key_PageUp ? -root.height : 0
        event.accepted = step !== 0
        root.contentY = Math.max(0, Math.min(root.contentHeight - root.height, root.contentY + 0.8 * step))
    }
}
