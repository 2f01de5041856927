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
    height: 800
    LayoutMirroring.childrenInherit: true

    Column {
        spacing: 20
        SideTag { id: left; side: "L" }
        SideTag { id: right; side: "R" }
        SideTag { id: both; side: "B" }
        ReadOut { id: planned; value: "82.5"; unit: "kg"; tail: "× 5"; entry: ReadOut.State.Planned }
        ReadOut { id: entered; value: "82.5"; unit: "kg"; entry: ReadOut.State.Entered }
        ReadOut { id: kept; value: "82.5"; unit: "kg"; entry: ReadOut.State.Kept }
        ReadOut { id: bare; value: "82.5"; unit: "" }
        ReadOut { id: narrow; width: 150; value: "182.5"; unit: "kg"; tail: "× 15"; size: Theme.keyNumber }
        Words { id: words; width: 300; text: "last time" }
    }

    ControlCase {
        name: "SideTag, ReadOut, Rule, Words"

        function init() {
            reset()
            root.LayoutMirroring.enabled = false
        }
        function rule(readOut) {
            const list = childrenOf(readOut).filter(item => item instanceof Rule && item.visible)
            return list.length === 1 ? list[0] : null
        }
        function mark(tag) {
            return tag.children[0].children[0]
        }
        function test_sidesDifferByLetterAndShapeToo() {
            compare([left.letter, right.letter, both.letter], ["L", "R", "B"])
            compare([AccessProbe.name(left), AccessProbe.name(right), AccessProbe.name(both)], ["left", "right", "both sides"])
            verify(mark(left).radius > 0 && mark(left).color.a === 1, "a filled disc")
            verify(mark(right).radius === 0 && mark(right).color.a === 0 && mark(right).rotation === 0, "an open square")
            compare(mark(both).rotation, 45)
        }
        function test_rulesMean() {
            verify(rule(planned).dotted && !rule(planned).closed)
            verify(!rule(entered).dotted && !rule(entered).closed)
            verify(rule(kept).closed && !rule(kept).dotted)
            compare(rule(bare), null)
            verify(rule(kept).height > rule(entered).height)
        }
        function test_spoken() {
            compare(AccessProbe.name(planned), "82.5 kg × 5, filled in")
            compare(AccessProbe.name(entered), "82.5 kg")
            compare(AccessProbe.name(kept), "82.5 kg, kept")
            compare(AccessProbe.name(bare), "82.5")
        }
        function test_numberFitsItsPlace() {
            atEverySize(tag => {
                waitForRendering(narrow, 30)
                const row = narrow.children[0]
                verify(row.width <= narrow.width + 1, row.width + " at " + tag)
                verify(row.width > 0.85 * narrow.width, "no smaller than it must be at " + tag)
            })
        }
        function test_wordsTurnWithThePage() {
            compare(words.effectiveHorizontalAlignment, Text.AlignLeft)
            root.LayoutMirroring.enabled = true
            compare(words.effectiveHorizontalAlignment, Text.AlignRight)
        }
        function test_wordsAreNoMarkup() {
            compare(words.textFormat, Text.PlainText)
        }
    }
}
