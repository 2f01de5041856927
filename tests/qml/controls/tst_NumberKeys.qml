// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Theme

Item {
    id: root

    property var got: []

    width: 400
    height: 600
    LayoutMirroring.childrenInherit: true

    NumberKeys {
        id: keys
        width: 328
        height: implicitHeight
        decimalPoint: "."
        onPressed: key => root.got = root.got.concat([key])
    }

    SignalSpy {
        id: pasted
        target: keys
        signalName: "pasted"
    }

    ControlCase {
        name: "NumberKeys"

        function init() {
            reset()
            keys.decimalPoint = "."
            root.LayoutMirroring.enabled = false
            root.got = []
        }
        function test_everyKeySaysItself() {
            const names = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "point", "0", "rub"]
            for (const name of names)
                tap(findChild(keys, "key " + name))
            compare(root.got, ["1", "2", "3", "4", "5", "6", "7", "8", "9", ".", "0", "rub"])
        }
        function test_quickTapsAllCount() {
            for (let i = 0; i < 3; ++i)
                tap(findChild(keys, "key 1"))
            compare(root.got, ["1", "1", "1"])
        }
        function test_quickTapsCountWhileThePointChanges() {
            // another field asks for whole numbers, and the finger is already down
            const item = findChild(keys, "key 1"), touch = touchEvent(item)
            touch.press(0, item, item.width / 2, item.height / 2).commit()
            keys.decimalPoint = ""
            waitForRendering(keys, 50)
            compare(findChild(keys, "key 1"), item, "the key stands")
            touch.release(0, item, item.width / 2, item.height / 2).commit()
            compare(root.got, ["1"])
        }
        function test_slideOffCancels() {
            slideOff(findChild(keys, "key 5"))
            compare(root.got, [])
        }
        function test_commaWhereTheLocaleHasOne() {
            keys.decimalPoint = ","
            waitForRendering(keys, 50)
            tap(findChild(keys, "key point"))
            compare(root.got, [","])
            compare(findChild(keys, "key point").text, ",")
        }
        function test_wholeNumbersHaveNoDecimalKey() {
            keys.decimalPoint = ""
            waitForRendering(keys, 50)
            compare(targets(keys).length, 11)
            keys.forceActiveFocus()
            keyClick(".")
            compare(root.got, [])
        }
        function test_hardwareKeyboard_data() {
            return [{tag: "point", point: ".", typed: ["6", "2", ".", "5"], got: ["6", "2", ".", "5"]},
                {tag: "comma for point", point: ".", typed: ["6", ","], got: ["6", "."]},
                {tag: "point for comma", point: ",", typed: ["6", "."], got: ["6", ","]},
                {tag: "letters are not numbers", point: ".", typed: ["a", "-", "e"], got: []}]
        }
        function test_hardwareKeyboard(row) {
            keys.decimalPoint = row.point
            keys.forceActiveFocus()
            for (const key of row.typed)
                keyClick(key)
            compare(root.got, row.got)
        }
        function test_backspaceRubsOut() {
            keys.forceActiveFocus()
            keyClick(Qt.Key_Backspace)
            compare(root.got, ["rub"])
        }
        function test_pastingByKeyboard_data() {
            return [{tag: "Ctrl and V", key: Qt.Key_V, held: Qt.ControlModifier}, {tag: "Shift and Insert", key: Qt.Key_Insert, held: Qt.ShiftModifier}]
        }
        function test_pastingByKeyboard(row) {
            pasted.clear()
            keys.forceActiveFocus()
            keyClick(row.key, row.held)
            compare(pasted.count, 1)
            keyClick(row.key)
            compare(pasted.count, 1, "not without the other")
        }
        function test_tabAndReturn() {
            waitForRendering(keys, 50)
            focusByKey(findChild(keys, "key 1"))
            keyClick(Qt.Key_Tab)
            keyClick(Qt.Key_Return)
            compare(root.got, ["2"])
        }
        function test_names() {
            compare(AccessProbe.name(target(findChild(keys, "key 7"))), "7")
            compare(AccessProbe.name(target(findChild(keys, "key point"))), "decimal point")
            compare(AccessProbe.name(target(findChild(keys, "key rub"))), "rub out")
        }
        function test_sizes() {
            atEverySize(tag => {
                waitForRendering(keys, 30)
                compare(targets(keys).length, 12)
                for (const key of targets(keys))
                    atLeast(key, Theme.touchStep, Theme.touchStep, tag)
            })
        }
        function test_threeRowsOnAPhonesSide() {
            Theme.fit(720, 360)
            waitForRendering(keys, 50)
            compare(keys.implicitHeight, 3 * Theme.touchStep + 2 * Theme.apart)
        }
        function test_digitsAreNotMirrored() {
            root.LayoutMirroring.enabled = true
            waitForRendering(keys, 50)
            verify(findChild(keys, "key 1").x < findChild(keys, "key 3").x)
        }
    }
}
