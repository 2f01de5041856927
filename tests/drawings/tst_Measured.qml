// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Drawings
import Steelyard.Theme

/** What is measured, as it is drawn on a step's page: within its own room, however small, and true to what is asked. */
Item {
    id: top

    width: 1280
    height: 1000

    Component { id: aid; AidMeasured { } }
    Component { id: band; BandMeasured { } }
    Component { id: cam; CamMeasured { } }
    Component { id: chain; ChainMeasured { } }
    Component { id: tool; ToolMeasured { } }

    DrawingCase {
        readonly property var rooms: [[328, 92], [328, 128], [300, 240], [560, 430]]

        name: "Measured"

        function make(component: Component, properties: var): Item {
            const made = createTemporaryObject(component, top, Object.assign({width: 328, height: 92}, properties))
            wait(1)
            return made
        }
        function inside(item: Item, tag: string) {
            // a hair beyond is the stroke of a line on the edge
            const slack = Theme.rule
            for (const part of all(item, part => part instanceof Rectangle && part.width > 0 && part.height > 0)) {
                const at = part.mapToItem(item, 0, 0, part.width, part.height)
                verify(at.x >= -slack && at.y >= -slack && at.x + at.width <= item.width + slack && at.y + at.height <= item.height + slack,
                       `${tag}: ${part.objectName} at ${at} leaves ${item.width} × ${item.height}`)
            }
        }
        function test_staysInItsRoom_data() {
            const parts = {aid: ["mass", "height"], band: ["rest", "mass", "length"], cam: ["stack", "angle", "radius", "travel", "pull", "scaleStep"],
                chain: ["length", "mass", "scaleStep", "wire", "pitch", "innerWidth"]}
            const components = {aid: aid, band: band, cam: cam, chain: chain}
            let rows = []
            for (const name in parts)
                rows = rows.concat(parts[name].map(part => ({tag: name + ", " + part, component: components[name], set: {part: part}})))
            for (const [what, part] of [["scale", "known"], ["bar", "read"], ["plates", "count"], ["lead", "length"], ["lead", "mass"], ["rack", "lowest"], ["rack", "spacing"], ["rack", "count"], ["rack", "anchor"]])
                rows.push({tag: what + ", " + part, component: tool, set: {tool: what, part: part}})
            return rows.concat([{tag: "aid, by hand", component: aid, set: {part: "mass", bare: true}}, {tag: "long link", component: chain, set: {part: "innerWidth", longLink: true}}])
        }
        function test_staysInItsRoom(row) {
            atEveryTextSize(tag => {
                for (const [wide, high] of rooms)
                    inside(make(row.component, Object.assign({width: wide, height: high}, row.set)), `${row.tag}, ${tag}`)
            })
        }
        function test_loadedBandIsLonger_data() {
            return [60, 92, 128, 240, 430].map(high => ({tag: "in " + high, height: high}))
        }
        function test_loadedBandIsLonger(row) {
            const loose = one(make(band, {part: "rest", height: row.height}), "band"), loaded = one(make(band, {part: "length", height: row.height}), "band")
            verify(loaded.height > loose.height, `${loaded.height} over ${loose.height}`)
        }
        function test_nothingOnTheAidIsDoneByHand() {
            const bare = make(aid, {part: "mass", bare: true}), loaded = make(aid, {part: "mass"})
            compare([named(bare, "plate").length, named(bare, "hand").length], [0, 2])
            compare([named(loaded, "plate").length, named(loaded, "hand").length], [4, 0])
            compare(one(make(aid, {part: "mass", width: 560, height: 300}), "chestWord").text, "chest")
        }
        function test_camFillsItsRoom() {
            for (const [wide, high] of rooms) {
                const item = make(cam, {part: "stack", width: wide, height: high}), plates = named(item, "plate").map(plate => plate.mapToItem(item, 0, 0, plate.width, plate.height))
                const low = Math.max(...plates.map(plate => plate.y + plate.height)), right = Math.max(...plates.map(plate => plate.x + plate.width))
                verify(low >= 0.9 * high || right >= 0.9 * wide, `${wide} × ${high}: down to ${low}, right to ${right}`)
            }
        }
        function test_rackTapeRunsFromHoleToHole() {
            for (const [wide, high] of rooms) {
                const item = make(tool, {tool: "rack", part: "spacing", width: wide, height: high})
                const holes = named(item, "hole").map(hole => hole.mapToItem(item, hole.width / 2, hole.height / 2).y).sort((a, b) => b - a)
                const tape = one(item, "pitchTape"), top = tape.mapToItem(item, 0, 0).y
                verify(holes.length >= 2 && Math.abs(top - holes[1]) <= 1 && Math.abs(top + tape.span - holes[0]) <= 1, `${high}: ${top} and ${tape.span}, holes ${holes}`)
            }
        }
        function test_longLinkIsReadTwice() {
            compare(named(make(chain, {part: "innerWidth"}), "outer").length, 0)
            compare(named(make(chain, {part: "innerWidth", longLink: true}), "outer").length, 1)
        }
    }
}
