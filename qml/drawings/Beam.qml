// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Steelyard.Controls
import Steelyard.Theme

/** The beam: one graduation for each load this kit can make; the poise hangs at the load, last time is an open mark. Reads only. */
Item {
    id: root

    /** Ascending, in kg: what this kit can make. Where one is missing the beam is thin. */
    required property var loads
    required property real value
    property real last: NaN
    property string valueText: ""
    property string lastText: ""
    /** Parallel to `loads`; an empty text wants no number. */
    property var labelOf: []
    property string sentence: root.valueText === "" || root.lastText === "" ? root.valueText + root.lastText : root.valueText + ", " + root.lastText

    readonly property real poiseHalf: Math.round(0.64 * Theme.marker)
    readonly property real poiseDeep: 2 * Theme.marker
    readonly property real margin: Theme.inset
    readonly property real beamY: Math.ceil(metrics.height) + Theme.tick
    readonly property bool hasLast: Number.isFinite(root.last)
    readonly property real sayWidth: root.hasLast && root.lastText !== "" ? Ruling.wide(metrics.height, metrics, root.lastText) + Theme.rule : 0
    // a long sentence gets its own row, whatever the load, so that nothing below jumps while stepping
    readonly property bool sayBelow: root.sayWidth > root.width / 2 - 3 * Theme.marker
    readonly property var ruled: root.rule()

    implicitWidth: 40 * Theme.apart
    implicitHeight: root.beamY + Theme.ring + (root.sayBelow ? root.poiseDeep + say.height : Math.max(root.poiseDeep, root.sayWidth > 0 ? Math.ceil(metrics.height) + Theme.rule : 0))

    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    FontMetrics {
        id: metrics
        font { family: Theme.face; pixelSize: Theme.note; weight: Theme.plain }
    }
    Repeater {
        model: root.ruled.pieces
        Rectangle {
            required property var modelData
            x: modelData.from
            y: root.beamY
            width: modelData.to - modelData.from
            height: modelData.gap ? Theme.hair : Theme.ring
            objectName: modelData.gap ? "gap" : "piece"
            color: Theme.role.ink
        }
    }
    Repeater {
        model: root.ruled.marks
        Item {
            id: mark
            required property var modelData
            x: mark.modelData.x
            objectName: "graduation"
            Rectangle {
                x: -Math.floor(width / 2)
                y: root.beamY - height
                width: mark.modelData.text !== "" ? Theme.rule : Theme.hair
                height: mark.modelData.text !== "" ? Theme.tick : Theme.tickSmall
                color: Theme.role.ink
            }
            Words {
                x: Math.round(mark.modelData.labelX - width / 2)
                y: 0
                objectName: "label"
                visible: text !== ""
                text: mark.modelData.text
                size: Theme.note
                quiet: true
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }
    Shape {
        id: poise
        x: root.ruled.value
        y: root.beamY
        objectName: "poise"
        visible: Number.isFinite(root.value) && root.ruled.inside
        ShapePath {
            fillColor: Theme.role.accent
            strokeColor: "transparent"
            PathPolyline { path: root.poiseShape() }
        }
    }
    Shape {
        id: lastMark
        x: root.ruled.last
        y: root.beamY + (root.ruled.lastAbove ? 0 : Theme.ring + Theme.rule)
        objectName: "last"
        visible: root.hasLast && !root.ruled.lastHidden
        rotation: root.ruled.lastAbove ? 180 : root.ruled.lastSide * 90
        transformOrigin: Item.TopLeft
        ShapePath {
            fillColor: Theme.role.paper
            strokeColor: Theme.role.ink
            strokeWidth: Theme.rule
            PathPolyline { path: root.triangle() }
        }
    }
    Words {
        id: say
        x: root.sayBelow ? Math.round(Ruling.within(root.ruled.last - width / 2, 0, root.width - width)) : root.ruled.say
        y: root.sayBelow ? root.beamY + Theme.ring + root.poiseDeep : root.beamY + Theme.ring + Theme.hair
        width: Math.min(root.width, root.sayWidth)
        objectName: "say"
        visible: root.hasLast && text !== ""
        text: root.lastText
        size: Theme.note
        quiet: true
        Accessible.ignored: true
    }

    function poiseShape(): var {
        const half = root.poiseHalf, deep = root.poiseDeep, stem = Theme.rule
        return [Qt.point(-stem, -Theme.tick), Qt.point(stem, -Theme.tick), Qt.point(stem, 0.3 * deep), Qt.point(half, 0.5 * deep),
                Qt.point(half, deep), Qt.point(-half, deep), Qt.point(-half, 0.5 * deep), Qt.point(-stem, 0.3 * deep), Qt.point(-stem, -Theme.tick)]
    }
    function triangle(): var {
        const half = Theme.marker / 2, deep = 0.8 * Theme.marker
        return [Qt.point(0, 0), Qt.point(half, deep), Qt.point(-half, deep), Qt.point(0, 0)]
    }
    /** The usual step around the load: the middle one of its dozen neighbours. */
    function usualStep(all: var, at: real): real {
        const near = all.slice().sort((a, b) => Math.abs(a - at) - Math.abs(b - at)).slice(0, 13).sort((a, b) => a - b)
        const steps = near.slice(1).map((load, i) => load - near[i]).sort((a, b) => a - b)
        return steps.length > 0 ? steps[Math.floor((steps.length - 1) / 2)] : Math.max(1, Math.abs(at) / 20)
    }
    /** Everything that hangs on the window of loads around the value. */
    function rule(): var {
        const all = Array.from(new Set(Ruling.list(root.loads).filter(load => Number.isFinite(load)))).sort((a, b) => a - b)
        const at = Ruling.number(root.value, Ruling.number(root.last, all.length > 0 ? all[Math.floor(all.length / 2)] : 0))
        const step = root.usualStep(all, at), room = Math.max(1, root.width - 2 * root.margin)
        const steps = Ruling.within(Math.round(room / ((Theme.wide ? 5 : 3.5) * Theme.apart)), 4, 40)
        const reach = root.hasLast ? Math.min(2.4 * Math.abs(root.last - at), 3.5 * steps * step) : 0
        const span = Math.max(steps * step, reach)
        let made = null
        for (const from of root.starts(all, at, step, span)) {
            const tried = root.look(all, at, step, from, span, room)
            if (!made || (!root.sayBelow && made.say < 0 && tried.say >= 0))
                made = tried
        }
        return made
    }
    /** Where the window may start, best first: steady while stepping and full of loads, steady, or the load in its middle. */
    function starts(all: var, at: real, step: real, span: real): var {
        const first = all.length > 0 ? all[0] : at, end = all.length > 0 ? all[all.length - 1] : at
        const steady = first + Math.round((at - first) / (2 * step)) * 2 * step - span / 2
        const full = Math.max(Math.min(at, first) - step / 2, Math.min(steady, Math.max(at, end) + step / 2 - span))
        return [full, steady, at - span / 2]
    }
    function look(all: var, at: real, step: real, from: real, span: real, room: real): var {
        const place = kg => Math.round(root.margin + room * (kg - from) / span)
        const seen = all.filter(load => load >= from - 1e-9 && load <= from + span + 1e-9)
        const value = place(at)
        const lastSide = !root.hasLast ? 0 : root.last < from - 1e-9 ? -1 : root.last > from + span + 1e-9 ? 1 : 0
        const last = !root.hasLast ? value : lastSide < 0 ? root.margin / 2 : lastSide > 0 ? root.width - root.margin / 2 : place(root.last)
        const near = Math.abs(last - value)
        return {value: value, last: last, lastSide: lastSide, inside: Number.isFinite(value),
            lastHidden: near < Theme.rule, lastAbove: lastSide === 0 && near >= Theme.rule && near < root.poiseHalf + Theme.marker / 2,
            say: root.sayPlace(value, last), marks: root.labelled(seen, place), pieces: root.pieces(all, from, span, step, place)}
    }
    /** Beside last time's mark, or beyond the poise; −1 when there is no room. */
    function sayPlace(value: real, last: real): real {
        const half = root.poiseHalf + Theme.apart, mark = Theme.marker / 2 + Theme.apart, wide = root.sayWidth
        const spots = [last - mark - wide, last + mark, Math.max(value + half, last + mark), Math.min(value - half, last - mark) - wide]
        const free = x => x >= 0 && x + wide <= root.width && (x >= value + half || x + wide <= value - half)
        return Math.round(spots.find(free) ?? -1)
    }
    function pieces(all: var, from: real, span: real, step: real, place: var): var {
        const made = [], edge = kg => Ruling.within(place(kg), 0, root.width)
        for (let i = 1; i < all.length; ++i)
            if (all[i] > from && all[i - 1] < from + span) {
                const gap = all[i] - all[i - 1] > 1.5 * step, before = made[made.length - 1]
                if (before && before.gap === gap && !gap)
                    before.to = edge(all[i])
                else
                    made.push({from: edge(all[i - 1]), to: edge(all[i]), gap: gap})
            }
        return made
    }
    /** Numbers on the finest round set that fits whole; of the coarsest as many as fit. */
    function labelled(seen: var, place: var): var {
        const all = Ruling.list(root.loads), texts = Ruling.list(root.labelOf)
        const marks = seen.map(load => ({load: load, x: place(load), want: String(texts[all.indexOf(load)] ?? Ruling.written(load)), text: "", labelX: 0}))
        for (const round of [0, 0.25, 0.5, 1, 2.5, 5, 10, 20, 50, 100]) {
            const due = marks.filter(mark => mark.want !== "" && (round === 0 || root.isRound(mark, round)))
            const placed = []
            for (const mark of due) {
                const wide = Ruling.wide(metrics.height, metrics, mark.want)
                const x = Ruling.within(mark.x, wide / 2, Math.max(wide / 2, root.width - wide / 2))
                if (placed.every(other => Math.abs(other.x - x) >= (other.wide + wide) / 2 + Theme.apart))
                    placed.push({mark: mark, x: x, wide: wide})
            }
            // a coarser set that would leave a single number is worth less than a few of the finer
            if (round > 0 && due.length < 2)
                break
            for (const mark of marks)
                mark.text = ""
            for (const label of placed) {
                label.mark.text = label.mark.want
                label.mark.labelX = label.x - label.mark.x
            }
            if (placed.length === due.length)
                break
        }
        return marks
    }
    function isRound(mark: var, round: real): bool {
        const shown = Number(String(mark.want).replace(",", ".")), number = Number.isFinite(shown) ? shown : mark.load
        return Math.abs(number / round - Math.round(number / round)) < 1e-6
    }
}
