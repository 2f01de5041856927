// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Measure
import Steelyard.Pages.Squad
import Steelyard.Pages.Venue

/** The pages of kit by place, in their main states, through the checker. */
Item {
    id: root

    width: 1280
    height: 1000

    DeskWork {
        id: deskWork
        desk: TheDesk
        book: TheBook
    }
    LoanEditor {
        id: theLoan
        desk: TheDesk
        book: TheBook
        itemId: ""
    }
    AlongView {
        id: theAlong
        book: TheBook
        venueId: deskWork.venueId
    }
    ItemOriginView {
        id: theOrigin
        book: TheBook
        itemId: ""
    }
    PageChecker {
        id: checker
        testCase: testCase
    }
    Component {
        id: things
        ThingsPage { view: KitView { desk: TheDesk; book: TheBook; venueId: deskWork.venueId } work: deskWork }
    }
    Component {
        id: loan
        LoanPage { editor: theLoan }
    }
    Component {
        id: along
        AlongPage { view: theAlong }
    }
    Component {
        id: copyList
        CopyListPage { view: CopyListView { book: TheBook; venueId: deskWork.venueId } }
    }
    Component {
        id: origin
        ItemOriginPage { view: theOrigin }
    }
    Component {
        id: chain
        ChainPage { editor: ChainEditor { desk: TheDesk; book: TheBook; itemId: TheDeskFiller.itemId(TheBook, 2) } }
    }
    Component {
        id: athlete
        AthletePage { editor: AthleteEditor { desk: TheDesk; book: TheBook; athleteId: TheDeskFiller.athleteId(TheBook, 0) } }
    }
    ControlCase {
        id: testCase

        name: "VenuePages"

        function init() {
            testCase.reset()
            TheDeskFiller.full(TheDesk)
        }
        function cleanup() {
            checker.clear()
            theLoan.kind = 0
            theLoan.who = ""
            theLoan.when = LoanEditor.NoDay
            deskWork.venue = 0
            theOrigin.itemId = ""
        }
        function go(venue: int) {
            TheDeskFiller.venues(TheBook)
            deskWork.venue = venue
        }
        function lend(kind: int, when: int) {
            theLoan.itemId = TheDeskFiller.itemId(TheBook, 2)
            theLoan.kind = kind
            theLoan.who = "the school hall's own caretaker"
            theLoan.when = when
        }
        function test_page_data() {
            return [{tag: "kit of a venue, borrowed, lent and away", component: things, before: () => testCase.go(1)},
                {tag: "kit of a venue, one along", component: things, before: () => testCase.go(2)},
                {tag: "ours", component: loan, before: () => { theLoan.itemId = TheDeskFiller.itemId(TheBook, 2) }},
                {tag: "borrowed, a week", component: loan, before: () => testCase.lend(1, LoanEditor.InAWeek)},
                {tag: "lent, another day", component: loan, before: () => testCase.lend(2, LoanEditor.OtherDay)},
                {tag: "take along", component: along, before: () => testCase.go(2)},
                {tag: "take along, ticked", component: along, before: () => { testCase.go(2); theAlong.turn(TheDeskFiller.itemId(TheBook, 0)) }},
                {tag: "take along, nothing elsewhere", component: along, before: () => { TheDeskFiller.empty(TheDesk); testCase.go(1) }},
                {tag: "copy a list", component: copyList, before: () => testCase.go(2)},
                {tag: "copy a list, nothing to copy", component: copyList, before: () => testCase.go(1)},
                {tag: "chain, kept", component: chain, before: () => {}},
                {tag: "where a chain's number comes from", component: origin, before: () => { theOrigin.itemId = TheDeskFiller.itemId(TheBook, 2) }},
                {tag: "where a band's number comes from", component: origin, before: () => { theOrigin.itemId = TheDeskFiller.itemId(TheBook, 0) }},
                {tag: "no number yet", component: origin, before: () => {}},
                {tag: "athlete who has grown", component: athlete, before: () => { TheDeskFiller.people(TheBook, 1); TheDeskFiller.grown(TheBook) }}]
        }
        function test_page(row) {
            row.before()
            checker.check({name: row.tag, component: row.component})
        }
    }
}
