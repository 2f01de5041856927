// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Implements
import Steelyard.Pages.Measure

/** The pages of what is lifted, carried or dragged by itself, in their main states, through the checker. */
Item {
    id: root

    width: 1280
    height: 1000

    HereView {
        id: theHere
        book: TheBook
        athleteId: ""
        venueId: ""
    }
    UseView {
        id: theUse
        book: TheBook
        athleteId: theHere.athleteId
        itemId: ""
    }
    CapEditor {
        id: theCap
        desk: TheDesk
        book: TheBook
        athleteId: theHere.athleteId
        liftId: "36"
    }
    ArrivalView {
        id: theArrival
        desk: TheDesk
        book: TheBook
        venueId: theHere.venueId
    }
    SledView {
        id: theSled
        book: TheBook
        athleteId: theHere.athleteId
        venueId: theHere.venueId
        itemId: ""
    }
    SurfaceEditor {
        id: theSurface
        desk: TheDesk
        book: TheBook
        venueId: theHere.venueId
        itemId: theSled.itemId
    }
    RunEditor {
        id: theRun
        desk: TheDesk
        book: TheBook
        venueId: theHere.venueId
        itemId: theSled.itemId
        athleteId: theHere.athleteId
        surface: "turf"
    }
    ImplementEditor {
        id: theForm
        desk: TheDesk
        book: TheBook
        what: "tyre"
    }
    ToolGuide {
        id: theGuide
        form: theForm
    }
    PageChecker {
        id: checker
        testCase: testCase
    }
    Component {
        id: here
        HerePage { view: theHere }
    }
    Component {
        id: use
        UsePage { view: theUse }
    }
    Component {
        id: cap
        CapPage { editor: theCap }
    }
    Component {
        id: sled
        SledPage { view: theSled }
    }
    Component {
        id: surface
        SurfacePage { editor: theSurface }
    }
    Component {
        id: run
        RunPage { editor: theRun }
    }
    Component {
        id: arrival
        ArrivalPage { view: theArrival; lane: LaneEditor { desk: TheDesk; book: TheBook; venueId: theHere.venueId } }
    }
    Component {
        id: form
        ToolPage { editor: theForm }
    }
    Component {
        id: steps
        ToolStepsPage { steps: theGuide }
    }
    ControlCase {
        id: testCase

        name: "ImplementPages"

        function init() {
            testCase.reset()
            TheDeskFiller.empty(TheDesk)
            TheDeskFiller.squad(TheBook, 3)
            theHere.athleteId = TheDeskFiller.athleteId(TheBook, 0)
            theHere.venueId = TheAwayFiller.pitch(TheBook)
        }
        function cleanup() {
            checker.clear()
            theForm.throwDraft()
            theForm.itemId = ""
            theForm.what = "tyre"
        }
        function test_lists() {
            checker.check({name: "what she may use", component: here})
            checker.check({name: "just arrived", component: arrival})
            theHere.venueId = ""
            checker.check({name: "what she may use, nowhere", component: here})
            checker.check({name: "just arrived, nowhere", component: arrival})
        }
        function test_use_data() {
            return ["Car tyre", "Old tyre", "Tractor tyre", "Blue keg", "Water keg", "Handles", "Bell 24"].map(name => ({tag: name}))
        }
        function test_use(row) {
            theUse.itemId = TheAwayFiller.thing(TheBook, row.tag)
            testCase.verify(theUse.words.mass !== "")
            checker.check({name: "use: " + row.tag, component: use})
        }
        function test_sled() {
            theSled.itemId = TheAwayFiller.thing(TheBook, "Sled")
            theSled.surface = 0
            checker.check({name: "a sled with a line of hers", component: sled})
            checker.check({name: "a sled to be pulled", component: surface})
            checker.check({name: "a timed run", component: run})
            theHere.venueId = ""
            checker.check({name: "a sled that was not pulled here", component: sled})
        }
        function test_cap() {
            checker.check({name: "held against nothing yet", component: cap})
            theCap.of = theCap.lifts.indexOf("deadlift")
            checker.check({name: "held against her deadlift", component: cap})
        }
        function test_form_data() {
            const rows = []
            for (const [what, ways] of [["tyre", 3], ["log", 4], ["stone", 3], ["keg", 5], ["sled", 1], ["carry", 1], ["bell", 1]])
                for (let way = 0; way < ways; ++way)
                    rows.push({tag: what + " by way " + way, what: what, way: way})
            return rows
        }
        function test_form(row) {
            theForm.what = row.what
            theForm.choice = row.way
            checker.check({name: "form of a " + row.tag, component: form})
        }
        function test_steps_data() {
            return ["tyre", "log", "stone", "keg", "sled", "carry", "bell"].map(what => ({tag: what}))
        }
        function test_steps(row) {
            theForm.what = row.tag
            theGuide.resume()
            checker.check({name: "begin: " + row.tag, component: steps})
            theGuide.choose(0)
            checker.check({name: "first number: " + row.tag, component: steps})
        }
    }
}
