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
        id: instead
        x: 20
        y: 20
        visible: false
        text: "Start"
    }
    PressKey {
        id: step
        x: 20
        y: 300
        text: "+2.5"
        repeats: true
    }
    SignalSpy {
        id: spy
        target: key
        signalName: "clicked"
    }
    SignalSpy {
        id: nextSpy
        target: neighbour
        signalName: "clicked"
    }
    SignalSpy {
        id: insteadSpy
        target: instead
        signalName: "clicked"
    }
    SignalSpy {
        id: stepSpy
        target: step
        signalName: "clicked"
    }

    ControlCase {
        name: "Taps"

        function init() {
            reset()
            key.enabled = true
            key.visible = true
            instead.visible = false
            for (const each of [spy, nextSpy, insteadSpy, stepSpy])
                each.clear()
        }
        function test_goneUnderAFingerItTakesTheNextTap_data() {
            return [{tag: "disabled", gone: () => { step.enabled = false }, back: () => { step.enabled = true }},
                {tag: "out of sight", gone: () => { step.visible = false }, back: () => { step.visible = true }}]
        }
        function test_goneUnderAFingerItTakesTheNextTap(row) {
            const touch = touchEvent(step)
            touch.press(0, step, 10, 10).commit()
            verify(target(step).held)
            row.gone()
            verify(!target(step).held)
            touch.release(0, step, 10, 10).commit()
            row.back()
            compare(stepSpy.count, 0)
            // another finger, as the system counts them on
            const next = touchEvent(step)
            next.press(1, step, 10, 10).commit()
            next.release(1, step, 10, 10).commit()
            compare(stepSpy.count, 1)
        }
        function test_firesOnLiftOnce() {
            const touch = touchEvent(key)
            touch.press(0, key, 10, 10).commit()
            compare(spy.count, 0)
            verify(key.down)
            touch.release(0, key, 10, 10).commit()
            compare(spy.count, 1)
            verify(!key.down)
        }
        function test_mouse() {
            mouseClick(target(key))
            compare(spy.count, 1)
        }
        function test_slideOffCancels() {
            slideOff(key)
            compare(spy.count, 0)
            tap(key)
            compare(spy.count, 1)
        }
        function test_aFingerThatTravelsHasTappedNothing_data() {
            return [{tag: "rolled a little", by: 40, counts: 1}, {tag: "along the key", by: 60, counts: 0}]
        }
        function test_aFingerThatTravelsHasTappedNothing(row) {
            const touch = touchEvent(key)
            touch.press(0, key, 10, 20).commit()
            touch.move(0, key, 10 + row.by, 20).commit()
            touch.release(0, key, 10 + row.by, 20).commit()
            compare(spy.count, row.counts)
        }
        function test_secondTapAfter_data() {
            return [{tag: "60 ms", after: 60, counts: 1}, {tag: "500 ms", after: 500, counts: 2}]
        }
        function test_secondTapAfter(row) {
            tap(key)
            wait(row.after)
            tap(key)
            compare(spy.count, row.counts)
        }
        function test_secondTapByKeyboardTooSoonDoesNothing() {
            focusByKey(key)
            keyClick(Qt.Key_Return)
            keyClick(Qt.Key_Space)
            compare(spy.count, 1)
        }
        function test_quickTapsOnTwoKeysBothCount() {
            tap(key)
            tap(neighbour)
            compare([spy.count, nextSpy.count], [1, 1])
        }
        function test_secondTapOnWhatTookItsPlaceDoesNothing() {
            tap(key)
            key.visible = false
            instead.visible = true
            tap(instead)
            compare(insteadSpy.count, 0)
            wait(Theme.tapQuiet + 20)
            tap(instead)
            compare(insteadSpy.count, 1)
        }
        function test_stepKeysTakeQuickTaps() {
            tap(step)
            tap(step)
            tap(step)
            compare(stepSpy.count, 3)
        }
    }
}
