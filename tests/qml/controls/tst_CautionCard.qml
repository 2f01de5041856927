// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Theme

Item {
    id: root

    width: 400
    height: 900
    LayoutMirroring.childrenInherit: true

    CautionCard {
        id: card
        width: 328
        head: "Before it is ready"
        body: "Look over each side."
        points: ["bands: no nick", "collars on, both sides"]
    }
    SignalSpy {
        id: spy
        target: card
        signalName: "accepted"
    }

    ControlCase {
        name: "CautionCard"

        function init() {
            reset()
            card.looked = false
            root.LayoutMirroring.enabled = false
            spy.clear()
        }
        function said(item) {
            let list = item instanceof Text && item.visible ? [item.text] : []
            for (let i = 0; i < item.children.length; ++i)
                if (item.children[i].visible)
                    list = list.concat(said(item.children[i]))
            return list
        }
        function test_noKeyWhereThePageHasOne() {
            const accept = card.accept, high = card.implicitHeight
            card.accept = ""
            verify(!findChild(card, "accept").visible)
            verify(card.implicitHeight <= high - Theme.touch, "nor its room")
            card.accept = accept
        }
        function test_acceptsOnce() {
            tap(findChild(card, "accept"))
            tap(findChild(card, "accept"))
            compare(spy.count, 1)
            verify(!card.looked, "the page decides what is looked over")
        }
        function test_slideOffCancels() {
            slideOff(findChild(card, "accept"))
            compare(spy.count, 0)
        }
        function test_keyboard() {
            focusByKey(findChild(card, "accept"))
            keyClick(Qt.Key_Return)
            compare(spy.count, 1)
        }
        function test_saysEveryPoint() {
            for (const line of ["Before it is ready", "Look over each side.", "bands: no nick", "collars on, both sides", "Looked over"])
                verify(said(card).includes(line), line)
        }
        function test_quietLineAfterwards() {
            const high = card.implicitHeight
            card.looked = true
            compare(said(card), ["Before it is ready: looked over"])
            compare(targets(card).length, 0)
            verify(card.implicitHeight < high / 3)
            compare(card.border.width, 0)
        }
        function test_names() {
            compare(AccessProbe.name(target(findChild(card, "accept"))), "Before it is ready: Looked over")
        }
        function test_sizes() {
            atEverySize(tag => {
                waitForRendering(card, 30)
                const key = findChild(card, "accept")
                atLeast(key, Theme.touch, Theme.touch, tag)
                verify(key.y >= card.children[1].y + card.children[1].height, "key below the words at " + tag)
                verify(key.y + key.height <= card.implicitHeight, "key inside at " + tag)
            })
        }
        function test_mirrors() {
            root.LayoutMirroring.enabled = true
            waitForRendering(card, 50)
            const key = findChild(card, "accept")
            verify(key.x + key.width > card.width - 2 * Theme.indent)
        }
    }
}
