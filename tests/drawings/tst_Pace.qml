// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Charts

Item {
    id: top

    width: 1280
    height: 800

    Component { id: picture; HeightPicture { width: 620; height: 430; curve: null; marks: []; sentence: "" } }

    CurveCase {
        name: "Pace"

        /** A new load is on the page within a tenth of a second: points replaced, laid out, drawn; the middle of many tries counts. */
        function test_aNewLoadIsThereAtOnce() {
            const lines = [curve({n: 200}), curve({n: 200, iron: 105})], item = createTemporaryObject(picture, top, {plates: usualPlates, items: usualItems})
            item.marks = marks(lines[0], 0.82, 1.4)
            waitForRendering(item)
            const set = [], drawn = []
            for (let i = 0; i < 15; ++i) {
                const start = Date.now()
                item.curve = lines[i % 2]
                item.marks = marks(lines[i % 2], 0.82, 1.4)
                set.push(Date.now() - start)
                verify(waitForRendering(item, 1000))
                drawn.push(Date.now() - start)
            }
            const middle = list => list.sort((a, b) => a - b)[Math.floor(list.length / 2)]
            console.info("points replaced and laid out in " + middle(set) + " ms, drawn after " + middle(drawn) + " ms")
            verify(middle(drawn) <= 100, "drawn after " + middle(drawn) + " ms")
        }
    }
}
