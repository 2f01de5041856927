// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Model
import Steelyard.Theme
import Steelyard.Ui

/** Where each page leads, that every way back is the same one, and that nothing half entered is lost or silently kept. */
Item {
    id: root

    width: 360
    height: 720

    PageFlow {
        id: flow
        anchors.fill: parent
        focus: true
    }
    FlowCase {
        id: testCase

        name: "Flow"
        flow: flow

        function init() {
            testCase.reset()
            TheDeskFiller.full(TheDesk)
            flow.go(flow.kitPlace)
        }
        /** Leaves the page by one of the ways there are. */
        function leave(way: string) {
            if (way === "arrow")
                testCase.press("back")
            else {
                flow.currentItem.forceActiveFocus()
                testCase.keyClick(way === "esc" ? Qt.Key_Escape : Qt.Key_Back)
            }
            testCase.wait(1)
        }
        function test_every_way_back_is_one_data() {
            return [{tag: "arrow"}, {tag: "esc"}, {tag: "back"}]
        }
        function test_every_way_back_is_one(way) {
            testCase.press("barHere")
            testCase.press("field:bar")
            testCase.compare(flow.depth, 3)
            testCase.press("key 1")
            testCase.leave(way.tag)
            testCase.compare(flow.depth, 2)
            testCase.compare(testCase.part("field:bar").value, "20", "half a number is not kept")
            testCase.leave(way.tag)
            testCase.compare(flow.depth, 1)
        }
        function test_news_of_the_vault_comes_first_data() {
            return [{tag: "esc"}, {tag: "back"}, {tag: "key"}]
        }
        function test_news_of_the_vault_comes_first(way) {
            TheDeskFiller.news(TheVault)
            testCase.compare(flow.depth, 2)
            testCase.verify(testCase.part("news:0").head.includes("12 entries"))
            if (way.tag === "key")
                testCase.press("mainAction")
            else
                testCase.leave(way.tag)
            testCase.compare(flow.depth, 1)
            testCase.compare(TheVault.news.length, 0)
        }
        function test_news_of_the_vault_waits_for_a_form() {
            testCase.press("barHere")
            TheDeskFiller.news(TheVault)
            testCase.compare(flow.depth, 2)
            testCase.verify(testCase.part("field:bar"), "the form stands as it was")
            testCase.leave("esc")
            testCase.verify(testCase.part("news:0"), "now it comes")
            testCase.leave("esc")
            testCase.compare(flow.depth, 1)
        }
        function test_back_at_a_place_ends_at_the_set_up_data() {
            return [{tag: "esc"}, {tag: "back"}]
        }
        function test_back_at_a_place_ends_at_the_set_up(way) {
            flow.go(flow.squadPlace)
            testCase.leave(way.tag)
            testCase.compare(flow.place, flow.kitPlace)
            testCase.leave(way.tag)
            testCase.compare(flow.place, flow.kitPlace)
            testCase.compare(flow.depth, 1)
            testCase.part("picture")
        }
        function test_a_half_measured_chain_waits() {
            testCase.press("hangMore")
            testCase.measureNew("chain")
            testCase.press("form")
            testCase.press("field:length")
            testCase.keyIn("150")
            testCase.press("back")
            testCase.press("back")
            testCase.verify(testCase.part("newOther").fact.length > 0, "the list says that one was begun")
            testCase.measureNew("chain")
            testCase.press("back")
            testCase.compare(testCase.part("keyNumber").text, "150")
            testCase.press("back")
            testCase.press("form")
            testCase.compare(testCase.part("field:length").value, "150")
            testCase.verify(!testCase.part("mainAction").enabled, "nothing to keep yet")
            testCase.press("throw")
            testCase.compare(testCase.part("newOther").fact, "")
        }
        function test_a_thing_out_of_the_kit_is_off_the_bar_and_its_entries_wait() {
            testCase.press("hangMore")
            testCase.press("measure", testCase.part("item:3"))
            testCase.press("form")
            testCase.press("throw")
            testCase.verify(testCase.part("newOther").fact.length > 0)
            testCase.press("back")
            testCase.compare(testCase.part("hung:0").what, "Band B1")
        }
        function test_a_measured_thing_again_from_the_bar() {
            testCase.press("hung:0")
            testCase.press("measureAgain")
            testCase.press("form")
            testCase.press("field:length")
            testCase.keyIn("80")
            testCase.press("mainAction")
            testCase.press("mainAction")
            testCase.compare(flow.depth, 1)
            testCase.press("hangMore")
            testCase.verify(testCase.part("item:3").how.includes("80 cm"), testCase.part("item:3").how)
        }
        function test_taken_off_the_bar() {
            testCase.press("hung:0")
            testCase.press("takeOff")
            testCase.compare(flow.depth, 1)
            testCase.compare(testCase.part("hung:0").what, "Band B1")
        }
        function test_a_load_that_cannot_be_hung_offers_its_neighbours() {
            testCase.press("stepType")
            for (const key of ["key 8", "key 3"])
                testCase.press(key)
            testCase.press("mainAction")
            testCase.compare(flow.depth, 2, "it is not kept")
            testCase.verify(testCase.saying(testCase.part("offer:0"), "Hang 82.5 kg"))
            testCase.press("offer:1")
            testCase.compare(flow.depth, 1)
            testCase.compare(testCase.part("load").value, "85 kg")
        }
        function test_an_odd_hanging_is_left_out_and_taken_in_again() {
            testCase.press("hangMore")
            testCase.press("measure", testCase.part("item:1"))
            testCase.press("form")
            testCase.part("odd")
            const before = testCase.part("answer").text
            testCase.press("leaveOut", testCase.part("hanging:3"))
            testCase.tryVerify(() => testCase.shown(flow.currentItem, "odd") === null)
            testCase.verify(testCase.part("answer").text !== before)
            testCase.press("leaveOut", testCase.part("hanging:3"))
            testCase.compare(testCase.part("answer").text, before)
        }
        function test_a_mark_that_may_be_missing_is_left_out() {
            testCase.press("marks")
            testCase.press("field:rack")
            testCase.press("leaveEmpty")
            testCase.compare(testCase.part("field:rack").value, "not entered")
            testCase.press("field:top")
            testCase.compare(testCase.shown(flow.currentItem, "leaveEmpty"), null, "the top cannot be left out")
        }
        function test_preferences_take_effect_at_once() {
            flow.go(flow.squadPlace)
            testCase.press("preferences")
            testCase.choose("theme", "dark")
            testCase.compare(ThePreferences.theme, 1)
            testCase.choose("textSize", "largest")
            testCase.compare(ThePreferences.textSize, 3)
            testCase.choose("theme", "light")
            testCase.choose("textSize", "usual")
            testCase.press("back")
            testCase.part("preferences")
        }
        function test_a_language_is_spoken_at_once() {
            flow.go(flow.squadPlace)
            testCase.press("preferences")
            testCase.choose("language", "Deutsch")
            testCase.compare(flow.currentItem.heading, "Ein\u00adstellungen")
            testCase.choose("language", "Español")
            testCase.compare(flow.currentItem.heading, "Preferencias")
            testCase.press("back")
            testCase.compare(flow.currentItem.heading, "Plantel", "the page beneath speaks it too")
            testCase.press("preferences")
            testCase.choose("language", "English")
            testCase.compare(flow.currentItem.heading, "Preferences")
            testCase.choose("language", "as the device")
            testCase.compare(ThePreferences.language, 0)
        }
        function test_keys_and_display_are_chosen() {
            flow.go(flow.squadPlace)
            testCase.press("preferences")
            testCase.choose("bigKeys", "big, for gloves")
            testCase.verify(ThePreferences.bigKeys)
            testCase.choose("bigKeys", "usual")
            testCase.choose("staysOn", "as the device")
            testCase.verify(!ThePreferences.staysOn)
            testCase.choose("staysOn", "stays on")
            testCase.verify(ThePreferences.staysOn && !ThePreferences.bigKeys)
        }
        /** The number is asked about in place, and kept by a second tap; another key takes the question back. */
        function test_a_number_far_from_last_time_is_asked_about() {
            TheDeskFiller.lastTime(TheDesk, 60)
            testCase.press("stepType")
            for (const digit of "140")
                testCase.press("key " + digit)
            testCase.press("mainAction")
            testCase.compare(flow.depth, 2, "it stays on the page")
            testCase.compare(testCase.part("keyNumber").refusal, "140 kg? Last time it was 60 kg.")
            testCase.verify(testCase.part("mainAction").text !== "KEEP", "the key says what it does now")
            testCase.press("key rub")
            testCase.compare(testCase.part("mainAction").text, "KEEP")
            testCase.press("key 0")
            testCase.press("mainAction")
            testCase.press("mainAction")
            testCase.compare(flow.depth, 1)
            testCase.compare(testCase.part("load").value, "140 kg")
        }
        function test_the_picture_as_a_table() {
            testCase.press("heights")
            const title = testCase.part("answer").text
            const first = testCase.part("line:0")
            testCase.verify(first.mark && first.at.endsWith("top"), first.at)
            testCase.press("back")
            testCase.compare(testCase.part("answer").text.split("\u00a0").join(" "), title, "the picture says the same")
        }
        function test_read_at_any_height() {
            const picture = testCase.part("picture")
            testCase.compare(picture.readingText, "")
            picture.readAt(0.9)
            testCase.verify(picture.readingText.startsWith("90 cm: "), picture.readingText)
            TheDeskFiller.empty(TheDesk)
            testCase.compare(picture.readingText, "", "a reading belongs to its path")
        }
    }
}
