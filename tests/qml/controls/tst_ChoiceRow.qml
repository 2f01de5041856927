// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Theme

Item {
    id: root

    width: 400
    height: 800
    LayoutMirroring.childrenInherit: true

    ChoiceRow {
        id: choice
        width: 328
        label: "How it hangs"
        options: ["straight", "doubled", "bunched"]
        current: 1
        onChosen: index => choice.current = index
    }
    SignalSpy {
        id: spy
        target: choice
        signalName: "chosen"
    }

    ControlCase {
        name: "ChoiceRow"

        function init() {
            reset()
            choice.current = 1
            choice.options = ["straight", "doubled", "bunched"]
            root.LayoutMirroring.enabled = false
            spy.clear()
        }
        function key(index) {
            return targets(choice)[index]
        }
        /** Keys close up where that lets all of them stand in one row, and not otherwise. */
        function test_closesUpIntoOneRow() {
            const room = padding => choice.words + (choice.count * padding + choice.count - 1) * Theme.apart
            choice.width = room(4)
            verify(!choice.closer)
            choice.width = room(3)
            verify(choice.closer)
            waitForRendering(choice, 30)
            verify([0, 1, 2].every(index => key(index).mapToItem(choice, 0, 0).y === key(0).mapToItem(choice, 0, 0).y), "one row")
            verify(key(2).mapToItem(choice, key(2).width, 0).x <= choice.width)
            choice.width = 328
            choice.options = ["from her own bottom", "with plates on the floor"]
            verify(!choice.closer, "nothing is won by it")
        }
        function test_tapChoosesOnce() {
            tap(key(2))
            compare(spy.count, 1)
            compare(spy.signalArguments[0][0], 2)
            verify(AccessProbe.isChecked(key(2)))
            verify(!AccessProbe.isChecked(key(1)))
        }
        function test_slideOffCancels() {
            slideOff(key(0))
            compare(spy.count, 0)
        }
        function test_keyboard() {
            key(0).forceActiveFocus(Qt.TabFocusReason)
            keyClick(Qt.Key_Tab)
            keyClick(Qt.Key_Tab)
            keyClick(Qt.Key_Space)
            compare(spy.signalArguments[0][0], 2)
        }
        function test_chosenIsMarkedByShapeToo() {
            const marks = index => childrenOf(key(index).background).filter(item => item.visible && item.height === Theme.bar).length
            compare([marks(0), marks(1), marks(2)], [0, 1, 0])
        }
        function test_nothingChosenYet() {
            choice.current = -1
            for (let i = 0; i < 3; ++i)
                verify(!AccessProbe.isChecked(key(i)))
        }
        function test_names() {
            compare(AccessProbe.name(key(0)), "How it hangs: straight")
            compare([0, 1, 2].map(index => AccessProbe.description(key(index))), ["", "chosen", ""])
        }
        function test_sizesAndWrapping() {
            atEverySize(tag => {
                waitForRendering(choice, 30)
                let bottom = 0
                for (const each of targets(choice)) {
                    atLeast(each, Theme.touch, Theme.touch, tag)
                    const right = each.mapToItem(choice, each.width, 0).x
                    verify(right <= choice.width + 0.5, "inside at " + tag)
                    bottom = Math.max(bottom, each.mapToItem(choice, 0, each.height).y)
                }
                verify(choice.implicitHeight >= bottom - 0.5, "as high as its rows at " + tag)
            })
        }
        function test_longOptionWraps() {
            choice.options = ["a loop over the peg and back to the sleeve, both sides"]
            waitForRendering(choice, 50)
            verify(key(0).width <= choice.width)
            verify(key(0).height > Theme.touch)
        }
        function test_mirrors() {
            root.LayoutMirroring.enabled = true
            waitForRendering(choice, 50)
            verify(key(0).mapToItem(choice, 0, 0).x > key(1).mapToItem(choice, 0, 0).x)
        }
    }
}
