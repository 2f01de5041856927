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
            row.stop = false
            row.besideLabel = false
            row.hint = "rack hole 14"
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
        /** What may not be used has the stop's mark beside its word. */
        function test_stopHasItsMark() {
            const mark = findChild(row, "stopMark")
            verify(!mark.visible)
            row.stop = true
            verify(mark.visible && Qt.colorEqual(mark.color, Theme.role.stop))
            const word = saying(row, "82 cm")
            verify(mark.mapToItem(row, mark.width, 0).x <= word.mapToItem(row, word.width - word.contentWidth, 0).x)
            verify(mark.mapToItem(row, 0, 0).x >= 0)
        }
        /** The value beside the name, and the whole width for what it means, a line each. */
        function test_valueOnTheLabelsLine() {
            row.besideLabel = true
            row.hint = "pulls 29.5 ± 0.3 kg at 172 cm\nmeasured 2 Nov, due in 17 weeks"
            waitForRendering(row, 30)
            const value = saying(row, "82 cm"), label = saying(row, row.label), hint = saying(row, row.hint)
            compare(value.mapToItem(row, 0, 0).y, label.mapToItem(row, 0, 0).y)
            compare(hint.width, row.innerWidth)
            compare(hint.lineCount, 2)
            compare(AccessProbe.description(target(row)), "pulls 29.5 ± 0.3 kg at 172 cm, measured 2 Nov, due in 17 weeks")
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
