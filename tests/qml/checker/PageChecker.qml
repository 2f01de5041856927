// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Theme

/** Shows a page at every size, text size and theme that matters and lists what breaks the rules of touch and sight. */
Item {
    id: root

    required property TestCase testCase
    property Item page: null
    property int fingerCount: 0
    readonly property var forms: [{name: "phone", width: 360, height: 720}, {name: "phone on its side", width: 720, height: 360},
        {name: "tablet upright", width: 800, height: 1000}, {name: "tablet", width: 1280, height: 800}]

    width: 1280
    height: 1000

    Rectangle {
        id: frame
        clip: true
        color: Theme.role.paper
    }

    /** What breaks the rules on `item`, seen at this size, as a list of strings. */
    function findings(item: Item, width: real, height: real): var {
        return PageAudit.findings(item, width, height, Theme.wide, Theme.textFactor, Theme.bigKeys)
    }
    /** Loads `row.component` anew at a form; `row.setup`, when given, gets the page. */
    function load(row: var, form: var, mirrored: bool) {
        root.put(form, 1, Theme.Mode.Light)
        frame.LayoutMirroring.enabled = mirrored
        frame.LayoutMirroring.childrenInherit = true
        root.drop()
        // by the component itself: a bound one may not be made by another file's Loader
        root.page = row.component.createObject(frame, {width: form.width, height: form.height})
        root.testCase.verify(root.page, row.name + " can be made")
        root.page.anchors.fill = frame
        if (row.setup)
            row.setup(root.page)
    }
    function put(form: var, factor: real, mode: int) {
        frame.width = form.width
        frame.height = form.height
        Theme.fit(form.width, form.height)
        Theme.textFactor = factor
        Theme.mode = mode
    }
    function look(row: var, form: var, factor: real, mode: int, more: string): var {
        root.put(form, factor, mode)
        root.testCase.verify(PageAudit.settle(frame), row.name + " comes to rest")
        const tag = [row.name, form.name, ["light", "dark", "sun"][mode], "text " + factor].join(", ") + more
        const list = root.findings(frame, form.width, form.height).map(found => tag + ": " + found)
        PageAudit.keepPicture(frame, form.width, form.height, tag.replace(/[ ,.]+/g, "-"))
        return list
    }
    /** One page {name, component, setup} at all sizes; an empty list means that nothing was found. */
    function matrix(row: var): var {
        let list = []
        for (const form of root.forms) {
            root.load(row, form, false)
            for (const factor of [1, 1.5, 2])
                list = list.concat(root.look(row, form, factor, Theme.Mode.Light, ""))
            if (PageAudit.scrollToEnd(frame))
                list = list.concat(root.look(row, form, 2, Theme.Mode.Light, " at its end"))
            if (form.name === "phone" || form.name === "tablet")
                for (const mode of [Theme.Mode.Dark, Theme.Mode.Sun])
                    list = list.concat(root.look(row, form, 1, mode, ""))
        }
        root.load(row, root.forms[0], true)
        list = list.concat(root.look(row, root.forms[0], 1, Theme.Mode.Light, " right to left"))
        PageAudit.speakLonger(true)
        root.load(row, root.forms[0], false)
        list = list.concat(root.look(row, root.forms[0], 1, Theme.Mode.Light, " in longer words"))
        PageAudit.speakLonger(false)
        for (const form of root.forms.slice(0, 2)) {
            Theme.bigKeys = true
            root.load(row, form, false)
            list = list.concat(root.look(row, form, 1, Theme.Mode.Light, " with big keys"))
            Theme.bigKeys = false
        }
        for (const code of ["de", "es"]) {
            PageAudit.speak(code)
            root.load(row, root.forms[0], false)
            list = list.concat(root.look(row, root.forms[0], 1, Theme.Mode.Light, " in " + code), root.look(row, root.forms[0], 2, Theme.Mode.Light, " in " + code))
            list = list.concat(PageAudit.untranslated().map(said => row.name + " in " + code + ": untranslated: " + said))
            PageAudit.speak("")
        }
        root.load(row, root.forms[0], false)
        return list
    }
    /** A wheel turned and a finger flicked on each thing to tap change nothing and press nothing; a page may scroll. */
    function shaken(row: var): var {
        root.load(row, root.forms[0], false)
        root.testCase.verify(PageAudit.settle(frame), row.name + " comes to rest")
        const before = PageAudit.texts(frame), pressed = []
        const keys = root.testCase.targets(frame)
        for (const key of keys)
            key.clicked.connect(() => pressed.push(key.name))
        for (const key of keys) {
            const at = key.mapToItem(frame, key.width / 2, key.height / 2)
            if (at.x < 0 || at.y < 0 || at.x > frame.width || at.y > frame.height)
                continue
            for (const [across, down] of [[0, -120], [0, 120], [-120, 0]])
                root.testCase.mouseWheel(frame, at.x, at.y, across, down)
            for (const [across, down] of [[0, 40], [0, -40], [60, 0]]) {
                // as the system counts fingers on
                const finger = root.testCase.touchEvent(frame), id = ++root.fingerCount
                finger.press(id, frame, at.x, at.y).commit()
                for (const part of [1, 2, 3, 4])
                    finger.move(id, frame, at.x + part * across, at.y + part * down).commit()
                finger.release(id, frame, at.x + 4 * across, at.y + 4 * down).commit()
            }
        }
        root.testCase.verify(PageAudit.settle(frame), row.name + " comes to rest again")
        const list = pressed.map(name => row.name + " shaken: presses " + name)
        const after = PageAudit.texts(frame)
        return after.join("\n") === before.join("\n") ? list : list.concat(row.name + " shaken: says " + after.filter(text => !before.includes(text)).join(" | "))
    }
    /** Fails with every finding of `matrix` and of `shaken`, each on its own line. */
    function check(row: var) {
        const list = root.matrix(row).concat(root.shaken(row))
        for (const found of list)
            console.warn(found)
        root.testCase.compare(list.length, 0, row.name + " breaks no rule")
    }
    function drop() {
        if (root.page)
            root.page.destroy()
        root.page = null
    }
    function clear() {
        PageAudit.speakLonger(false)
        PageAudit.speak("")
        Theme.bigKeys = false
        root.drop()
        frame.LayoutMirroring.enabled = false
        root.put(root.forms[0], 1, Theme.Mode.Light)
    }
}
