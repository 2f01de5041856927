// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

Item {
    id: root

    width: 400
    height: 400

    Words {
        id: words
        text: "102.5 kg"
    }
    TextMetrics {
        id: ones
        text: "1111"
        font { family: Theme.face; pixelSize: 66; weight: Theme.strong }
    }
    TextMetrics {
        id: eights
        text: "8888"
        font: ones.font
    }

    ControlCase {
        name: "Theme"

        function test_tablet_data() {
            return [{tag: "tablet", width: 1280, height: 800, wide: true, low: false}, {tag: "upright", width: 800, height: 1000, wide: true, low: false},
                {tag: "least", width: 720, height: 600, wide: true, low: false}, {tag: "one lower", width: 720, height: 599, wide: false, low: false},
                {tag: "one narrower", width: 719, height: 1000, wide: false, low: false}, {tag: "phone", width: 360, height: 720, wide: false, low: false},
                {tag: "phone on its side", width: 720, height: 360, wide: false, low: true}]
        }
        function test_tablet(row) {
            Theme.fit(row.width, row.height)
            compare(Theme.wide, row.wide)
            compare(Theme.low, row.low)
        }
        function test_fitFollowsTheWindowAgainAfterWideWasSet() {
            Theme.wide = true
            Theme.fit(360, 720)
            verify(!Theme.wide)
            Theme.fit(1280, 800)
            verify(Theme.wide)
        }
        /** WCAG 2.1, 1.4.6 (text 7) and 1.4.11 (edges and marks 3); 12 for key numbers is this project's own figure. */
        function test_contrast_data() {
            return [{tag: "light", mode: Theme.Mode.Light}, {tag: "dark", mode: Theme.Mode.Dark}, {tag: "sun", mode: Theme.Mode.Sun}]
        }
        function test_contrast(row) {
            Theme.mode = row.mode
            const role = Theme.role
            const pairs = [[role.ink, role.paper, 12], [role.ink, role.wash, 12], [role.inkSoft, role.paper, 7], [role.inkSoft, role.wash, 4.5],
                [role.accentText, role.accent, 7], [role.accent, role.paper, 7], [role.stopText, role.stop, 7], [role.stop, role.paper, 7],
                [role.edge, role.paper, 3], [role.left, role.paper, 3], [role.right, role.paper, 3]]
            for (const [front, back, least] of pairs)
                verify(PageAudit.contrast(front, back) >= least, front + " on " + back + " is " + PageAudit.contrast(front, back))
        }
        /** ISO 9241: 16 minutes of arc are 16 dp at 400 mm and 24 dp at 600 mm; 20 minutes at 1.5 m are 76 dp. */
        function test_leastType() {
            atEverySize(tag => {
                for (const size of [Theme.note, Theme.body, Theme.key, Theme.act, Theme.title, Theme.figure])
                    verify(size >= 16, size + " at " + tag)
                verify(!Theme.wide || Theme.act >= 24 && Theme.key >= 24, "act-on text at " + tag)
                verify(Theme.keyNumber >= (Theme.wide ? 76 : 48), "key number at " + tag)
            })
        }
        function test_textGrowsAtOnce() {
            const before = words.font.pixelSize, number = Theme.keyNumber, high = words.implicitHeight
            Theme.textFactor = 2
            compare(words.font.pixelSize, 2 * before)
            verify(words.implicitHeight > 1.8 * high)
            verify(Theme.keyNumber > number)
        }
        function test_paletteChangesAtOnce() {
            const before = String(words.color)
            Theme.mode = Theme.Mode.Dark
            verify(!Qt.colorEqual(words.color, before))
            verify(Qt.colorEqual(words.color, Theme.role.ink))
        }
        function test_heavierInTheSun() {
            const plain = Theme.plain, strong = Theme.strong, edging = Theme.edging
            Theme.mode = Theme.Mode.Sun
            verify(Theme.plain > plain && Theme.strong > strong && Theme.edging > edging)
        }
        function test_touch() {
            compare([Theme.touchFloor, Theme.touch, Theme.touchStep, Theme.touchMain], [48, 56, 64, 76])
            compare(Theme.tapQuiet, 400)
            compare([Theme.apart, Theme.safeApart, Theme.topGap, Theme.bottomGap], [8, 24, 24, 16])
        }
        function test_shippedFaceWithOneWidthForAllDigits() {
            compare(words.fontInfo.family, Theme.face)
            compare(ones.advanceWidth, eights.advanceWidth)
        }
    }
}
