// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Ui

/** A test case that walks through the app's flow by finger: scrolls to what it wants and taps it. */
ControlCase {
    id: root

    required property PageFlow flow
    /** How often the screen has been touched. */
    property int tapCount: 0
    /** Nothing is touched: Tab goes to what is wanted, and Return presses it. */
    property bool byKeys: false

    function part(name: string): Item {
        let found = null
        root.tryVerify(() => { found = root.shown(root.flow.currentItem, name); return found !== null }, 2000, "on the page: " + name)
        return found
    }
    /** The visible item of that name. */
    function shown(item: Item, name: string): Item {
        if (!item || !item.visible)
            return null
        if (item.objectName === name)
            return item
        for (const child of root.childrenOf(item)) {
            const found = root.shown(child, name)
            if (found)
                return found
        }
        return null
    }
    /** Scrolls until the item is in sight, as a thumb would, and taps the button in it. */
    function press(name: string, within = null) {
        const item = within ? root.shown(within, name) : root.part(name)
        root.verify(item, "on the page: " + name)
        root.bring(item)
        root.verify(root.target(item), "can be tapped: " + name)
        root.push(root.target(item))
    }
    function push(key: Item) {
        TapGuard.forget()
        if (root.byKeys) {
            root.tabTo(key)
            root.keyClick(Qt.Key_Return)
        } else {
            root.tapCount += 1
            root.tap(key)
        }
        root.wait(1)
    }
    /** Every thing on the page comes round; what does not cannot be reached by keys. */
    function tabTo(key: Item) {
        for (let i = 0; i < 200 && !key.activeFocus; ++i)
            root.keyClick(Qt.Key_Tab)
        root.verify(key.activeFocus, "reached by Tab: " + AccessProbe.name(key))
    }
    function bring(item: Item) {
        PageAudit.settle(root.flow)
        for (let p = item.parent; p; p = p.parent)
            if (p instanceof Flickable && p.contentHeight > p.height) {
                const y = item.mapToItem(p.contentItem, 0, 0).y
                p.contentY = Math.max(0, Math.min(p.contentHeight - p.height, y - p.height / 3))
            }
        root.wait(1)
    }
    function choose(row: string, option: string) {
        const item = root.part(row)
        root.bring(item)
        for (const key of root.targets(item))
            if (AccessProbe.name(key) === option || AccessProbe.name(key).endsWith(": " + option)) {
                // a row of many options may be longer than what is in sight
                root.bring(key)
                root.push(key)
                return
            }
        root.fail("no option " + option + " in " + row)
    }
    /** From the kit to the first step of measuring a new thing of a kind. */
    function measureNew(kind: string) {
        root.press("newOther")
        root.press("kind:" + kind)
    }
    /** Keys a number on the open pad and keeps it. */
    function keyIn(digits: string) {
        if (root.byKeys) {
            root.tabTo(root.target(root.part("key 1")))
            for (const digit of digits)
                root.keyClick(digit)
        } else {
            for (const digit of digits)
                root.press(digit === "." ? "key point" : "key " + digit)
        }
        root.compare(root.part("keyNumber").text, digits)
        root.press("mainAction")
    }
}
