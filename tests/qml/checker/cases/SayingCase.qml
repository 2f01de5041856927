// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Checker
import Steelyard.Drawings
import Steelyard.Model
import Steelyard.Pages.Kit

/** A test case that reads all that a page says, and has it said in every language. */
ControlCase {
    id: root

    /** That is read. */
    property var page: null

    /** What is to be read on an item and below, and what a screen reader would say; names of kit and marks of plates are the coach's. */
    function said(item: Item): var {
        if (!item.visible || item instanceof PlateStrip || item instanceof StockLine || item.objectName === "change")
            return []
        let list = [AccessProbe.name(item), AccessProbe.description(item)]
        if (item instanceof Text)
            list.push(item.text)
        for (const child of root.childrenOf(item))
            list = list.concat(root.said(child))
        return list.filter(text => text !== "").map(text => text.split("Chain, 16 mm, 70 cm").join("Chain").replace(/^(Bar, each side|Each hook): [^,]*/, "$1"))
    }
    /** Those of the page that fit a pattern, once it has found what it looks for. */
    function sayings(pattern: var): var {
        if (root.page.asker)
            root.tryVerify(() => root.page.asker.state === HangAsker.Proved, 20000)
        root.verify(PageAudit.settle(root.page), "comes to rest")
        return root.said(root.page).filter(text => pattern.test(text))
    }
    /** What stood there in English stands there as on a page that is made anew in the other language, and back. */
    function speaksEvery(make: var) {
        root.page = make()
        const english = root.sayings(/./)
        for (const language of [2, 3]) {
            ThePreferences.language = language
            const switched = root.sayings(/./)
            root.verify(switched.join() !== english.join(), "says it otherwise")
            const standing = root.page
            root.page = make()
            const anew = root.sayings(/./)
            root.page.destroy()
            root.page = standing
            root.compare(switched, anew, ThePreferences.languages[language])
        }
        ThePreferences.language = 0
        root.compare(root.sayings(/./), english, "and back")
    }
}
