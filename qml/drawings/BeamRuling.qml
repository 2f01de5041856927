// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Theme

/** Works out where everything on the beam stands: the window of loads around the value, its graduations and their numbers. */
QtObject {
    id: root

    required property var loads
    required property var labelOf
    required property real value
    required property real last
    required property real width
    required property real poiseHalf
    /** Room for what is said about last time, and whether that has a row of its own. */
    required property real sayWidth
    required property bool sayBelow
    required property FontMetrics metrics

    readonly property bool hasLast: Number.isFinite(root.last)
    /** The loads from the least up, each once, and the number that each wants. */
    readonly property var all: root.ascending()
    readonly property var wants: root.want()
    readonly property var ruled: root.rule()

    function ascending(): var {
        const all = Ruling.list(root.loads).filter(load => Number.isFinite(load))
        for (let i = 1; i < all.length; ++i)
            if (all[i] <= all[i - 1])
                return Array.from(new Set(all)).sort((a, b) => a - b)
        return all
    }
    function want(): var {
        const all = Ruling.list(root.loads), texts = Ruling.list(root.labelOf), found = new Map()
        for (let i = all.length - 1; i >= 0; --i)
            found.set(all[i], texts[i])
        return root.all.map(load => found.get(load))
    }
    /** The usual step around the load: the middle one of its dozen neighbours. */
    function usualStep(all: var, at: real): real {
        let from = all.findIndex(load => load >= at)
        if (from < 0)
            from = all.length
        let to = from
        while (to - from < 13 && (from > 0 || to < all.length))
            if (from > 0 && (to === all.length || at - all[from - 1] <= all[to] - at))
                --from
            else
                ++to
        const near = all.slice(from, to)
        const steps = near.slice(1).map((load, i) => load - near[i]).sort((a, b) => a - b)
        return steps.length > 0 ? steps[Math.floor((steps.length - 1) / 2)] : Math.max(1, Math.abs(at) / 20)
    }
    /** Everything that hangs on the window of loads around the value. */
    function rule(): var {
        const all = root.all, at = Ruling.number(root.value, Ruling.number(root.last, all.length > 0 ? all[Math.floor(all.length / 2)] : 0))
        const step = root.usualStep(all, at), room = Math.max(1, root.width - 2 * Theme.inset)
        const steps = Ruling.within(Math.round(room / ((Theme.wide ? 5 : 3.5) * Theme.apart)), 4, 40)
        const reach = root.hasLast ? Math.min(2.4 * Math.abs(root.last - at), 3.5 * steps * step) : 0
        const span = Math.max(steps * step, reach)
        let made = null
        for (const from of root.starts(all, at, step, span)) {
            // the first window does, unless it leaves the sentence no room and another has it
            if (made && (root.sayBelow || made.say >= 0))
                break
            const tried = root.look(all, at, step, from, span, room)
            if (!made || tried.say >= 0)
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
        const place = kg => Math.round(Theme.inset + room * (kg - from) / span)
        const seen = []
        for (let i = 0; i < all.length; ++i)
            if (all[i] >= from - 1e-9 && all[i] <= from + span + 1e-9)
                seen.push(i)
        const value = place(at)
        const lastSide = !root.hasLast ? 0 : root.last < from - 1e-9 ? -1 : root.last > from + span + 1e-9 ? 1 : 0
        const last = !root.hasLast ? value : lastSide < 0 ? Theme.inset / 2 : lastSide > 0 ? root.width - Theme.inset / 2 : place(root.last)
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
        const marks = seen.map(i => ({load: root.all[i], x: place(root.all[i]), want: String(root.wants[i] ?? Ruling.written(root.all[i])), text: "", labelX: 0}))
        for (const round of [0, 0.25, 0.5, 1, 2.5, 5, 10, 20, 50, 100]) {
            const due = marks.filter(mark => mark.want !== "" && (round === 0 || root.isRound(mark, round)))
            const placed = []
            for (const mark of due) {
                const wide = Ruling.wide(root.metrics.height, root.metrics, mark.want)
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
