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
    DeskWork {
        id: deskWork
        desk: TheDesk
        book: TheBook
    }
    Component {
        id: page
        WhatToHangPage { asker: theAsker }
    }
    Component {
        id: pullsPage
        PullsPage { editor: PullsEditor { desk: TheDesk; work: deskWork } }
    }
    ControlCase {
        id: testCase

        name: "AskPages"

        function cleanup() {
            checker.clear()
        }
        /** Wants these pulls and no others, and waits for the answer. */
        function want(pulls: var) {
            for (const place of ["bottom", "zone", "top", "mean", "maximum"]) {
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
                {tag: "no marks", pulls: {top: "90"}, empty: true, state: HangAsker.Refused},
                {tag: "in per cent", pulls: {maximum: "110", bottom: "77.5", top: "87.5"}, inPercent: true, state: HangAsker.Proved},
                {tag: "in per cent of nothing", pulls: {top: "87.5"}, inPercent: true, state: HangAsker.Refused},
                {tag: "level", pulls: {bottom: "75", top: "97.5"}, level: true, pulled: true, state: HangAsker.Proved},
                {tag: "level with nothing", pulls: {top: "97.5"}, level: true, state: HangAsker.Refused}]
        }
        function test_page(row) {
            if (row.empty)
                TheDeskFiller.empty(TheDesk)
            else
                TheDeskFiller.tools(TheDesk)
            if (row.pulled)
                TheDeskFiller.asked(TheDesk, 75, 97.5, true)
            checker.check({name: row.tag, component: page, setup: () => {
                theAsker.inPercent = row.inPercent === true
                theAsker.level = row.level === true
                testCase.want(row.pulls)
                testCase.compare(theAsker.state, row.state)
                testCase.compare(theAsker.picture.pull.length > 0, row.pulled === true)
            }})
        }
        function test_pulls_data() {
            return [{tag: "no pulls yet", pulled: false}, {tag: "pulls at four heights", pulled: true}]
        }
        function test_pulls(row) {
            TheDeskFiller.tools(TheDesk)
            if (row.pulled)
                TheDeskFiller.asked(TheDesk, 75, 97.5, true)
            checker.check({name: row.tag, component: pullsPage})
        }
    }
}
