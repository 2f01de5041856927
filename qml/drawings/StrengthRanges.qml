// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** Ranges of a maximum by day, drawn to scale both ways: time to the right, load up. Days under other conditions are parted by a dashed line, and nothing joins any two. */
Item {
    id: root

    /** The earliest first: {at (days), low, middle, high, tested, breaks, day}; what has no range is left out. */
    required property var days
    required property string unit
    required property string sentence

    readonly property var known: Ruling.list(root.days).filter(one => [one?.at, one?.low, one?.middle, one?.high].every(x => Number.isFinite(x)))
    readonly property real lowest: Math.min(...root.known.map(one => one.low), Infinity)
    readonly property real highest: Math.max(...root.known.map(one => one.high), -Infinity)
    readonly property real spare: root.known.length > 0 ? Math.max(0.1 * (root.highest - root.lowest), 0.02 * Math.abs(root.highest), 1) : 1
    readonly property real from: root.known.length > 0 ? root.lowest - root.spare : 0
    readonly property real to: root.known.length > 0 ? root.highest + root.spare : 1
    readonly property real first: root.known.length > 0 ? root.known[0].at : 0
    readonly property real span: root.known.length > 1 ? root.known[root.known.length - 1].at - root.first : 0
    readonly property var stops: Ruling.ticks(root.from, root.to, Math.max(2, Math.min(5, Math.floor(root.foot / (2 * Math.max(1, notes.height))))))
    readonly property real side: Math.max(Ruling.wide(notes.height, notes, root.unit), ...root.stops.map(stop => Ruling.wide(notes.height, notes, Ruling.written(stop)))) + Theme.tickSmall + Theme.apart
    readonly property real foot: root.height - notes.height - Theme.apart
    readonly property real head: 1.5 * notes.height + Theme.line
    readonly property real inner: Math.max(1, root.width - root.side - 2 * Theme.indent)
    /** Days so near that their bars would cover each other stand beside each other. */
    readonly property var places: Ruling.apart(root.known.map(one => root.xOf(one.at)), root.known.map(() => Theme.marker), Theme.line, root.side + Theme.line, root.width)
    readonly property string firstDay: root.known.length > 0 ? String(root.known[0].day ?? "") : ""
    readonly property string lastDay: root.known.length > 1 ? String(root.known[root.known.length - 1].day ?? "") : ""

    implicitWidth: 40 * Theme.apart
    implicitHeight: Theme.pictureHeight
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    FontMetrics {
        id: notes
        font { family: Theme.face; pixelSize: Theme.note; weight: Theme.plain }
    }
    Words {
        x: root.side - width - Theme.tickSmall - Theme.line
        text: root.unit
        size: Theme.note
        quiet: true
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
    Rectangle {
        x: root.side
        y: root.head
        width: Theme.hair
        height: root.foot - root.head
        color: Theme.role.ink
    }
    Rectangle {
        x: root.side
        y: root.foot
        width: root.width - x
        height: Theme.hair
        color: Theme.role.ink
    }
    Repeater {
        model: root.stops
        Item {
            id: stop
            required property real modelData
            y: root.yOf(stop.modelData)
            objectName: "stop"
            Rectangle {
                x: root.side - width
                width: Theme.tickSmall
                height: Theme.hair
                color: Theme.role.ink
            }
            Words {
                x: root.side - width - Theme.tickSmall - Theme.line
                y: -Math.round(height / 2)
                text: Ruling.written(stop.modelData)
                size: Theme.note
                quiet: true
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }
    Repeater {
        model: root.known
        Item {
            id: one
            required property int index
            required property var modelData
            readonly property real middle: root.yOf(one.modelData.middle)
            x: Math.round(root.places[one.index])
            objectName: "range:" + one.index
            Column {
                x: one.index > 0 ? Math.round((root.places[one.index - 1] - root.places[one.index]) / 2) : 0
                y: root.head
                objectName: "break:" + one.index
                visible: one.modelData.breaks === true && one.index > 0
                spacing: Theme.line
                Repeater {
                    model: one.modelData.breaks === true ? Math.floor((root.foot - root.head) / (Theme.apart + Theme.line)) : 0
                    Rectangle {
                        width: Theme.hair
                        height: Theme.apart
                        color: Theme.role.inkSoft
                    }
                }
            }
            Rectangle {
                x: -Math.round(width / 2)
                y: root.yOf(one.modelData.high)
                width: Theme.marker / 2
                height: Math.max(Theme.rule, root.yOf(one.modelData.low) - y)
                objectName: "bar"
                color: Theme.role.accent
            }
            Rectangle {
                x: -Math.round(width / 2)
                y: one.middle - Math.round(height / 2)
                width: one.modelData.tested === true ? Theme.marker : Theme.marker + Theme.apart
                height: one.modelData.tested === true ? Theme.marker : Theme.rule
                radius: one.modelData.tested === true ? width / 2 : 0
                objectName: "middle"
                color: Theme.role.ink
            }
        }
    }
    Words {
        id: left
        x: root.side
        y: root.foot + Theme.line
        text: root.firstDay
        size: Theme.note
        quiet: true
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
    Words {
        x: root.width - width
        y: left.y
        visible: text !== "" && x > left.x + left.width + Theme.apart
        text: root.lastDay
        size: Theme.note
        quiet: true
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }

    function yOf(load: real): real {
        return Math.round(root.foot - (load - root.from) / (root.to - root.from) * (root.foot - root.head))
    }
    /** A single day stands in the middle. */
    function xOf(at: real): real {
        return Math.round(root.side + Theme.indent + (root.span > 0 ? (at - root.first) / root.span : 0.5) * root.inner)
    }
}
