// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Theme

/** The line being read, a dot where it meets the curve, and what it says above the finger. */
Item {
    id: root

    /** y of the line is this item's; x of the dot (NaN: none) and of the finger (NaN: at the dot). */
    property real dot: NaN
    property real finger: NaN
    property real end: root.width
    /** Between these x stand the heights of the marks, which neither line nor words cover. */
    property real gapFrom: 0
    property real gapTo: 0
    /** How far up from the line the words may reach. */
    property real room: 0
    property string text: ""
    /** How high the words begin. */
    readonly property alias saidY: said.y

    Accessible.ignored: true

    Rectangle {
        y: -Math.floor(height / 2)
        width: root.gapFrom
        height: Theme.rule
        color: Theme.role.accent
    }
    Rectangle {
        x: root.gapTo
        y: -Math.floor(height / 2)
        width: root.end - root.gapTo
        height: Theme.rule
        color: Theme.role.accent
    }
    Rectangle {
        x: Math.round(root.dot) - Theme.marker / 2
        y: -Theme.marker / 2
        width: Theme.marker
        height: Theme.marker
        visible: Number.isFinite(root.dot)
        objectName: "readingDot"
        color: Theme.role.paper
        radius: Theme.marker / 2
        border { width: Theme.ring; color: Theme.role.accent }
    }
    Rectangle {
        x: said.x - Theme.line - Theme.rule
        y: said.y
        width: said.width + 2 * (Theme.line + Theme.rule)
        height: said.height
        visible: root.text !== ""
        color: Theme.role.accent
        radius: Theme.corner
    }
    Words {
        id: said
        x: Math.round(Ruling.within(Ruling.number(root.finger, Ruling.number(root.dot, root.end / 2)) - width / 2, root.gapTo + Theme.apart, Math.max(root.gapTo + Theme.apart, root.end - width - Theme.apart)))
        y: Math.max(-root.room, -height - (Number.isFinite(root.finger) ? Theme.safeApart : Theme.apart))
        width: Math.min(implicitWidth, Math.max(0, root.end - root.gapTo - 2 * Theme.apart))
        visible: text !== ""
        objectName: "readingText"
        // in two lines the height stands over the pull
        text: root.text.split(": ").map(part => part.split(" ").join("\u00a0")).join(": ")
        size: Theme.note
        strong: true
        color: Theme.role.accentText
        Accessible.ignored: true
    }
}
