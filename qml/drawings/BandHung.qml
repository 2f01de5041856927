// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Shapes
import Steelyard.Theme

/** A band between its anchor and the bar: one strip, or two when doubled; hatched when taut, bowed when slack. */
Item {
    id: root

    required property real barHeight
    required property real perMetre
    required property real floorY
    /** {hang: "single" | "doubled", length (at rest), anchorHeight, above}, in metres. */
    required property var band
    property real room: 2 * Theme.indent

    readonly property bool doubled: root.band?.hang === "doubled"
    readonly property bool above: root.band?.above === true
    readonly property real anchor: Ruling.number(root.band?.anchorHeight, root.above ? root.barHeight : 0)
    readonly property real stretch: root.above ? root.anchor - root.barHeight : root.barHeight - root.anchor
    readonly property real rest: Ruling.number(root.band?.length, 0) / (root.doubled ? 2 : 1)
    readonly property bool taut: root.stretch > 0 && root.stretch >= root.rest
    readonly property real barY: Math.round(root.floorY - root.barHeight * root.perMetre)
    readonly property real anchorY: Math.round(root.floorY - root.anchor * root.perMetre)
    /** An anchor beyond the page: the band runs off its edge. */
    readonly property bool beyond: root.anchorY < 0
    readonly property real peg: Theme.indent + Theme.rule
    readonly property real half: Math.round(Math.min(Theme.line + Theme.hair, root.room / 5))

    Accessible.ignored: true

    Shape {
        objectName: "strip"
        ShapePath {
            strokeColor: Theme.role.ink
            strokeWidth: Theme.rule * 0.75
            fillColor: "transparent"
            PathSvg { path: root.taut ? root.strips() : root.bow() }
        }
    }
    Rectangle {
        x: -Math.round(width / 2)
        y: root.above ? root.anchorY - height : root.anchorY - height + Theme.hair
        width: root.peg
        height: Theme.line + Theme.rule
        objectName: "peg"
        visible: !root.beyond
        color: Theme.role.ink
    }
    Rectangle {
        x: -Math.floor(width / 2)
        y: root.above ? 0 : root.anchorY
        width: Theme.rule
        height: Math.max(0, root.above ? root.anchorY : root.floorY - root.anchorY)
        objectName: "post"
        visible: !root.beyond && root.anchor > 0
        color: Theme.role.ink
    }

    function strips(): string {
        const from = Math.max(0, Math.min(root.barY, root.anchorY)), to = Math.max(root.barY, root.anchorY)
        const places = root.doubled ? [-root.half - Theme.hair, root.half + Theme.hair] : [0]
        const wide = root.doubled ? root.half * 0.8 : root.half
        let path = ""
        for (const x of places) {
            path += `M ${x - wide} ${from} L ${x - wide} ${to} M ${x + wide} ${from} L ${x + wide} ${to} `
            for (let y = from + Theme.apart; y < to - wide; y += Theme.tickSmall)
                path += `M ${x - wide} ${y + wide} L ${x + wide} ${y - wide} `
        }
        return path
    }
    /** Slack: the band hangs out sideways by what it has too much. */
    function bow(): string {
        const gap = Math.max(0, root.stretch), spare = Math.max(0, root.rest - gap)
        const out = Math.min(root.room / 2, Math.sqrt(0.375 * Math.max(gap, 0.05) * spare) * root.perMetre)
        const from = root.barY, to = root.stretch > 0 ? Math.max(0, root.anchorY) : root.barY + (root.above ? -1 : 1) * Theme.indent, middle = (from + to) / 2
        let path = ""
        for (const side of root.doubled ? [-1.6, -1, 1, 1.6] : [-1, 1])
            path += `M ${side * root.half / 2} ${from} Q ${side * root.half / 2 + 2 * out} ${middle} ${side * root.half / 2} ${to} `
        return path
    }
}
