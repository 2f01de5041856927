// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Drawings

Item {
    id: top

    width: 1280
    height: 800

    Component { id: elevation; SideElevation { barHeight: 1; pixelsPerMetre: 300; floorY: 450 } }

    DrawingCase {
        readonly property var straight: ({kind: "chain", hang: "straight", lead: 0.45, length: 0.7, pitch: 0.05, wire: 0.016})
        readonly property var single: ({kind: "band", hang: "single", length: 0.5, anchorHeight: 0, above: false})

        name: "SideElevation"

        function make(properties) {
            const made = createTemporaryObject(elevation, top, Object.assign({width: 200, height: 480}, properties))
            wait(1)
            return made
        }
        function test_theBarStandsAtItsHeight() {
            const item = make({})
            for (const height of [0, 0.225, 0.82, 1.04, 1.4]) {
                item.barHeight = height
                compare(one(item, "bar").y, Math.round(450 - 300 * height))
            }
        }
        function test_platesAreToScaleBothWays() {
            const plates = named(make({plates: [{diameterMm: 450, thicknessMm: 50}, {diameterMm: 200, thicknessMm: 20}]}), "plate")
            compare(plates.map(plate => plate.height), [135, 60])
            compare(plates.map(plate => plate.width), [15, 6])
            verify(plates[1].x >= plates[0].x + plates[0].width)
        }
        function test_linksFollowTheHeight_data() {
            // 14 links of 5 cm; the first lies on the floor until the bar stands a pitch above the lead
            return [{tag: "at the lead", height: 0.45, air: 0}, {tag: "below the lead", height: 0.3, air: 0}, {tag: "not yet one", height: 0.499, air: 0}, {tag: "one", height: 0.5, air: 1},
                {tag: "half", height: 0.8, air: 7}, {tag: "last link still down", height: 1.149, air: 13}, {tag: "all", height: 1.15, air: 14}, {tag: "swinging", height: 1.6, air: 14}]
        }
        function test_linksFollowTheHeight(row) {
            const chain = one(make({barHeight: row.height, items: [straight]}), "chain")
            compare(chain.hangingLinks, row.air)
            compare(chain.floorLinks, 14 - row.air)
            compare(named(chain, "link").length, row.air)
            compare(named(chain, "heaped").length, 14 - row.air)
        }
        function test_doubledHangsTwoStrands() {
            const item = make({barHeight: 0.7, items: [Object.assign({}, straight, {hang: "doubled"})]}), chain = one(item, "chain")
            // 25 cm above the lead: five links a strand
            compare(chain.hangingLinks, 10)
            compare(Array.from(new Set(named(chain, "link").map(link => link.x + link.width / 2 > 0))).length, 2)
            item.barHeight = 0.8
            compare(chain.hangingLinks, 14)
            item.barHeight = 2
            compare(chain.hangingLinks, 14)
        }
        function test_bunchedLeavesTheFloorWithinItsOwnHeight() {
            const item = make({barHeight: 0.45, items: [Object.assign({}, straight, {hang: "bunched", bunch: 0.2})]}), chain = one(item, "chain")
            for (const [height, air] of [[0.45, 0], [0.55, 7], [0.65, 14], [1.4, 14]]) {
                item.barHeight = height
                compare(chain.hangingLinks, air)
                compare(named(chain, "link").length, air)
            }
        }
        function test_linksHangAtTruePitch() {
            const item = make({barHeight: 1.2, items: [straight]}), links = named(one(item, "chain"), "link")
            compare(links[0].y, Math.round(450 - 300 * (1.2 - 0.45)))
            for (let i = 1; i < links.length; ++i)
                verify(Math.abs(links[i].y - links[0].y - i * 15) <= 1, "link " + i)
            compare(links.map(link => link.width > links[1].width).filter((face, i) => face !== (i % 2 === 0)).length, 0)
        }
        function test_theLeadIsALine() {
            const item = make({barHeight: 1, items: [straight]}), lead = one(item, "lead")
            compare(lead.y, 150)
            compare(lead.height, 135)
            item.barHeight = 0.2
            compare(lead.y + lead.height, 450)
        }
        function test_theHeapLiesOnTheFloor() {
            for (const link of named(make({barHeight: 0.5, items: [straight]}), "heaped"))
                verify(link.y + link.height <= 450.5 && link.y > 450 - 0.25 * 300)
        }
        function test_bandsRunFromAnchorToBar_data() {
            return [{tag: "from the floor", anchor: 0, above: false, taut: true}, {tag: "from a peg", anchor: 0.3, above: false, taut: true}, {tag: "from above", anchor: 1.4, above: true, taut: false},
                {tag: "from well above", anchor: 1.49, above: true, taut: false}, {tag: "below rest", anchor: 0.6, above: false, taut: false}]
        }
        function test_bandsRunFromAnchorToBar(row) {
            const band = one(make({items: [Object.assign({}, single, {anchorHeight: row.anchor, above: row.above})]}), "band"), peg = one(band, "peg")
            compare(band.taut, row.taut)
            compare(band.barY, 150)
            verify(Math.abs((row.above ? peg.y + peg.height : peg.y + peg.height) - (450 - 300 * row.anchor)) <= 1)
            compare(named(band, "post").length, row.anchor > 0 ? 1 : 0)
        }
        function test_aDoubledBandIsTautEarlier() {
            const item = make({barHeight: 0.4, items: [single]}), band = one(item, "band")
            verify(!band.taut)
            item.items = [Object.assign({}, single, {hang: "doubled"})]
            verify(one(item, "band").taut)
        }
        function test_anAnchorBeyondThePageRunsOff() {
            const band = one(make({items: [Object.assign({}, single, {anchorHeight: 2.2, above: true})]}), "band")
            compare(named(band, "peg").length, 0)
            verify(band.taut)
        }
        function test_itemsHangSideBySide() {
            const item = make({plates: [{diameterMm: 450, thicknessMm: 45}], items: [straight, single, Object.assign({}, straight, {hang: "doubled"}), single]})
            const at = named(item, "chain").concat(named(item, "band")).map(part => part.x).sort((a, b) => a - b)
            compare(at.length, 4)
            for (let i = 0; i < 4; ++i) {
                verify(at[i] > named(item, "plate")[0].x + named(item, "plate")[0].width && at[i] < item.width)
                verify(i === 0 || at[i] - at[i - 1] >= 8, "items " + at)
            }
        }
        function test_absurd_data() {
            const chain = properties => [Object.assign({}, straight, properties)], band = properties => [Object.assign({}, single, properties)]
            return [{tag: "nothing"}, {tag: "no height", barHeight: NaN}, {tag: "below the floor", barHeight: -1, items: chain({})}, {tag: "no scale", pixelsPerMetre: 0, items: chain({})},
                {tag: "scale of no number", pixelsPerMetre: NaN, items: chain({})}, {tag: "no pitch", items: chain({pitch: 0})}, {tag: "very fine pitch", items: chain({pitch: 1e-6, wire: 1e-7})},
                {tag: "no length", items: chain({length: 0})}, {tag: "endless", items: chain({length: Infinity, lead: NaN})}, {tag: "a mile", items: chain({length: 1600})},
                {tag: "wire thicker than pitch", items: chain({wire: 1})}, {tag: "band without a thing", items: [{kind: "band"}]}, {tag: "chain without a thing", items: [{kind: "chain"}]},
                {tag: "unknown kinds", items: [null, undefined, {}, {kind: "rope"}]}, {tag: "band of no number", items: band({length: NaN, anchorHeight: NaN, above: true})},
                {tag: "anchor in the ground", items: band({anchorHeight: -2})}, {tag: "anchor at the bar", items: band({anchorHeight: 1})}, {tag: "above, but below", items: band({above: true, anchorHeight: 0})},
                {tag: "twelve plates", plates: Array.from({length: 12}, () => ({diameterMm: 450, thicknessMm: 45})), items: chain({})}, {tag: "plates of no size", plates: [{}, {diameterMm: NaN, thicknessMm: -4}, null]},
                {tag: "no width", width: 0, items: chain({})}]
        }
        function test_absurd(row) {
            const properties = Object.assign({}, row)
            delete properties.tag
            const item = make(properties)
            verify(Number.isFinite(item.reach) && item.reach > 0)
            between(item, "plate", 0, Math.max(1, item.width), row.tag)
            for (const chain of named(item, "chain")) {
                compare(chain.hangingLinks + chain.floorLinks, chain.links)
                verify(named(chain, "link").length + named(chain, "heaped").length <= 600, row.tag)
            }
            verify(item.width === 0 || !grabImage(item).isNull)
        }
        function test_rightToLeftTurnsNothing() {
            staysUnmirrored(top, make({plates: [{diameterMm: 450, thicknessMm: 45}], items: [straight, single]}))
        }
    }
}
