// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Theme

/** A count that is stepped, and things of which any may be so. */
Item {
    id: root

    width: 400
    height: 800
    LayoutMirroring.childrenInherit: true

    CountRow {
        id: count
        width: 328
        name: "Reps done"
        value: "5"
    }
    ToggleRow {
        id: toggles
        y: 200
        width: 328
        label: "Hung"
        options: ["chains", "bands from below", "a machine"]
        on: [false, true, false]
    }
    SignalSpy {
        id: stepped
        target: count
        signalName: "stepped"
    }
    SignalSpy {
        id: toggled
        target: toggles
        signalName: "toggled"
    }

    ControlCase {
        name: "CountRow"

        function init() {
            reset()
            count.canLess = count.canMore = true
            root.LayoutMirroring.enabled = false
            for (const spy of [stepped, toggled])
                spy.clear()
        }
        function test_stepsDownAndUp() {
            tap(findChild(count, "less"))
            tap(findChild(count, "more"))
            compare(stepped.count, 2)
            compare(stepped.signalArguments[0][0], false)
            compare(stepped.signalArguments[1][0], true)
            count.canLess = false
            tap(findChild(count, "less"))
            compare(stepped.count, 2)
        }
        /** Less stays on the left in every language. */
        function test_lessStaysOnTheLeft() {
            const left = () => findChild(count, "less").mapToItem(count, 0, 0).x < findChild(count, "more").mapToItem(count, 0, 0).x
            verify(left())
            root.LayoutMirroring.enabled = true
            verify(left())
        }
        function test_isSaidAloud() {
            compare(AccessProbe.name(findChild(count, "said")), "Reps done: 5")
            compare(AccessProbe.name(findChild(count, "less")), "Reps done: one less")
        }
        function test_togglesAny() {
            const keys = targets(toggles)
            compare(keys.length, 3)
            verify(AccessProbe.isChecked(keys[1]) && !AccessProbe.isChecked(keys[0]))
            tap(keys[2])
            compare(toggled.count, 1)
            compare(toggled.signalArguments[0][0], 2)
            compare(AccessProbe.name(keys[0]), "Hung: chains")
        }
    }
}
