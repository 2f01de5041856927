// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

Item {
    id: root

    width: 1280
    height: 1000
    LayoutMirroring.childrenInherit: true

    Sheet {
        id: sheet
        width: Theme.pageWidth
        height: Theme.pageHeight
        heading: "Ana Moreau, back squat"
        under: "set-up for today"
        back: "Squad"
        places: ["Squad", "Kit"]
        tools: PressKey { objectName: "tool"; text: "Sun"; size: Theme.key; least: Theme.touchFloor; tight: true }
        pinned: Words { objectName: "pinned"; text: "pinned" }
        foot: PressKey { objectName: "keep"; Layout.fillWidth: true; main: true; text: "KEEP" }

        Repeater {
            id: rows
            model: 20
            PressKey {
                required property int index
                objectName: "row " + index
                Layout.fillWidth: true
                text: "row " + index
            }
        }
    }
    SignalSpy {
        id: backSpy
        target: sheet
        signalName: "backRequested"
    }
    SignalSpy {
        id: placeSpy
        target: sheet
        signalName: "placeChosen"
    }

    ControlCase {
        name: "Sheet"

        function init() {
            reset()
            sheet.back = "Squad"
            sheet.bar = true
            sheet.contentY = 0
            root.LayoutMirroring.enabled = false
            sheet.forceActiveFocus()
            backSpy.clear()
            placeSpy.clear()
        }
        function box(name) {
            const item = findChild(sheet, name)
            return item.mapToItem(sheet, 0, 0, item.width, item.height)
        }
        function test_arrowGoesBackOnce() {
            tap(findChild(sheet, "back"))
            tap(findChild(sheet, "back"))
            compare(backSpy.count, 1)
        }
        function test_escAndBack_data() {
            return [{tag: "esc", key: Qt.Key_Escape}, {tag: "back", key: Qt.Key_Back}]
        }
        function test_escAndBack(row) {
            keyClick(row.key)
            compare(backSpy.count, 1)
            findChild(sheet, "keep").forceActiveFocus()
            keyClick(row.key)
            compare(backSpy.count, 2)
            // a place's first page has no arrow, and the flow decides where Back leads from there
            sheet.back = ""
            keyClick(row.key)
            compare(backSpy.count, 3)
        }
        function test_noArrowWithoutAWayBack() {
            verify(findChild(sheet, "back").visible)
            sheet.back = ""
            verify(!findChild(sheet, "back").visible)
        }
        function test_backIsNamed() {
            compare(AccessProbe.name(target(findChild(sheet, "back"))), "Back to Squad")
        }
        function test_places() {
            const places = () => targets(sheet).filter(key => ["Squad", "Kit"].includes(AccessProbe.name(key)))
            compare(places().map(key => AccessProbe.name(key)), ["Squad", "Kit"])
            compare(places().map(key => AccessProbe.description(key)), ["you are here", ""])
            tap(places()[1])
            compare(placeSpy.count, 1)
            compare(placeSpy.signalArguments[0][0], 1)
            sheet.bar = false
            compare(places().length, 0)
        }
        function test_headAndFootStayAndCover() {
            waitForRendering(sheet, 100)
            const before = [box("back").y, box("pinned").y, box("keep").y]
            sheet.contentY = 300
            waitForRendering(sheet, 100)
            compare([box("back").y, box("pinned").y, box("keep").y], before)
            verify(box("row 19").y > before[2], "the page is longer than its window")
            tap(findChild(sheet, "keep"))
        }
        /** On a tablet the keys of a short page stand near it, on a phone under the thumb. */
        function test_keysFollowAShortPage() {
            rows.model = 2
            sheet.near = true
            for (const form of forms.filter(form => form.height > 400)) {
                Theme.fit(form.width, form.height)
                waitForRendering(sheet, 100)
                const gap = box("keep").y - box("row 1").y - box("row 1").height
                verify(gap >= Theme.apart && (!Theme.wide || gap < Theme.touch), form.tag + ": " + gap)
            }
            rows.model = 20
            waitForRendering(sheet, 100)
            verify(box("keep").y + box("keep").height <= sheet.height, "a long page keeps them in sight")
            sheet.near = false
        }
        function test_tabScrollsIntoSight() {
            waitForRendering(sheet, 100)
            focusByKey(findChild(sheet, "row 19"))
            wait(1)
            const last = box("row 19")
            verify(last.y + last.height <= box("keep").y, "above the foot: " + last.y)
            focusByKey(findChild(sheet, "row 0"))
            wait(1)
            verify(box("row 0").y >= box("pinned").y + box("pinned").height)
        }
        function test_pageKeysScroll() {
            waitForRendering(sheet, 100)
            keyClick(Qt.Key_PageDown)
            verify(sheet.contentY > 100)
            const far = sheet.contentY
            for (let i = 0; i < 30; ++i)
                keyClick(Qt.Key_PageDown)
            verify(sheet.contentY > far)
            const end = sheet.contentY
            keyClick(Qt.Key_PageDown)
            compare(sheet.contentY, end)
            for (let i = 0; i < 40; ++i)
                keyClick(Qt.Key_PageUp)
            compare(sheet.contentY, 0)
        }
        function test_wholeTaskByTab() {
            findChild(sheet, "back").forceActiveFocus(Qt.TabFocusReason)
            const met = new Set()
            for (let i = 0; i < 30; ++i) {
                met.add(AccessProbe.name(Window.window ? Window.window.activeFocusItem : sheet.focused))
                keyClick(Qt.Key_Tab)
            }
            for (const name of ["Back to Squad", "Sun", "row 0", "row 19", "KEEP", "Squad", "Kit"])
                verify(met.has(name), name + " is met")
        }
        function test_keysStandBesideOnAPhonesSide() {
            Theme.fit(720, 360)
            waitForRendering(sheet, 100)
            verify(box("keep").x > 340)
            verify(box("row 0").x + box("row 0").width < box("keep").x)
            verify(box("row 0").y < 200, "the page begins at " + box("row 0").y)
            for (const factor of [1.5, 2]) {
                Theme.textFactor = factor
                waitForRendering(sheet, 100)
                verify(box("keep").y >= Theme.topGap && box("keep").y + box("keep").height < 360 - Theme.touchFloor, "KEEP in sight at " + factor)
                focusByKey(findChild(sheet, "row 5"))
                wait(1)
                verify(box("row 5").y >= box("pinned").y + box("pinned").height, "rows can be reached at " + factor)
            }
        }
        function test_squeezedHeadingStandsBelowItsKeys() {
            const tool = findChild(sheet, "tool")
            waitForRendering(sheet, 100)
            const top = () => saying(sheet, sheet.heading).mapToItem(sheet, 0, 0).y
            verify(top() < box("back").y + box("back").height, "beside while there is room")
            tool.text = "Everything else"
            waitForRendering(sheet, 100)
            verify(top() >= box("back").y + box("back").height, "below when there is none")
            Theme.fit(1280, 800)
            waitForRendering(sheet, 100)
            verify(top() < box("back").y + box("back").height, "beside on a tablet")
            tool.text = "Sun"
        }
        function test_headingBelowWhereThePageAsks() {
            sheet.headingBelow = true
            waitForRendering(sheet, 100)
            const tool = box("tool"), under = saying(sheet, sheet.under).mapToItem(sheet, 0, 0)
            verify(saying(sheet, sheet.heading).mapToItem(sheet, 0, 0).y >= tool.y + tool.height, "the heading stands below its keys")
            verify(under.y < tool.y + tool.height && under.x > box("back").x + box("back").width, "the line under it between them")
            sheet.headingBelow = false
        }
        function test_keysBesideWhereThePageAsks() {
            Theme.fit(1280, 800)
            sheet.footBeside = true
            waitForRendering(sheet, 100)
            verify(box("keep").x >= 640 && box("row 0").x + box("row 0").width < box("keep").x, "beside the body")
            sheet.footBeside = Qt.binding(() => Theme.low)
            waitForRendering(sheet, 100)
            verify(box("keep").x < 100, "and below it again")
        }
        function test_longWordStandsBelowItsKeys() {
            const heading = sheet.heading
            const title = () => saying(sheet, sheet.heading)
            sheet.heading = "Wilhelmina-Konstantinopoulou"
            waitForRendering(sheet, 100)
            verify(title().mapToItem(sheet, 0, 0).y >= box("back").y + box("back").height, "below where a word would run under a key")
            for (const factor of [1, 1.5, 2]) {
                Theme.textFactor = factor
                waitForRendering(sheet, 100)
                verify(title().contentWidth <= title().width + 1, "no word leaves the page at " + factor)
            }
            sheet.heading = heading
        }
        function test_mirrors() {
            root.LayoutMirroring.enabled = true
            waitForRendering(sheet, 100)
            verify(box("back").x > box("tool").x)
            verify(findChild(sheet, "back").text.startsWith("›"))
        }
        function test_backgroundIsThePaper() {
            Theme.mode = Theme.Mode.Dark
            waitForRendering(sheet, 100)
            const picture = grabImage(sheet)
            verify(Qt.colorEqual(picture.pixel(2, 2), Theme.role.paper))
            verify(Qt.colorEqual(picture.pixel(2, 500), Theme.role.paper))
        }
    }
}
