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

    Stepper {
        id: stepper
        width: 328
        value: "102.5 kg"
        name: "load"
        downText: "−2.5"
        upText: "+2.5"
    }
    SignalSpy {
        id: downSpy
        target: stepper
        signalName: "stepDown"
    }
    SignalSpy {
        id: upSpy
        target: stepper
        signalName: "stepUp"
    }
    SignalSpy {
        id: typeSpy
        target: stepper
        signalName: "typeRequested"
    }

    ControlCase {
        name: "Stepper"

        function init() {
            reset()
            stepper.canDown = true
            stepper.canUp = true
            stepper.value = "102.5 kg"
            stepper.downText = "−2.5"
            stepper.width = 328
            root.LayoutMirroring.enabled = false
            for (const spy of [downSpy, upSpy, typeSpy])
                spy.clear()
        }
        function counts() {
            return [downSpy.count, typeSpy.count, upSpy.count]
        }
        function test_eachKeyItsOwnSignal() {
            tap(findChild(stepper, "stepDown"))
            compare(counts(), [1, 0, 0])
            tap(findChild(stepper, "stepType"))
            compare(counts(), [1, 1, 0])
            tap(findChild(stepper, "stepUp"))
            compare(counts(), [1, 1, 1])
        }
        function test_quickSteps() {
            for (let i = 0; i < 4; ++i)
                tap(findChild(stepper, "stepUp"))
            compare(counts(), [0, 0, 4])
        }
        function test_typeOpensOnce() {
            tap(findChild(stepper, "stepType"))
            tap(findChild(stepper, "stepType"))
            compare(counts(), [0, 1, 0])
        }
        function test_slideOffCancels() {
            slideOff(findChild(stepper, "stepDown"))
            compare(counts(), [0, 0, 0])
        }
        function test_atTheEnd() {
            stepper.canUp = false
            stepper.canDown = false
            tap(findChild(stepper, "stepUp"))
            tap(findChild(stepper, "stepDown"))
            compare(counts(), [0, 0, 0])
        }
        function test_keyboard() {
            focusByKey(findChild(stepper, "stepDown"))
            keyClick(Qt.Key_Space)
            keyClick(Qt.Key_Tab)
            keyClick(Qt.Key_Return)
            keyClick(Qt.Key_Tab)
            keyClick(Qt.Key_Return)
            compare(counts(), [1, 1, 1])
        }
        function test_names() {
            compare(AccessProbe.name(target(findChild(stepper, "stepDown"))), "load, less: −2.5")
            compare(AccessProbe.name(target(findChild(stepper, "stepType"))), "load: 102.5 kg, type")
            compare(AccessProbe.name(target(findChild(stepper, "stepUp"))), "load, more: +2.5")
        }
        function test_sizes() {
            atEverySize(tag => {
                waitForRendering(stepper, 30)
                for (const key of targets(stepper))
                    atLeast(key, Theme.touchStep, Theme.touchStep, tag)
            })
        }
        function test_twoRowsForLargeTextOnAPhone() {
            const flat = stepper.implicitHeight
            Theme.textFactor = 1.5
            waitForRendering(stepper, 50)
            verify(stepper.implicitHeight > 1.7 * flat)
            Theme.fit(1280, 800)
            stepper.width = 600
            verify(!stepper.below)
        }
        function test_aLongStepIsNeverCut() {
            for (const [value, step] of [["412.5 kg", "−1.25"], ["1 234.56 lb", "−10.05"]]) {
                stepper.value = value
                stepper.downText = step
                atEverySize(tag => {
                    stepper.width = Theme.pageWidth - 2 * Theme.edgeGap
                    for (const key of ["stepDown", "stepType", "stepUp"].map(name => findChild(stepper, name)))
                        verify(key.x >= 0 && key.x + key.width <= stepper.width + 1 && key.y + key.height <= stepper.height + 1, key.objectName + ", " + tag)
                    const down = findChild(stepper, "stepDown"), type = findChild(stepper, "stepType")
                    verify(down.width >= down.implicitWidth - 1 && type.width >= Math.min(stepper.width, stepper.valueWide) - 1, "room for it, " + tag)
                    verify(type.x >= down.x + down.width + 7 || type.y + type.height + 7 <= down.y, "beside or above, " + tag)
                })
            }
        }
        function test_lessStaysLeftInEveryLanguage() {
            root.LayoutMirroring.enabled = true
            waitForRendering(stepper, 50)
            verify(findChild(stepper, "stepDown").x < findChild(stepper, "stepUp").x)
        }
    }
}
