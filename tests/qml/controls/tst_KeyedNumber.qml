// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Theme

Item {
    id: root

    width: 400
    height: 400
    LayoutMirroring.childrenInherit: true

    KeyedNumber {
        id: number
        width: 328
        name: "Bottom"
        text: ""
        unit: "cm"
        hint: "last time 82 cm"
    }

    ControlCase {
        name: "KeyedNumber"

        function init() {
            reset()
            number.text = ""
            number.refusal = ""
            root.LayoutMirroring.enabled = false
        }
        function shown(text) {
            return texts(number).filter(item => item.text === text && item.visible)
        }
        function texts(item) {
            let list = item instanceof Text ? [item] : []
            for (let i = 0; i < item.children.length; ++i)
                list = list.concat(texts(item.children[i]))
            return list
        }
        function test_exactlyAsKeyed_data() {
            return [{tag: "0."}, {tag: "007"}, {tag: "82.50"}, {tag: "1000.25"}, {tag: "12345678901"}]
        }
        function test_exactlyAsKeyed(row) {
            number.text = row.tag
            const found = shown(row.tag)
            compare(found.length, 1)
            verify(found[0].contentWidth <= 328, "fits: " + found[0].contentWidth)
            verify(!found[0].truncated)
        }
        function test_unitStays() {
            number.text = "12345678901"
            const unit = shown("cm")[0]
            const right = unit.mapToItem(number, unit.width, 0).x
            verify(right <= number.width + 1, "the unit ends at " + right)
        }
        function test_refusalTakesTheHintsPlaceAndMovesNothing() {
            compare(shown("last time 82 cm").length, 1)
            const high = number.implicitHeight
            number.refusal = "Only one point."
            compare(shown("Only one point.").length, 1)
            compare(shown("last time 82 cm").length, 0)
            compare(number.implicitHeight, high)
        }
        function test_noRoomForARefusalWhereKeysStandApart() {
            number.hint = ""
            const roomy = number.implicitHeight
            number.spare = false
            verify(number.implicitHeight < roomy - Theme.least, "no line is kept")
            number.refusal = "Only one point."
            compare(shown("Only one point.").length, 1)
            verify(number.implicitHeight >= roomy, "and one comes with its words")
            number.hint = "last time 82 cm"
            number.spare = true
        }
        function test_dottedUntilKeyed() {
            compare(number.entry, ReadOut.State.Planned)
            number.text = "8"
            compare(number.entry, ReadOut.State.Entered)
        }
        function test_spoken() {
            const readOut = number.children[0]
            compare(AccessProbe.name(readOut), "Bottom: nothing keyed yet")
            number.text = "82"
            compare(AccessProbe.name(readOut), "Bottom: 82 cm")
            number.refusal = "Only one point."
            compare(AccessProbe.role(shown("Only one point.")[0]), Accessible.AlertMessage)
        }
        function test_keyNumberSize() {
            number.text = "82"
            verify(shown("82")[0].font.pixelSize >= 48)
            verify(shown("82")[0].keyNumber)
        }
        function test_digitsBeforeUnitInEveryLanguage() {
            number.text = "82"
            root.LayoutMirroring.enabled = true
            waitForRendering(number, 50)
            const digits = shown("82")[0], unit = shown("cm")[0]
            verify(digits.mapToItem(root, 0, 0).x < unit.mapToItem(root, 0, 0).x)
            verify(unit.mapToItem(number, unit.width, 0).x > 250, "but the number stands on the right")
        }
    }
}
