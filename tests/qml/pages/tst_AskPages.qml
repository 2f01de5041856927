// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Asking

/** The page of what to hang, in its states, through the checker. */
Item {
    id: root

    width: 1280
    height: 1000

    HangAsker {
        id: theAsker
        desk: TheDesk
    }
    NumberPad {
        id: pad
        editor: theAsker
        key: "top"
    }
    PageChecker {
        id: checker
        testCase: testCase
    }
    Component {
        id: page
        WhatToHangPage { asker: theAsker }
    }
    ControlCase {
        id: testCase

        name: "AskPages"

        function initTestCase() {
            theAsker.lookOn()
        }
        function cleanup() {
            checker.clear()
        }
        /** Wants these pulls and no others, and waits for the answer. */
        function want(pulls: var) {
            for (const place of ["bottom", "zone", "top", "mean"]) {
                pad.key = place
                pad.clear()
            }
            for (const place in pulls) {
                pad.key = place
                for (const digit of pulls[place])
                    pad.press(digit)
                testCase.verify(pad.keep(), pad.refusal)
            }
            testCase.tryVerify(() => theAsker.state !== HangAsker.Looking, 20000)
        }
        function test_page_data() {
            return [{tag: "nothing wanted yet", pulls: {}, state: HangAsker.Idle},
                {tag: "one wanted", pulls: {top: "90"}, state: HangAsker.Proved},
                {tag: "all wanted", pulls: {bottom: "85", zone: "92.5", top: "97.5", mean: "92.5"}, state: HangAsker.Proved},
                {tag: "not with this kit", pulls: {bottom: "40", top: "160"}, state: HangAsker.Proved},
                {tag: "no marks", pulls: {top: "90"}, empty: true, state: HangAsker.Refused}]
        }
        function test_page(row) {
            if (row.empty)
                TheDeskFiller.empty(TheDesk)
            else
                TheDeskFiller.tools(TheDesk)
            checker.check({name: row.tag, component: page, setup: () => {
                testCase.want(row.pulls)
                testCase.compare(theAsker.state, row.state)
            }})
        }
    }
}
