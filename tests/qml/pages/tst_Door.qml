// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Door

/** The pages before the vault is open, in their main states, through the checker, and typed through by key. */
Item {
    id: root

    width: 1280
    height: 1000

    VaultStandIn {
        id: stand
    }
    VaultMaker {
        id: theMaker
        vault: stand.vault
    }
    PageChecker {
        id: checker
        testCase: testCase
    }
    Component {
        id: welcome
        WelcomePage { maker: theMaker }
    }
    Component {
        id: passphrase
        PassphrasePage { maker: theMaker }
    }
    Component {
        id: code
        CodePage { maker: theMaker }
    }
    Component {
        id: retype
        RetypePage { maker: theMaker }
    }
    Component {
        id: unlock
        UnlockPage { vault: stand.vault }
    }
    Component {
        id: stopped
        StoppedPage { vault: stand.vault }
    }
    ControlCase {
        id: testCase

        name: "Door"

        function cleanup() {
            checker.clear()
            stand.answer(-1)
        }
        function find(item: Item, name: string): Item {
            if (item.objectName === name && item.visible)
                return item
            for (const child of testCase.childrenOf(item)) {
                const found = child.visible ? testCase.find(child, name) : null
                if (found)
                    return found
            }
            return null
        }
        function field(page: Item, entry: string): Item {
            const found = testCase.find(page, entry)
            testCase.verify(found, entry)
            return found.field
        }
        function type(field: Item, text: string) {
            field.forceActiveFocus()
            testCase.wait(1)
            for (const key of text)
                testCase.keyClick(key)
        }
        function test_page_data() {
            return [{tag: "welcome", component: welcome, before: () => stand.none()},
                {tag: "welcome, disk full", component: welcome, before: () => testCase.makeAndFail(22)},
                {tag: "five words", component: passphrase, before: () => theMaker.choose(true)},
                {tag: "own passphrase", component: passphrase, before: () => theMaker.choose(false)},
                {tag: "own passphrase, too short", component: passphrase, before: () => theMaker.choose(false),
                    setup: page => { testCase.type(testCase.field(page, "first"), "short"); theMaker.takePassphrase(testCase.field(page, "first"), testCase.field(page, "second")) }},
                {tag: "recovery code", component: code, before: () => testCase.toTheCode()},
                {tag: "recovery code again", component: retype, before: () => { testCase.toTheCode(); theMaker.codeWritten() }},
                {tag: "recovery code again, mistaken", component: retype, before: () => { testCase.toTheCode(); theMaker.codeWritten() },
                    setup: page => testCase.type(testCase.field(page, "entry"), "AAAAAA-AAAAAB-AAA")},
                {tag: "unlock", component: unlock, before: () => stand.locked(), setup: page => testCase.type(testCase.field(page, "entry"), "a few words")},
                {tag: "unlock, wrong", component: unlock, before: () => { stand.locked(); testCase.refuse(0) }},
                {tag: "unlock the example", component: unlock, before: () => stand.example()},
                {tag: "unlock by code", component: unlock, before: () => stand.locked(), setup: page => { page.turn(); testCase.type(testCase.field(page, "entry"), "abcd") }},
                {tag: "stopped, in use", component: stopped, before: () => stand.stopped(12)},
                {tag: "stopped, damaged", component: stopped, before: () => stand.stopped(18)}]
        }
        /** A secret is refused at the door by a code. */
        function refuse(code: int) {
            stand.answer(code)
            const page = testCase.createTemporaryObject(unlock, root, {width: 360, height: 720})
            if (stand.vault.state === VaultService.Locked) {
                testCase.type(testCase.field(page, "entry"), "x")
                page.open()
                testCase.tryVerify(() => stand.vault.state !== VaultService.Working)
            }
            page.destroy()
            testCase.wait(1)
        }
        /** Everything is typed as it should be, and the vault cannot be made. */
        function makeAndFail(code: int) {
            stand.none()
            stand.answer(code)
            testCase.makeAll()
            testCase.tryVerify(() => stand.vault.state === VaultService.NoVault)
            testCase.verify(stand.vault.head !== "")
        }
        function makeAll() {
            testCase.toTheCode()
            const page = testCase.createTemporaryObject(retype, root, {width: 360, height: 720})
            // keys stand in their places from the first picture on
            testCase.waitForRendering(page)
            const entry = testCase.field(page, "entry")
            // the code is copied before it is gone
            stand.copy(theMaker.code, entry)
            theMaker.codeWritten()
            theMaker.compare(entry)
            testCase.verify(testCase.find(page, "mainAction").enabled)
            testCase.tap(testCase.target(testCase.find(page, "mainAction")))
            testCase.compare(entry.count, 0)
            page.destroy()
            testCase.wait(1)
        }
        function toTheCode() {
            while (theMaker.back()) { }
            theMaker.choose(false)
            const page = testCase.createTemporaryObject(passphrase, root, {width: 360, height: 720})
            for (const entry of ["first", "second"])
                testCase.type(testCase.field(page, entry), "a long sentence")
            page.take()
            page.destroy()
            testCase.wait(1)
            testCase.compare(theMaker.step, VaultMaker.Code)
        }
        function test_page(row) {
            row.before()
            checker.check({name: row.tag, component: row.component, setup: row.setup})
        }
        function test_example_opens_with_the_passphrase_that_is_shown() {
            stand.example()
            const page = testCase.createTemporaryObject(unlock, root, {width: 360, height: 720})
            testCase.waitForRendering(page)
            testCase.verify(testCase.find(page, "sampleNote").text.endsWith(stand.vault.samplePassphrase))
            testCase.compare(testCase.find(page, "otherWay"), null)
            testCase.tap(testCase.target(testCase.find(page, "openSample")))
            testCase.tryCompare(stand.vault, "state", VaultService.Open)
            testCase.compare(stand.passphrase, stand.vault.samplePassphrase)
            stand.locked()
            testCase.compare(testCase.find(page, "sampleNote"), null)
            testCase.compare(testCase.find(page, "openSample"), null)
        }
        function test_made_by_typing_everything_back() {
            stand.none()
            testCase.makeAll()
            testCase.tryVerify(() => stand.vault.state === VaultService.Open)
            testCase.compare(stand.passphrase, "a long sentence")
        }
        function test_unlock_by_keys_alone() {
            stand.locked()
            const page = testCase.createTemporaryObject(unlock, root, {width: 360, height: 720})
            testCase.verify(testCase.field(page, "entry").activeFocus, "ready to type")
            for (const key of "Correct horse")
                testCase.keyClick(key)
            testCase.compare(testCase.find(page, "count").text, "13 characters")
            testCase.keyClick(Qt.Key_Return)
            testCase.tryVerify(() => stand.vault.state === VaultService.Open)
            testCase.compare(stand.passphrase, "Correct horse")
            page.destroy()
            testCase.wait(1)
        }
        function test_shown_while_held_and_for_a_moment_after_a_tap() {
            stand.locked()
            const page = testCase.createTemporaryObject(unlock, root, {width: 360, height: 720})
            const entry = testCase.field(page, "entry")
            const key = testCase.target(testCase.find(page, "show"))
            testCase.verify(!entry.revealed)
            const touch = testCase.touchEvent(key)
            touch.press(0, key, key.width / 2, key.height / 2).commit()
            testCase.verify(entry.revealed, "while it is held")
            touch.move(0, key, key.width / 2, key.height + 300).commit()
            touch.release(0, key, key.width / 2, key.height + 300).commit()
            testCase.verify(!entry.revealed, "slid off")
            testCase.tap(key)
            testCase.verify(entry.revealed, "after a tap")
            testCase.tryVerify(() => !entry.revealed, 6000, "not for long")
            page.destroy()
            testCase.wait(1)
        }
        function test_a_secret_is_never_said_aloud() {
            stand.locked()
            const page = testCase.createTemporaryObject(unlock, root, {width: 360, height: 720})
            const entry = testCase.field(page, "entry")
            testCase.type(entry, "hush now")
            testCase.compare(AccessProbe.name(entry), "Passphrase")
            testCase.verify(!AccessProbe.description(entry).includes("hush"))
            page.destroy()
            testCase.wait(1)
        }
    }
}
