// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Theme

/** The scale along a picture's foot: at most five round numbers that never touch, the unit with the last. */
Item {
    id: root

    /** The scale's own stretch within the item, and the values at its ends. */
    required property real start
    required property real span
    required property real from
    required property real to
    property string unit: ""
    /** Numbers, or {at, text}; none: round ones are chosen. */
    property var ticks: []

    readonly property var chosen: root.choose()

    implicitHeight: Math.ceil(metrics.height) + Theme.apart + Theme.rule
    Accessible.ignored: true

    FontMetrics {
        id: metrics
        font { family: Theme.face; pixelSize: Theme.note; weight: Theme.plain }
    }
    Rectangle {
        x: root.start
        width: root.span
        height: Theme.rule
        color: Theme.role.ink
    }
    Pool {
        list: root.chosen
        Item {
            id: tick
            required property int index
            readonly property var of: root.chosen[tick.index] ?? {x: 0, label: 0, text: ""}
            x: tick.of.x
            objectName: "tick"
            visible: tick.index < root.chosen.length
            Rectangle {
                width: Theme.hair
                height: Theme.tickSmall
                color: Theme.role.ink
            }
            Words {
                x: tick.of.label - tick.x
                y: Theme.apart
                objectName: "tickText"
                text: tick.of.text
                size: Theme.note
                quiet: true
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }

    function xOf(value: real): real {
        return root.to > root.from ? Math.round(root.start + root.span * (value - root.from) / (root.to - root.from)) : root.start
    }
    function choose(): var {
        const given = Ruling.list(root.ticks).map(tick => typeof tick === "number" ? {at: tick, text: Ruling.written(tick)} : tick)
            .filter(tick => Number.isFinite(tick?.at) && tick.at >= root.from && tick.at <= root.to)
        let made = []
        for (let most = 5; most >= 1; --most) {
            const every = Math.ceil(given.length / most)
            made = root.put(given.length > 0 ? given.filter((tick, i) => (given.length - 1 - i) % every === 0)
                                             : Ruling.ticks(root.from, root.to, most).map(at => ({at: at, text: Ruling.written(at)})))
            if (root.fits(made))
                return made
        }
        return made
    }
    function put(list: var): var {
        return list.map((tick, i) => {
            const text = i === list.length - 1 && root.unit !== "" ? tick.text + " " + root.unit : tick.text
            const x = root.xOf(tick.at), number = Ruling.wide(metrics.height, metrics, tick.text), wide = Ruling.wide(metrics.height, metrics, text)
            // the number stands under its tick, the unit hangs on behind
            return {at: tick.at, x: x, text: text, wide: wide, number: number, label: Math.round(Ruling.within(x - number / 2, 0, Math.max(0, root.width - wide)))}
        })
    }
    function fits(list: var): bool {
        const widest = list.reduce((most, tick) => Math.max(most, tick.number), 0)
        return list.length * widest <= 0.9 * Math.max(root.span, widest)
            && list.every((tick, i) => i === 0 || list[i - 1].label + list[i - 1].wide + Theme.apart <= tick.label)
    }
}
