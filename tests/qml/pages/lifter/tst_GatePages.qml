// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Gates
import Steelyard.Pages.Kit
import Steelyard.Pages.Squad

/** The pages of what somebody may do, in their main states, through the checker. */
Item {
    id: root

    width: 1280
    height: 1000

    StandingView {
        id: standing
        book: TheBook
        athleteId: ""
    }
    ClearanceEditor {
        id: theClearance
        desk: TheDesk
        book: TheBook
        athleteId: standing.athleteId
    }
    StatusEditor {
        id: theStatus
        desk: TheDesk
        book: TheBook
        athleteId: standing.athleteId
    }
    LimitsEditor {
        id: theLimits
        desk: TheDesk
        book: TheBook
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
        id: athlete
        AthletePage { editor: AthleteEditor { desk: TheDesk; book: TheBook; athleteId: standing.athleteId } }
    }
    Component {
        id: dayStatus
        DayStatusPage { view: standing }
    }
    Component {
        id: status
        StatusPage { editor: theStatus }
    }
    Component {
        id: clearances
        ClearancesPage { view: standing }
    }
    Component {
        id: clearance
        ClearancePage { editor: theClearance }
    }
    Component {
        id: endClearance
        EndPage { editor: theClearance }
    }
    Component {
        id: endStatus
        EndPage { editor: theStatus }
    }
    Component {
        id: pickMethod
        PickPage { heading: "Which method?"; options: theClearance.methods; current: 2 }
    }
    Component {
        id: limits
        LimitsPage { editor: theLimits }
    }
    Component {
        id: preferences
        PreferencesPage { }
    }
    Component {
        id: setup
        SetupPage { view: SetupView { desk: TheDesk } work: deskWork; places: ["Squad", "Kit"]; place: 1 }
    }
    ControlCase {
        id: testCase

        name: "GatePages"

        function init() {
            testCase.reset()
            TheDeskFiller.full(TheDesk)
            TheDeskFiller.people(TheBook, 3)
            standing.athleteId = TheDeskFiller.athleteId(TheBook, 0)
        }
        function cleanup() {
            checker.clear()
            for (const editor of [theClearance, theStatus]) {
                editor.throwDraft()
                editor.recordId = ""
            }
            theLimits.throwDraft()
            deskWork.take("", "")
        }
        function someSaid() {
            theStatus.fitness = 1
            for (const index of [1, 8, 15])
                theStatus.turnMethod(index)
            theStatus.turnGroup(2)
            theStatus.text = "left shoulder, nothing above the head"
            theStatus.who = "the physiotherapist"
            theStatus.chooseUntil(4)
        }
        function allSaid() {
            theClearance.lift = 0
            theClearance.method = 1
            theClearance.who = "the head coach"
            theClearance.chooseFrom(1)
            theClearance.chooseUntil(4)
        }
        function test_page_data() {
            const nothing = () => {}
            const cleared = () => TheDeskFiller.cleared(TheBook)
            const who = place => standing.athleteId = TheDeskFiller.athleteId(TheBook, place)
            return [{tag: "athlete, cleared", component: athlete, before: cleared},
                {tag: "day status, none said", component: dayStatus, before: nothing},
                {tag: "day status", component: dayStatus, before: cleared},
                {tag: "status, new", component: status, before: nothing},
                {tag: "status, some", component: status, before: () => testCase.someSaid()},
                {tag: "status, put right", component: status, before: () => { cleared(); theStatus.recordId = TheDeskFiller.statusId(TheBook, 1) }},
                {tag: "status, of a minor", component: status, before: () => { who(1); theStatus.fitness = 1 }},
                {tag: "clearances, none", component: clearances, before: nothing},
                {tag: "clearances", component: clearances, before: cleared},
                {tag: "clearances, have to wait", component: clearances, before: () => who(2)},
                {tag: "clearance, new", component: clearance, before: nothing},
                {tag: "clearance", component: clearance, before: () => testCase.allSaid()},
                {tag: "clearance, of a minor", component: clearance, before: () => { who(1); testCase.allSaid() }},
                {tag: "clearance, put right", component: clearance, before: () => { cleared(); theClearance.recordId = TheDeskFiller.clearanceId(TheBook, 2) }},
                {tag: "take back", component: endClearance, before: () => { cleared(); theClearance.recordId = TheDeskFiller.clearanceId(TheBook, 2) }},
                {tag: "lift it", component: endStatus, before: () => { cleared(); theStatus.recordId = TheDeskFiller.statusId(TheBook, 2) }},
                {tag: "pick a method", component: pickMethod, before: nothing},
                {tag: "limits", component: limits, before: nothing},
                {tag: "limits, own", component: limits, before: () => { theLimits.step("limit0", false); theLimits.step("limit4", true) }},
                {tag: "preferences", component: preferences, before: nothing},
                {tag: "set-up, may not", component: setup, before: () => { cleared(); deskWork.take(standing.athleteId, "8") }},
                {tag: "set-up, to look over", component: setup, before: () => deskWork.take(standing.athleteId, "8")}]
        }
        function test_page(row) {
            row.before()
            checker.check({name: row.tag, component: row.component})
        }
    }
}
