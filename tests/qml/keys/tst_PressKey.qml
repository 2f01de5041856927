// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

Item {
    id: root

    width: 700
    height: 700

    PressKey {
        id: key
        x: 20
        y: 20
        text: "KEEP"
        fact: "110 kg"
    }
    PressKey {
        id: neighbour
        x: 400
        y: 20
        text: "Next"
    }
    PressKey {
        id: weighty
        x: 400
        y: 300
        text: "Weigh it"
        outlined: true
    }
    PressKey {
        id: mainKey
        y: 500
        width: 300
        main: true
        text: "SET DONE"
    }
    SignalSpy {
        id: spy
        target: key
        signalName: "clicked"
    }

    ControlCase {
        name: "PressKey"

        function init() {
            reset()
            key.enabled = true
            key.visible = true
            spy.clear()
        }
        function test_offAndWeightyKeysAreToldApart_data() {
            return [{tag: "light", mode: Theme.Mode.Light}, {tag: "dark", mode: Theme.Mode.Dark}, {tag: "sun", mode: Theme.Mode.Sun}]
        }
        function test_offAndWeightyKeysAreToldApart(row) {
            Theme.mode = row.mode
            key.enabled = false
            const words = PageAudit.contrast(key.front, neighbour.front)
            verify(words >= 1.5, `words of a key that is off: ${words} to those of a live one`)
            verify(PageAudit.contrast(key.front, key.background.color) >= 4.5, "and still read")
            compare(key.background.border.width, 1)
            verify(weighty.background.border.width > neighbour.background.border.width, "a weightier edge")
            if (row.mode === Theme.Mode.Sun)
                verify(neighbour.background.border.width > 1, "a live key's edge is more than the edge of one that is off")
        }
        function test_keyboard_data() {
            return [{tag: "return", key: Qt.Key_Return}, {tag: "enter", key: Qt.Key_Enter}, {tag: "space", key: Qt.Key_Space}]
        }
        function test_keyboard(row) {
            focusByKey(key)
            keyClick(row.key)
            compare(spy.count, 1)
        }
        function test_ringOnlyForTheKeyboard() {
            neighbour.forceActiveFocus()
            focusByKey(key)
            verify(key.ringed)
            tap(neighbour)
            verify(!neighbour.ringed)
        }
        function test_tabGoesOn() {
            focusByKey(key)
            keyClick(Qt.Key_Tab)
            verify(target(neighbour).activeFocus)
        }
        function test_disabled() {
            key.enabled = false
            tap(key)
            mouseClick(key)
            compare(spy.count, 0)
            verify(PageAudit.contrast(key.front, Theme.role.wash) >= 4.5)
        }
        function test_screenReader() {
            compare(AccessProbe.name(target(key)), "KEEP 110 kg")
            compare(AccessProbe.role(target(key)), Accessible.Button)
            verify(AccessProbe.press(target(key)))
            compare(spy.count, 1)
        }
        function test_sizes() {
            atEverySize(tag => {
                atLeast(key, Theme.touch, Theme.touch, tag)
                atLeast(mainKey, Theme.touchMain, Theme.touchMain, tag)
                atLeast(target(key), key.width, key.height, tag)
            })
        }
        function test_factGoesBelowWhenItMust() {
            const flat = key.implicitHeight
            Theme.textFactor = 2
            key.width = 150
            verify(key.implicitHeight > 1.5 * flat)
            key.width = Qt.binding(() => key.implicitWidth)
            verify(key.width > 150)
        }
        /** The short rule of a chosen key never runs into its words, on one line or two. */
        function test_chosenRuleKeepsClearOfTheWords() {
            neighbour.chosen = true
            atEverySize(tag => {
                for (const wide of [neighbour.implicitWidth, 90]) {
                    neighbour.width = wide
                    neighbour.height = Qt.binding(() => neighbour.implicitHeight)
                    const rule = findChild(neighbour.background, "chosenRule"), words = neighbour.contentItem
                    const foot = words.mapToItem(neighbour, 0, (words.height + words.implicitHeight) / 2).y
                    verify(rule.visible && rule.mapToItem(neighbour, 0, 0).y >= foot, tag + ", width " + wide)
                }
            })
            neighbour.width = Qt.binding(() => neighbour.implicitWidth)
            neighbour.chosen = false
        }
        function test_looksOfAState() {
            verify(Qt.colorEqual(mainKey.background.color, Theme.role.accent))
            neighbour.chosen = true
            verify(Qt.colorEqual(neighbour.background.color, Theme.role.ink))
            verify(AccessProbe.isChecked(target(neighbour)))
            neighbour.chosen = false
            verify(!AccessProbe.isChecked(target(neighbour)))
            verify(Qt.colorEqual(neighbour.background.color, Theme.role.paper))
        }
    }
}
