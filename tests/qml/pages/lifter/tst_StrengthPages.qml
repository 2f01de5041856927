// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Strength

/** The pages of how strong somebody is, in their main states, through the checker. */
Item {
    id: root

    width: 1280
    height: 1000

    StrengthView {
        id: theView
        book: TheBook
        athleteId: ""
    }
    LiftStrengthView {
        id: theLift
        book: TheBook
        athleteId: theView.athleteId
        lift: "1"
    }
    TestEditor {
        id: theTest
        desk: TheDesk
        book: TheBook
        athleteId: theView.athleteId
        lift: "1"
    }
    NumberPad {
        id: pad
        editor: theTest
        key: "load"
    }
    DeskWork {
        id: deskWork
        desk: TheDesk
        book: TheBook
    }
    PageChecker {
        id: checker
        testCase: testCase
    }
    Component {
        id: strength
        StrengthPage { view: theView }
    }
    Component {
        id: lift
        LiftStrengthPage { view: theLift }
    }
    Component {
        id: test
        TestPage { editor: theTest }
    }
    Component {
        id: ramp
        RampPage { view: RampView { desk: TheDesk } }
    }
    Component {
        id: shares
        RampPage { view: RampView { desk: TheDesk } changing: true }
    }
    Component {
        id: setup
        SetupPage { view: SetupView { desk: TheDesk } work: deskWork; places: ["Squad", "Kit"]; place: 1 }
    }
    ControlCase {
        id: testCase

        name: "StrengthPages"

        function cleanup() {
            checker.clear()
            theTest.throwDraft()
            theTest.testId = ""
            theTest.lift = "1"
        }
        function person(place: int, tested: bool) {
            testCase.reset()
            TheDeskFiller.tools(TheDesk)
            TheDeskFiller.people(TheBook, 2)
            if (tested)
                TheDeskFiller.tested(TheBook)
            theView.athleteId = TheDeskFiller.athleteId(TheBook, place)
        }
        function key(field: string, digits: string) {
            pad.key = field
            for (const digit of digits)
                pad.press(digit)
            testCase.verify(pad.keep(), pad.refusal)
        }
        function typed(reps: int) {
            testCase.person(0, false)
            testCase.key("load", "102.5")
            theTest.stepReps(true)
            for (let i = 5; i < reps; ++i)
                theTest.stepReps(true)
        }
        function old() {
            testCase.person(0, true)
            theTest.testId = theLift.tests.data(theLift.tests.index(1, 0), Qt.UserRole)
        }
        function chin() {
            testCase.person(0, true)
            theTest.lift = "12"
            testCase.key("load", "5")
            theTest.setMaximum(true)
            theTest.setToday(false)
        }
        function hers(tested: bool) {
            testCase.person(0, tested)
            deskWork.take(theView.athleteId, "1")
        }
        function test_page_data() {
            return [{tag: "strength, none", component: strength, before: () => testCase.person(0, false)},
                {tag: "strength", component: strength, before: () => testCase.person(0, true)},
                {tag: "strength of a minor", component: strength, before: () => testCase.person(1, false)},
                {tag: "a lift, none", component: lift, before: () => testCase.person(0, false)},
                {tag: "a lift", component: lift, before: () => testCase.person(0, true)},
                {tag: "a test, nothing typed", component: test, before: () => testCase.person(0, false)},
                {tag: "a test, a set", component: test, before: () => testCase.typed(5)},
                {tag: "a test, refused", component: test, before: () => testCase.typed(14)},
                {tag: "a test put right", component: test, before: () => testCase.old()},
                {tag: "a chin-up tried out on another day", component: test, before: () => testCase.chin()},
                {tag: "a test of a minor", component: test, before: () => testCase.person(1, false)},
                {tag: "warm-up", component: ramp, before: () => testCase.person(0, false)},
                {tag: "warm-up, shares", component: shares, before: () => testCase.person(0, false)},
                {tag: "warm-up to nothing", component: ramp, before: () => { testCase.person(0, false); TheDeskFiller.empty(TheDesk) }},
                {tag: "set-up in per cent", component: setup, before: () => testCase.hers(true)},
                {tag: "set-up, not tested", component: setup, before: () => testCase.hers(false)}]
        }
        function test_page(row) {
            row.before()
            checker.check({name: row.tag, component: row.component})
        }
    }
}
