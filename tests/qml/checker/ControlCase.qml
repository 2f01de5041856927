// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import QtTest
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** A test case with a finger and a keyboard. */
TestCase {
    id: root

    readonly property var forms: [{tag: "phone", width: 360, height: 720}, {tag: "phone on its side", width: 720, height: 360},
        {tag: "tablet upright", width: 800, height: 1000}, {tag: "tablet", width: 1280, height: 800}]

    when: windowShown

    function init() {
        root.reset()
    }
    /** Daylight, a phone, the usual text size, and no tap a moment ago. */
    function reset() {
        TapGuard.forget()
        Theme.mode = Theme.Mode.Light
        Theme.textFactor = 1
        Theme.fit(360, 720)
    }
    /** What takes the tap inside a control, or the item itself. */
    function target(item: Item): Item {
        if (item instanceof Tappable || item instanceof T.TextField)
            return item
        for (let i = 0; i < item.children.length; ++i) {
            const found = root.target(item.children[i])
            if (found)
                return found
        }
        return null
    }
    function childrenOf(item: Item): var {
        const list = []
        for (let i = 0; i < item.children.length; ++i)
            list.push(item.children[i])
        return list
    }
    /** The visible piece of text that says just this. */
    function saying(item: Item, text: string): Item {
        if (item instanceof Text && item.text === text)
            return item
        for (const child of root.childrenOf(item)) {
            const found = child.visible ? root.saying(child, text) : null
            if (found)
                return found
        }
        return null
    }
    function targets(item: Item): var {
        let list = item instanceof Tappable && item.visible && item.opacity > 0 ? [item] : []
        for (let i = 0; i < item.children.length; ++i)
            if (item.children[i].visible && item.children[i].opacity > 0)
                list = list.concat(root.targets(item.children[i]))
        return list
    }
    function tap(item: Item) {
        const touch = root.touchEvent(item)
        touch.press(0, item, item.width / 2, item.height / 2).commit()
        touch.release(0, item, item.width / 2, item.height / 2).commit()
    }
    function slideOff(item: Item) {
        const touch = root.touchEvent(item)
        touch.press(0, item, item.width / 2, item.height / 2).commit()
        touch.move(0, item, item.width / 2, item.height + 200).commit()
        touch.release(0, item, item.width / 2, item.height + 200).commit()
    }
    function focusByKey(item: Item) {
        root.target(item).forceActiveFocus(Qt.TabFocusReason)
        root.verify(root.target(item).activeFocus, "takes the keyboard")
    }
    /** Runs `check` at every form and text size. */
    function atEverySize(check: var) {
        for (const form of root.forms)
            for (const factor of [1, 1.25, 1.5, 2]) {
                Theme.fit(form.width, form.height)
                Theme.textFactor = factor
                root.wait(1)
                check(form.tag + ", text " + factor)
            }
        root.reset()
    }
    function atLeast(item: Item, width: real, height: real, tag: string) {
        root.verify(item.width >= width && item.height >= height,
                    item.width + " x " + item.height + " at " + tag + ", needs " + width + " x " + height)
    }
}
