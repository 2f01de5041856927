// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Checker
import Steelyard.Theme

/** A test case that measures what is drawn; a warning of any kind fails it. */
ControlCase {
    id: root

    property int seed: 1

    function init() {
        root.reset()
        root.seed = 1
        root.failOnWarning(/.?/)
    }
    /** Runs `check` on a phone and on a tablet at every text size; a drawing knows no more of the page than its own size. */
    function atEveryTextSize(check: var) {
        for (const form of [root.forms[0], root.forms[3]])
            for (const factor of Theme.textFactors) {
                Theme.fit(form.width, form.height)
                Theme.textFactor = factor
                root.wait(1)
                check(form.tag + ", text " + factor)
            }
        root.reset()
    }
    /** Starts the row of numbers for a data set. */
    function sow(index: int) {
        root.seed = 1 + (index + 1) * 7919
        for (let i = 0; i < 4; ++i)
            root.next(0, 1)
    }
    /** The next number of a fixed row between two bounds (Park and Miller's minimal standard generator, from memory). */
    function next(from: real, to: real): real {
        root.seed = (root.seed * 48271) % 2147483647
        return from + (to - from) * root.seed / 2147483647
    }
    function whole(from: int, to: int): int {
        return Math.floor(root.next(from, to + 0.999999))
    }
    function pick(list: var): var {
        return list[root.whole(0, list.length - 1)]
    }
    /** Visible items below `item` that pass. */
    function all(item: Item, test: var): var {
        let list = []
        for (let i = 0; i < item.children.length; ++i) {
            const child = item.children[i]
            if (!child.visible || child.opacity === 0)
                continue
            if (test(child))
                list.push(child)
            list = list.concat(root.all(child, test))
        }
        return list
    }
    function named(item: Item, name: string): var {
        return root.all(item, child => child.objectName === name)
    }
    /** The one visible item of this name. */
    function one(item: Item, name: string): Item {
        const found = root.named(item, name)
        root.compare(found.length, 1, "items called " + name)
        return found[0]
    }
    function words(item: Item): var {
        return root.all(item, child => child instanceof Text && child.text !== "")
    }
    function box(item: Item, page: Item): rect {
        if (item instanceof Text)
            return item.mapToItem(page, root.inkLeft(item), 0, item.contentWidth, item.contentHeight)
        return item.mapToItem(page, 0, 0, item.width, item.height)
    }
    function inkLeft(text: Text): real {
        return text.effectiveHorizontalAlignment === Text.AlignRight ? text.width - text.contentWidth
             : text.effectiveHorizontalAlignment === Text.AlignHCenter ? (text.width - text.contentWidth) / 2 : 0
    }
    function overlap(a: rect, b: rect): bool {
        return a.x < b.right - 0.5 && b.x < a.right - 0.5 && a.y < b.bottom - 0.5 && b.y < a.bottom - 0.5
    }
    /** No word lies on another, none leaves the page. */
    function clean(page: Item, tag: string, left: var) {
        const list = root.words(page).filter(word => !left || !left(word))
        const boxes = list.map(word => root.box(word, page))
        for (let i = 0; i < list.length; ++i) {
            const b = boxes[i], say = "'" + list[i].text + "'"
            root.verify(b.x >= -1 && b.right <= page.width + 1 && b.y >= -1 && b.bottom <= page.height + 1,
                        tag + ": " + say + " leaves the page " + page.width + " x " + page.height + ": " + b)
            root.verify(list[i].font.pixelSize >= Theme.least, tag + ": " + say + " is set in " + list[i].font.pixelSize)
            for (let k = 0; k < i; ++k)
                root.verify(!root.overlap(b, boxes[k]), tag + ": " + say + " lies on '" + list[k].text + "': " + b + " " + boxes[k])
        }
    }
    /** A right-to-left page leaves the drawing as it was, to the pixel. */
    function staysUnmirrored(page: Item, item: Item) {
        const before = root.grabImage(item)
        page.LayoutMirroring.enabled = true
        page.LayoutMirroring.childrenInherit = true
        root.wait(1)
        const after = root.grabImage(item)
        page.LayoutMirroring.enabled = false
        root.verify(after.equals(before), "a right-to-left page turns it")
    }
    /** Every item of this name stands between two x. */
    function between(page: Item, name: string, from: real, to: real, tag: string) {
        for (const item of root.named(page, name)) {
            const b = root.box(item, page)
            root.verify(b.x >= from - 1 && b.right <= to + 1, tag + ": " + name + " at " + b.x + " to " + b.right + ", page " + from + " to " + to)
        }
    }
}
