// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Charts
import Steelyard.Theme

Item {
    id: top

    width: 1280
    height: 2000

    Component { id: picture; HeightPicture { curve: null; marks: []; sentence: "" } }

    CurveCase {
        name: "PictureWords"

        function make(properties) {
            const made = createTemporaryObject(picture, top, Object.assign({width: 328, sentence: "x", plates: usualPlates, items: usualItems}, properties))
            made.height = Qt.binding(() => made.implicitHeight)
            wait(1)
            return made
        }
        /** A picture of any lift, with marks as close and words as wide as they come. */
        function any(index) {
            sow(index)
            const bottom = pick([0.22, 0.45, 0.82, 1.1, 1.5]), climb = pick([0.04, 0.12, 0.3, 0.6, 0.9]), lift = {iron: next(0, 260), from: bottom, to: bottom + climb,
                chain: pick([0, 0, 6, 60]), band: pick([0, 20, 90, -40]), n: pick([2, 20, 200])}
            if (next(0, 1) > 0.7)
                lift.unknownAbove = bottom + climb * next(0.2, 0.95)
            const line = curve(lift), list = marks(line, bottom, bottom + climb)
            const say = pick([text => text, text => text + "0±120", text => "about " + text, () => "not known"])
            const names = pick([["bottom", "sticking zone", "top"], ["Unten", "Haltepunktbereich", "Oben"], ["abajo", "zona de estancamiento", "arriba"]])
            list.forEach((mark, i) => {
                mark.text = say(mark.text)
                mark.name = names[i]
            })
            return {curve: line, marks: list.filter(() => next(0, 1) > 0.15), unitText: pick(["kg", "lb"]), withSketch: next(0, 1) > 0.3, reading: next(0, 1) > 0.3,
                ironName: pick(["iron", "Scheibengewichte"]), chainName: pick(["chain", "cadenas"]), bandName: pick(["band", "help", "Gummibänder"])}
        }
        function test_wordsKeepClear_data() {
            return Array.from({length: 40}, (_, i) => ({tag: "picture " + i, index: i}))
        }
        function test_wordsKeepClear(row) {
            const item = make(any(row.index))
            atEveryTextSize(tag => {
                item.width = Theme.wide ? pick([432, 620]) : 328
                wait(1)
                const at = row.tag + ", " + tag + ", width " + item.width
                clean(item, at)
                theSharesLinesKeepClear(item, at)
                for (const readOut of named(item, "readOut").map(part => box(part, item)))
                    verify(item.frame.inRows ? readOut.y >= item.frame.floorY : readOut.x >= item.frame.plot.right, at + ": a read-out on the plot")
                for (const line of named(item, "shareLine")) {
                    const b = box(line, item)
                    verify(b.y >= -1 && b.bottom <= item.frame.floorY, at + ": a share's line leaves the plot")
                }
            })
        }
        /** No line from a share to its name runs through another's name. */
        function theSharesLinesKeepClear(item, at) {
            const names = named(item, "shareName").map(name => box(name, item))
            for (const line of named(item, "shareLine").map(part => box(part, item)))
                for (const name of names)
                    verify(!overlap(Qt.rect(line.x - 0.5, line.y, 1.5, line.height), name), at + ": line " + line + " through " + name)
        }
        /** Closest marks, widest words, on the narrowest page: the read-outs stand in the order of their heights. */
        function test_readOutsKeepTheirOrder() {
            const line = curve({from: 1.2, to: 1.22}), list = marks(line, 1.2, 1.22), item = make({curve: line, marks: list})
            atEveryTextSize(tag => {
                const tops = named(item, "readOut").map(part => box(part, item).y)
                compare(tops.length, 3)
                verify(tops[0] < tops[1] && tops[1] < tops[2], tag)
            })
        }
        function test_absurd_data() {
            const line = curve({})
            return [{tag: "no curve", curve: undefined, marks: undefined}, {tag: "empty", curve: {}, marks: []}, {tag: "null", curve: null, marks: [null, {}, {height: NaN}]},
                {tag: "one point", curve: curve({n: 1}), marks: marks(line, 0.82, 1.4)}, {tag: "marks without a curve", curve: {}, marks: marks(line, 0.82, 1.4)},
                {tag: "no numbers", curve: {total: [Qt.point(NaN, 1), Qt.point(50, NaN), Qt.point(Infinity, 1.2)], iron: [Qt.point(NaN, NaN)], heightTo: NaN, pullTo: -Infinity}, marks: []},
                {tag: "all in one height", curve: curve({from: 1, to: 1}), marks: marks(line, 1, 1)}, {tag: "nothing hangs", curve: curve({iron: 0, chain: 0, band: 0}), marks: []},
                {tag: "below the floor", curve: curve({from: -0.5, to: -0.1}), marks: []}, {tag: "very high", curve: curve({from: 50, to: 900}), marks: []},
                {tag: "very heavy", curve: curve({iron: 1e7}), marks: []}, {tag: "upside down", curve: {total: line.total.slice().reverse(), iron: line.iron.slice().reverse()}, marks: []},
                {tag: "lists of unlike length", curve: Object.assign({}, line, {chain: line.chain.slice(0, 7), band: line.band.slice(3), zero: []}), marks: []},
                {tag: "unknown everywhere", curve: Object.assign({}, line, {unknownAbove: -1}), marks: []}, {tag: "zone upside down", curve: line, marks: [{height: 1, name: "zone", text: "x", zoneFrom: 1.2, zoneTo: 0.9}]}]
        }
        function test_absurd(row) {
            const item = make({curve: row.curve, marks: row.marks})
            for (const [wide, high] of [[0, 0], [1, 1], [60, 40], [328, 330], [900, 200]]) {
                item.width = wide
                item.height = high
                item.readHeight = wide > 100 ? 1.1 : NaN
                wait(1)
                verify(item.frame.plot.width >= 0 && item.frame.plot.height >= 0 && item.frame.perMetre > 0)
                for (const dot of named(item, "dot"))
                    verify(Number.isFinite(dot.x) && Number.isFinite(dot.y))
            }
            verify(Number.isFinite(item.implicitHeight))
            verify(!grabImage(item).isNull)
        }
    }
}
