// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Gates
import Steelyard.Pages.Kit
import Steelyard.Theme

/** The pages of what somebody may do, and what the set-up page says of it, show every sentence anew when the language changes. */
Item {
    id: root

    width: 1280
    height: 1000

    StandingView {
        id: standing
        book: TheBook
        athleteId: ""
    }
    DeskWork {
        id: deskWork
        desk: TheDesk
        book: TheBook
    }
    Component {
        id: dayStatusPage
        DayStatusPage { width: root.width; height: root.height; view: standing }
    }
    Component {
        id: clearancesPage
        ClearancesPage { width: root.width; height: root.height; view: standing }
    }
    Component {
        id: statusPage
        StatusPage {
            width: root.width
            height: root.height
            editor: StatusEditor { desk: TheDesk; book: TheBook; athleteId: standing.athleteId; recordId: TheDeskFiller.statusId(TheBook, 1) }
        }
    }
    Component {
        id: clearancePage
        ClearancePage {
            width: root.width
            height: root.height
            editor: ClearanceEditor { desk: TheDesk; book: TheBook; athleteId: standing.athleteId; recordId: TheDeskFiller.clearanceId(TheBook, 2) }
        }
    }
    Component {
        id: limitsPage
        LimitsPage { width: root.width; height: root.height; editor: LimitsEditor { desk: TheDesk; book: TheBook } }
    }
    Component {
        id: setupPage
        SetupPage { width: root.width; height: root.height; view: SetupView { desk: TheDesk } work: deskWork; places: ["Squad", "Kit"]; place: 1 }
    }
    SayingCase {
        id: testCase

        name: "GateLanguages"

        function init() {
            testCase.reset()
            Theme.fit(root.width, root.height)
            TheDeskFiller.full(TheDesk)
            TheDeskFiller.people(TheBook, 1)
            TheDeskFiller.cleared(TheBook)
            standing.athleteId = TheDeskFiller.athleteId(TheBook, 0)
            deskWork.take(standing.athleteId, "8")
        }
        function cleanup() {
            if (testCase.page)
                testCase.page.destroy()
            testCase.page = null
            ThePreferences.language = 0
            deskWork.take("", "")
        }
        function test_everyLanguage_data() {
            return [{tag: "may train today", component: dayStatusPage}, {tag: "cleared for", component: clearancesPage}, {tag: "day status", component: statusPage},
                {tag: "clearance", component: clearancePage}, {tag: "limits", component: limitsPage}, {tag: "set-up, may not", component: setupPage}]
        }
        function test_everyLanguage(row) {
            testCase.speaksEvery(() => row.component.createObject(root))
        }
    }
}
