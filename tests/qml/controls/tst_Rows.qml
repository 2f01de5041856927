// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

Item {
    id: root

    width: 1280
    height: 1000
    LayoutMirroring.childrenInherit: true

    KeyRow {
        id: keys
        width: 328
        gap: Theme.safeApart
        ThrowKey { id: throwKey; text: "Take it off" }
        PressKey { id: keepKey; text: "Keep" }
        PressKey { id: hidden; visible: false; text: "never" }
    }
    Pair {
        id: pair
        y: 300
        width: Theme.pageWidth - 2 * Theme.edgeGap
        height: implicitHeight
        first: Notice { id: firstNotice; Layout.fillWidth: true; head: "Chain clears the floor at 115 cm"; body: "Above that only the band still adds, and it adds less and less." }
        second: Notice { id: secondNotice; Layout.fillWidth: true; head: "Right band pulls less" }
    }

    ControlCase {
        name: "KeyRow and Pair"

        function init() {
            reset()
            root.LayoutMirroring.enabled = false
        }
        function test_keysShareTheRow() {
            waitForRendering(keys, 50)
            compare(throwKey.width, keepKey.width)
            compare(throwKey.height, keepKey.height)
            compare(keepKey.x - throwKey.x - throwKey.width, Theme.safeApart)
            verify(keepKey.x + keepKey.width <= keys.width)
        }
        function test_belowEachOtherWhenWordsDoNotFit() {
            Theme.textFactor = 2
            waitForRendering(keys, 50)
            compare(throwKey.width, keys.width)
            compare(keepKey.y - throwKey.y - throwKey.height, Theme.safeApart)
            verify(keys.implicitHeight >= keepKey.y + keepKey.height)
        }
        function test_throwKeyIsNoKeepKey() {
            verify(throwKey.throwsAway && !throwKey.main)
            compare(throwKey.background.border.width, Theme.rule)
            verify(PageAudit.contrast(throwKey.background.border.color, Theme.role.paper) >= 7)
            compare(AccessProbe.name(target(throwKey)), "Take it off")
        }
        function test_columnsWhereBothHaveRoomRowsElsewhere() {
            atEverySize(tag => {
                waitForRendering(pair, 30)
                const a = firstNotice.mapToItem(pair, 0, 0, firstNotice.width, firstNotice.height)
                const b = secondNotice.mapToItem(pair, 0, 0, secondNotice.width, secondNotice.height)
                // a tablet upright, or large text, leaves two columns of too few letters
                if (tag === "tablet, text 1" || tag === "tablet, text 1.25")
                    verify(b.x >= a.x + a.width + Theme.gutter - 1 && Math.abs(b.y - a.y) < 1, "beside at " + tag)
                else
                    verify(b.y >= a.y + a.height + Theme.block - 1, "below at " + tag)
                compare(firstNotice.height, firstNotice.implicitHeight, "not stretched at " + tag)
                verify(pair.implicitHeight >= Math.max(a.y + a.height, b.y + b.height) - 1, "holds both at " + tag)
            })
        }
        function test_mirrors() {
            Theme.fit(1280, 800)
            root.LayoutMirroring.enabled = true
            waitForRendering(pair, 50)
            verify(firstNotice.mapToItem(pair, 0, 0).x > secondNotice.mapToItem(pair, 0, 0).x)
            Theme.fit(360, 720)
            waitForRendering(keys, 50)
            verify(throwKey.x > keepKey.x)
        }
    }
}
