// SPDX-License-Identifier: GPL-3.0-or-later
pragma Singleton
import QtQuick

/** What every drawing needs to rule a page: words set apart, round divisions of a scale, numbers that may be missing. */
QtObject {
    id: root

    /** `x` when it is a number, else `otherwise`. */
    function number(x: var, otherwise: real): real {
        return typeof x === "number" && Number.isFinite(x) ? x : otherwise
    }
    /** `x` when it is a number above zero, else `otherwise`. */
    function size(x: var, otherwise: real): real {
        return typeof x === "number" && Number.isFinite(x) && x > 0 ? x : otherwise
    }
    function list(x: var): var {
        return x && x.length > 0 ? Array.from(x) : []
    }
    function within(x: real, from: real, to: real): real {
        return Math.max(from, Math.min(to, x))
    }
    /**
     * Centres as near as can be to those wanted (ascending), in the same order, with `gap` between neighbours of these sizes and all
     * between `from` and `to`. When they cannot all fit they start at `from` and run past `to`.
     */
    function apart(wanted: var, sizes: var, gap: real, from: real, to: real): var {
        const n = wanted.length, shift = [0], pools = []
        for (let i = 1; i < n; ++i)
            shift.push(shift[i - 1] + (sizes[i - 1] + sizes[i]) / 2 + gap)
        // neighbours that would overlap move as one block, to the mean of what they want
        for (let i = 0; i < n; ++i) {
            let pool = {sum: wanted[i] - shift[i], count: 1}
            while (pools.length > 0 && pools[pools.length - 1].sum / pools[pools.length - 1].count > pool.sum / pool.count) {
                const before = pools.pop()
                pool = {sum: pool.sum + before.sum, count: pool.count + before.count}
            }
            pools.push(pool)
        }
        if (n === 0)
            return []
        const least = from + sizes[0] / 2, most = to - sizes[n - 1] / 2 - shift[n - 1], places = []
        for (const pool of pools)
            for (let k = 0; k < pool.count; ++k)
                places.push(Math.max(least, Math.min(most, pool.sum / pool.count)) + shift[places.length])
        return places
    }
    /** Round values from `from` to `to`, at most `most` of them, as many as there can be. */
    function ticks(from: real, to: real, most: int): var {
        const span = to - from
        if (!(span > 0) || !Number.isFinite(span) || most < 1)
            return []
        for (let power = Math.floor(Math.log10(span)) - 1; ; ++power)
            for (const digit of [1, 2, 2.5, 5]) {
                const step = digit * Math.pow(10, power)
                const first = Math.ceil(from / step - 1e-9), end = Math.floor(to / step + 1e-9)
                if (end - first < most)
                    return Array.from({length: Math.max(0, end - first + 1)}, (_, i) => Number(((first + i) * step).toPrecision(12)))
            }
    }
    /** A number of a scale as the reader's language writes it, with as many decimals as it has, three at most. */
    function written(x: real): string {
        let decimals = 0
        while (decimals < 3 && Math.abs(x * Math.pow(10, decimals) - Math.round(x * Math.pow(10, decimals))) > 1e-6)
            ++decimals
        return x.toLocaleString(Qt.locale(), "f", decimals)
    }
    /** `ready` ties the width to the font: advanceWidth() alone does not tell when the font changes. */
    function wide(ready: real, metrics: FontMetrics, text: string): real {
        return ready > 0 ? Math.ceil(metrics.advanceWidth(text)) : 0
    }
}
