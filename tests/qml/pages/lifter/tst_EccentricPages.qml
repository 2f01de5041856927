// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Eccentric

/** The pages of a heavier way down, in their states, through the checker. */
Item {
    id: root

    width: 1280
    height: 1000

    PageChecker {
        id: checker
        testCase: testCase
    }
    DeskWork {
        id: deskWork
        desk: TheDesk
        book: TheBook
    }
    ReleasePlanner {
        id: thePlanner
        desk: TheDesk
        work: deskWork
    }
    Component {
        id: page
        EccentricPage {
            planner: thePlanner
            form: ReleaseForm { desk: TheDesk; work: deskWork; part: ReleaseForm.Set }
            view: SetupView { desk: TheDesk }
        }
    }
    Component {
        id: measuresPage
        HookMeasuresPage {
            planner: thePlanner
            hook: ReleaseForm { desk: TheDesk; work: deskWork; part: ReleaseForm.Hook }
            depth: ReleaseForm { desk: TheDesk; work: deskWork; part: ReleaseForm.Depth }
            sides: ReleaseForm { desk: TheDesk; work: deskWork; part: ReleaseForm.Places }
        }
    }
    ControlCase {
        id: testCase

        name: "EccentricPages"

        function cleanup() {
            checker.clear()
        }
        /** A plan with everything measured for somebody, who is cleared or not. */
        function lay(cleared: bool) {
            TheDeskFiller.released(TheDesk, TheBook, cleared)
            deskWork.take(TheDeskFiller.athleteId(TheBook, 0), "1")
        }
        function test_page_data() {
            return [{tag: "ready but for the cautions", cleared: true, way: 0}, {tag: "not cleared", cleared: false, way: 0, forbidden: true},
                {tag: "lifted off", cleared: true, way: 1}, {tag: "a push that nobody knows", cleared: true, way: 2, forbidden: true},
                {tag: "no bands to let go", cleared: true, way: 3, forbidden: true}, {tag: "dumbbells not said", cleared: true, way: 4},
                {tag: "as loads", cleared: true, way: 0, loads: true}]
        }
        function test_page(row) {
            testCase.lay(row.cleared)
            thePlanner.way = row.way
            thePlanner.inPercent = !row.loads
            testCase.verify(thePlanner.planned)
            if (row.forbidden !== undefined)
                testCase.compare(thePlanner.shown.forbidden, row.forbidden)
            checker.check({name: row.tag, component: page})
        }
        function test_nothingPlanned() {
            TheDeskFiller.tools(TheDesk)
            testCase.verify(!thePlanner.planned)
            checker.check({name: "nothing planned", component: page})
        }
        function test_measures_data() {
            return [{tag: "hooks", way: 0}, {tag: "lifted off", way: 1}]
        }
        function test_measures(row) {
            testCase.lay(true)
            thePlanner.way = row.way
            testCase.compare(thePlanner.drawn.there, row.way === 0)
            checker.check({name: row.tag, component: measuresPage})
        }
    }
}
