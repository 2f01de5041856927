// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Drawings
import Steelyard.Theme

Item {
    id: top

    width: 1280
    height: 800

    Component { id: strip; PlateStrip { plates: [] } }

    DrawingCase {
        readonly property var usual: [{label: "25", diameterMm: 450, thicknessMm: 45}, {label: "5", diameterMm: 228, thicknessMm: 25}, {label: "1.25", diameterMm: 160, thicknessMm: 14}]

        name: "PlateStrip"

        function make(properties) {
            const made = createTemporaryObject(strip, top, Object.assign({width: 328}, properties))
            made.height = Qt.binding(() => made.implicitHeight)
            wait(1)
            return made
        }
        function test_diametersAreToScale() {
            const item = make({plates: usual, drawHeight: 90}), plates = named(item, "plate")
            compare(plates.map(plate => plate.height), [90, Math.round(228 / 5), 32])
        }
        function test_thicknessIsToALargerScale() {
            const plates = named(make({plates: usual, drawHeight: 90}), "plate"), per = plates[0].width / 45
            verify(per > 90 / 450)
            for (let i = 0; i < 3; ++i)
                verify(Math.abs(plates[i].width - per * usual[i].thicknessMm) <= 1, "plate " + i)
        }
        function test_fromTheInsideOut() {
            const item = make({plates: usual}), plates = named(item, "plate")
            compare(named(item, "number").map(number => number.text), ["25", "5", "1.25"])
            for (let i = 1; i < 3; ++i)
                verify(plates[i].x >= plates[i - 1].x + plates[i - 1].width)
        }
        function test_allOnOneAxis() {
            for (const plate of named(make({plates: usual, drawHeight: 90}), "plate"))
                verify(Math.abs(plate.y + plate.height / 2 - 45) <= 0.5)
        }
        function test_staysComesOffGoesOn() {
            const item = make({plates: [usual[0], Object.assign({change: -1}, usual[1]), Object.assign({change: 1}, usual[1])]}), plates = named(item, "plate")
            compare(named(item, "number").map(number => number.text), ["25", "−5", "+5"])
            verify(Qt.colorEqual(plates[0].color, Theme.role.wash) && Qt.colorEqual(plates[1].color, Theme.role.paper) && Qt.colorEqual(plates[2].color, Theme.role.ink))
            compare(plates.map(plate => plate.border.width > 0), [true, false, true])
        }
        function test_chainAndBandHangFromTheSleeve() {
            const item = make({plates: usual.concat([{label: "chain", hang: "chain"}, {label: "band", hang: "band"}])}), hangers = named(item, "hanger"), sleeve = one(item, "sleeve")
            compare(hangers.map(hanger => hanger.chain), [true, false])
            compare(named(item, "plate").length, 3)
            for (const hanger of hangers) {
                verify(hanger.x > named(item, "plate")[2].x && hanger.x + hanger.width <= sleeve.x + sleeve.width)
                verify(hanger.y <= sleeve.y + sleeve.height && hanger.y + hanger.height > sleeve.y + sleeve.height)
            }
        }
        function test_twelvePlatesAreListed() {
            const many = [25, 25, 25, 20, 15, 10, 5, 5, 2.5, 1.25, 0.5, 0.25].map(kg => ({label: String(kg), diameterMm: 200 + 10 * kg, thicknessMm: 10 + kg}))
            const item = make({plates: many, sideText: "each side"})
            compare(named(item, "plate").length, 12)
            compare(one(item, "listed").text.split(/ +/), many.map(plate => plate.label))
            compare(named(item, "number").length, 0)
            between(item, "plate", 0, item.width, "twelve")
        }
        function test_itSaysItsSentence() {
            const item = make({plates: usual, sideText: "each side"})
            compare(item.Accessible.role, Accessible.Graphic)
            compare(item.Accessible.name, "each side: 25, 5, 1.25")
            item.sentence = "two plates"
            compare(item.Accessible.name, "two plates")
        }
        function test_nothingLeavesThePage_data() {
            return Array.from({length: 12}, (_, i) => ({tag: "strip " + i, index: i}))
        }
        function test_nothingLeavesThePage(row) {
            sow(row.index)
            const plates = []
            for (let n = whole(0, 12); n > 0; --n) {
                const kg = pick([25, 20, 15, 10, 5, 2.5, 1.25, 0.5, 0.25, 22.68])
                plates.push({label: String(kg), diameterMm: next(120, 450), thicknessMm: next(8, 60), change: pick([-1, 0, 0, 1])})
            }
            for (const hang of ["chain", "band"])
                if (next(0, 1) > 0.5)
                    plates.push({label: pick([hang, hang + " doubled"]), hang: hang})
            const item = make({plates: plates, sideText: pick(["each side", "", "each side, from the inside", "left"])})
            atEveryTextSize(tag => {
                for (const wide of [240, 328, 448]) {
                    item.width = wide
                    wait(1)
                    clean(item, row.tag + ", " + tag + ", width " + wide)
                    for (const name of ["plate", "hanger", "sleeve"])
                        between(item, name, 0, wide, row.tag + ", " + tag + ", width " + wide)
                    const drawn = named(item, "plate").concat(named(item, "hanger")).map(part => box(part, item))
                    for (let i = 1; i < drawn.length; ++i)
                        verify(!overlap(drawn[i], drawn[i - 1]), row.tag + ", " + tag + ": part " + i + " covers its neighbour")
                }
            })
        }
        function test_absurd_data() {
            return [{tag: "none", plates: []}, {tag: "undefined", plates: undefined}, {tag: "null in it", plates: [null, undefined]}, {tag: "no sizes", plates: [{label: "25"}]},
                {tag: "zero", plates: [{label: "0", diameterMm: 0, thicknessMm: 0}]}, {tag: "no numbers", plates: [{label: "x", diameterMm: NaN, thicknessMm: Infinity, change: NaN}]},
                {tag: "huge", plates: [{label: "9999.75", diameterMm: 1e9, thicknessMm: 1e9}]}, {tag: "below zero", plates: [{label: "−5", diameterMm: -450, thicknessMm: -5}]},
                {tag: "sixty", plates: Array.from({length: 60}, () => ({label: "25", diameterMm: 450, thicknessMm: 45}))}]
        }
        function test_absurd(row) {
            const item = make({plates: row.plates, sideText: "each side"})
            for (const wide of [0, 1, 60, 328]) {
                item.width = wide
                wait(1)
                verify(Number.isFinite(item.implicitHeight) && item.implicitHeight >= 0)
                for (const plate of named(item, "plate"))
                    verify(Number.isFinite(plate.x) && plate.height <= item.drawHeight && plate.width >= 1)
            }
            between(item, "plate", 0, item.width, row.tag)
            verify(!grabImage(item).isNull)
        }
        function test_rightToLeftTurnsNothing() {
            staysUnmirrored(top, make({plates: usual.concat([{label: "chain", hang: "chain"}]), sideText: "each side"}))
        }
    }
}
