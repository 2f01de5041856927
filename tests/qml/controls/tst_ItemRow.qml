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

    ItemRow {
        id: row
        width: 328
        what: "Chain, 16 mm, 70 cm"
        how: "straight, on a 45 cm lead"
        leftPiece: "C3"
        rightPiece: "C4"
    }
    SignalSpy {
        id: spy
        target: row
        signalName: "clicked"
    }

    ControlCase {
        name: "ItemRow"

        function init() {
            reset()
            root.LayoutMirroring.enabled = false
            row.leftPiece = "C3"
            row.rightPiece = "C4"
            spy.clear()
        }
        function at(text) {
            const words = saying(row, text)
            return words ? words.mapToItem(row, words.width / 2, words.height / 2) : null
        }
        function test_firesOnce() {
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
            keyClick(Qt.Key_Space)
            compare(spy.count, 1)
        }
        function test_spoken() {
            compare(AccessProbe.name(target(row)), "Chain, 16 mm, 70 cm, straight, on a 45 cm lead")
            compare(AccessProbe.description(target(row)), "left C3, right C4")
        }
        function test_leftStaysLeft() {
            verify(at("C3").x < at("C4").x)
            root.LayoutMirroring.enabled = true
            waitForRendering(row, 50)
            verify(at("C3").x < at("C4").x, "also from right to left")
            verify(at("C4").x < at(row.what).x, "while the row is mirrored")
        }
        function test_largeTextNamesTheSides() {
            compare(at("L"), null)
            Theme.textFactor = 1.5
            waitForRendering(row, 50)
            verify(at("L") && at("R"))
            verify(at("C3").y > at(row.how).y, "pieces below the words")
        }
        function test_longPiecesBelowEachOther() {
            row.leftPiece = "C3, C5 and C7 together"
            row.rightPiece = "C4, C6 and C8 together"
            waitForRendering(row, 50)
            verify(at("C4, C6 and C8 together").y > at("C3, C5 and C7 together").y)
            verify(at("C3, C5 and C7 together").y > at(row.how).y)
            verify(row.implicitHeight >= at("C4, C6 and C8 together").y + Theme.body / 2)
        }
        function test_withoutPieces() {
            row.leftPiece = ""
            row.rightPiece = ""
            compare(AccessProbe.description(target(row)), "")
            atEverySize(tag => atLeast(row, Theme.touch, Theme.touch, tag))
        }
        function test_sizes() {
            atEverySize(tag => {
                waitForRendering(row, 30)
                atLeast(row, Theme.touch, Theme.touch, tag)
                verify(row.implicitHeight >= row.contentHeight)
            })
        }
    }
}
