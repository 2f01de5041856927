// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Drawings
import Steelyard.Theme

/** Shares a picture's room out between the side elevation, the plot and the words. */
QtObject {
    id: root

    required property PictureFacts facts
    required property real width
    required property real height
    /** What the parts around the plot need. */
    required property real footDeep
    required property real gutter
    required property real columnWide
    required property real rowsDeep
    required property real namesWide
    required property real longestName
    required property real nameLine
    required property real readDeep
    required property real sketchReach

    readonly property var made: root.share(root.height)
    readonly property rect plot: root.made.plot
    readonly property real floorY: root.made.floorY
    readonly property real perMetre: root.made.perMetre
    readonly property real sketch: root.made.sketch
    readonly property bool inRows: root.made.inRows
    readonly property bool namesAbove: root.made.namesAbove
    readonly property int nameRows: root.made.nameRows
    /** The plot's part of the chart: of the picture without the rows of read-outs below it. */
    readonly property real part: root.made.part
    readonly property real sketchMost: 0.36 * root.width
    readonly property real least: Theme.textFactor < 1.5 ? 0.25 : 0.45
    /** The largest text takes much of the width for its numbers: the plot gets its share by height. */
    readonly property real most: (Theme.textFactor < 1.5 ? 2 : 3) * Theme.pictureHeight
    /** The height at which all of it is easy to read. */
    readonly property real wants: root.want()

    function share(height: real): var {
        const beside = root.fit(height, false, true)
        if (root.readable(beside))
            return beside
        const below = root.fit(height, true, true)
        // a drawing to scale beside a plot too narrow to read serves nobody
        return root.readable(below) || root.sketchReach === 0 ? below : root.fit(height, true, false)
    }
    function readable(made: var): bool {
        return made.part >= root.least && made.plot.width >= Math.max(12 * Theme.apart, made.inRows ? 0 : root.longestName + Theme.apart)
    }
    function fit(height: real, inRows: bool, sketched: bool): var {
        const floorY = Math.max(1, height - root.footDeep - (inRows ? root.rowsDeep : 0)), facts = root.facts
        const right = inRows ? Theme.indent : root.columnWide + Theme.apart
        const plain = Math.max(0.01, Math.min((floorY - Theme.line) / facts.heightTo, (floorY - root.readDeep - Theme.line) / facts.topmost))
        // names stand below the curve where its shares can be seen and the floor leaves room, else above it
        const tightest = root.width - (sketched && root.sketchReach > 0 ? root.sketchMost : 0) - root.gutter - (inRows ? 0 : right) - Theme.line
        const oneRow = root.namesWide <= tightest, spare = root.longestName > tightest ? 1 : 0
        const room = Math.floor((facts.drawnFrom * plain - Theme.tick) / Math.max(1, root.nameLine)) - spare
        const namesAbove = root.namesWide > 0 && (facts.seenAbove || room < (oneRow ? 1 : 3)), nameRows = namesAbove ? (oneRow ? 1 : 3) : Math.min(3, Math.max(1, room))
        const above = Math.max(root.readDeep, namesAbove ? Theme.tick + (nameRows + spare) * root.nameLine : 0) + Theme.line
        const perMetre = Math.max(0.01, Math.min(plain, (floorY - above) / facts.topmost))
        const sketch = sketched ? Math.round(Math.min(root.sketchReach * perMetre, root.sketchMost)) : 0
        const x = Math.round(sketch + root.gutter)
        const wide = Math.max(1, Math.round(root.width - x - right)), top = Math.round(floorY - facts.heightTo * perMetre)
        return {plot: Qt.rect(x, top, wide, floorY - top), floorY: floorY, perMetre: perMetre, sketch: sketch, inRows: inRows,
            namesAbove: namesAbove, nameRows: nameRows, part: wide * (floorY - top) / Math.max(1, root.width * (floorY + root.footDeep))}
    }
    /** The chart as high as it must be to be read, and its rows of read-outs below it when they cannot stand beside it. */
    function want(): real {
        for (let chart = Theme.pictureHeight; chart < root.most; chart += Theme.apart) {
            if (root.readable(root.fit(chart, false, true)))
                return chart
            if (root.readable(root.fit(chart + root.rowsDeep, true, true)) || root.readable(root.fit(chart + root.rowsDeep, true, false)))
                return chart + root.rowsDeep
        }
        return root.most + root.rowsDeep
    }
}
