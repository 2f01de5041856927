// SPDX-License-Identifier: GPL-3.0-or-later
pragma Singleton
import QtQuick
import Steelyard.Theme

/** Remembers where and when the last tap counted, so that a bouncing finger counts once, even when the page below it has changed. */
QtObject {
    id: root

    property real at: 0
    property rect place: Qt.rect(0, 0, 0, 0)

    /** True, and remembered, unless the last tap was at this place a moment ago. */
    function admits(item: Item): bool {
        const now = Date.now()
        const here = item.mapToItem(null, 0, 0, item.width, item.height)
        const since = now - root.at
        if (since >= 0 && since < Theme.tapQuiet && root.overlap(here, root.place))
            return false
        root.at = now
        root.place = here
        return true
    }
    function forget() {
        root.at = 0
    }
    function overlap(a: rect, b: rect): bool {
        return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height
    }
}
