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
    LayoutMirroring.childrenInherit: true

    FactRow {
        id: row
        width: 328
        label: "Bottom, from the floor"
        value: "82"
        unit: "cm"
        hint: "rack hole 14"
    }
    SignalSpy {
        id: spy
        target: row
        signalName: "opened"
    }

    ControlCase {
        name: "FactRow"

        function init() {
            reset()
            row.filledIn = false
            row.entry = Qt.binding(() => row.filledIn ? ReadOut.State.Planned : ReadOut.State.None)
            root.LayoutMirroring.enabled = false
            spy.clear()
        }
        function rules(item) {
            let list = item instanceof Rule && item.total && item.visible ? [item] : []
            for (let i = 0; i < item.children.length; ++i)
                list = list.concat(rules(item.children[i]))
            return list
        }
        function test_opensOnce() {
            tap(row)
            tap(row)
            compare(spy.count, 1)
        }
        function test_slideOffCancels() {
            slideOff(row)
            compare(spy.count, 0)
        }
        function test_keyboard() {
            focusByKey(row)
            keyClick(Qt.Key_Return)
            compare(spy.count, 1)
        }
        function test_spoken() {
            compare(AccessProbe.name(target(row)), "Bottom, from the floor: 82 cm")
            compare(AccessProbe.description(target(row)), "rack hole 14")
            row.filledIn = true
            verify(AccessProbe.description(target(row)).includes("not yet confirmed"))
        }
        function test_ruleSaysHowFarItIs() {
            compare(rules(row).length, 0)
            row.filledIn = true
            verify(rules(row)[0].dotted)
            row.entry = ReadOut.State.Entered
            verify(!rules(row)[0].dotted && !rules(row)[0].closed)
            row.entry = ReadOut.State.Kept
            verify(rules(row)[0].closed)
        }
        function test_valueAtTheEndAndInside() {
            atEverySize(tag => {
                waitForRendering(row, 30)
                atLeast(row, Theme.touch, Theme.touch, tag)
                const value = saying(row, "82 cm"), label = saying(row, row.label)
                const right = value.mapToItem(row, value.width, 0).x
                fuzzyCompare(right, row.width, 1, "value at the end at " + tag)
                verify(value.contentWidth <= value.width + 1, "value whole at " + tag)
                const beside = label.mapToItem(row, label.width, 0).x <= value.mapToItem(row, 0, 0).x
                const below = value.mapToItem(row, 0, 0).y >= label.mapToItem(row, 0, label.height).y
                verify(beside || below, "label and value apart at " + tag)
                verify(value.mapToItem(row, 0, value.height).y <= row.height + 1, "value inside at " + tag)
            })
        }
        function test_mirrors() {
            root.LayoutMirroring.enabled = true
            waitForRendering(row, 50)
            fuzzyCompare(saying(row, "82 cm").mapToItem(row, 0, 0).x, 0, 1)
            const label = saying(row, row.label)
            fuzzyCompare(label.mapToItem(row, label.width, 0).x, row.width, 1)
        }
    }
}
