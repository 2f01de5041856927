// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Right
import Steelyard.Pages.Squad

/** The pages where what was kept is put right or settled, in their main states, through the checker. */
Item {
    id: root

    width: 1280
    height: 1000

    SizesView {
        id: theSizes
        book: TheBook
        athleteId: ""
    }
    SizeEditor {
        id: theSize
        desk: TheDesk
        book: TheBook
        athleteId: theSizes.athleteId
        sizeId: ""
    }
    MeasurementsView {
        id: theMeasurements
        book: TheBook
        itemId: ""
    }
    ChainEditor {
        id: theChain
        desk: TheDesk
        book: TheBook
        itemId: theMeasurements.itemId
    }
    BandEditor {
        id: theBand
        desk: TheDesk
        book: TheBook
        itemId: theMeasurements.itemId
    }
    PageChecker {
        id: checker
        testCase: testCase
    }
    Component {
        id: squad
        SquadPage { view: SquadView { book: TheBook } places: ["Squad", "Kit"]; place: 0 }
    }
    Component {
        id: athlete
        AthletePage { editor: AthleteEditor { desk: TheDesk; book: TheBook; athleteId: theSizes.athleteId } }
    }
    Component {
        id: sizes
        SizesPage { view: theSizes }
    }
    Component {
        id: size
        SizePage { editor: theSize }
    }
    Component {
        id: measurements
        MeasurementsPage { view: theMeasurements }
    }
    Component {
        id: chain
        ChainPage { editor: theChain }
    }
    Component {
        id: band
        BandPage { editor: theBand }
    }
    LiftEditor {
        id: theLift
        book: TheBook
    }
    Component {
        id: lifts
        LiftsPage { view: LiftsView { book: TheBook; athleteId: theSizes.athleteId } }
    }
    Component {
        id: lift
        LiftPage { editor: theLift }
    }
    Component {
        id: review
        ReviewPage { view: ReviewView { book: TheBook } }
    }
    ControlCase {
        id: testCase

        name: "RightPages"

        function init() {
            testCase.reset()
            TheDeskFiller.full(TheDesk)
            TheDeskFiller.people(TheBook, 2)
            theSizes.athleteId = TheDeskFiller.athleteId(TheBook, 0)
        }
        function cleanup() {
            checker.clear()
            theSize.throwDraft()
            for (const editor of [theChain, theBand]) {
                editor.throwDraft()
                editor.measurementId = ""
            }
            theMeasurements.itemId = ""
            theLift.lift = ""
        }
        function rowId(model: var, row: int): string {
            return model.data(model.index(row, 0), Qt.UserRole)
        }
        /** The one that was put right before. */
        function openSize() {
            TheDeskFiller.sizes(TheBook)
            theSize.sizeId = testCase.rowId(theSizes.sizes, 1)
        }
        function openMeasurement(item: int, editor: ItemEditor) {
            TheDeskFiller.measuredAgain(TheBook)
            theMeasurements.itemId = TheDeskFiller.itemId(TheBook, item)
            editor.measurementId = testCase.rowId(theMeasurements.measurements, 0)
        }
        function key(editor: FieldEditor, field: string, digits: string) {
            const pad = testCase.createTemporaryObject(padOf, root, {editor: editor, key: field})
            for (const digit of digits)
                pad.press(digit)
            testCase.verify(pad.keep(), field + ": " + pad.refusal)
        }
        function test_page_data() {
            return [{tag: "squad, something to settle", component: squad, before: () => TheDeskFiller.saidTwice(TheBook)},
                {tag: "athlete, measured by day", component: athlete, before: () => TheDeskFiller.sizes(TheBook)},
                {tag: "sizes, none", component: sizes, before: () => {}},
                {tag: "sizes", component: sizes, before: () => TheDeskFiller.sizes(TheBook)},
                {tag: "size", component: size, before: () => testCase.openSize()},
                {tag: "size, changed", component: size, before: () => { testCase.openSize(); testCase.key(theSize, "mass", "74.2") }},
                {tag: "size, no such day", component: size, before: () => { testCase.openSize(); testCase.key(theSize.day, "month", "2"); testCase.key(theSize.day, "day", "30") }},
                {tag: "measurements", component: measurements, before: () => testCase.openMeasurement(2, theChain)},
                {tag: "chain put right", component: chain, before: () => testCase.openMeasurement(2, theChain)},
                {tag: "chain put right, changed", component: chain, before: () => { testCase.openMeasurement(2, theChain); testCase.key(theChain, "length", "75") }},
                {tag: "band put right", component: band, before: () => testCase.openMeasurement(0, theBand)},
                {tag: "lifts, one of her coach's own", component: lifts, before: () => TheDeskFiller.lift(TheBook, "Pin squat from the safeties, paused")},
                {tag: "lift, new", component: lift, before: () => {}},
                {tag: "lift", component: lift, before: () => { TheDeskFiller.lift(TheBook, "Pin squat"); theLift.lift = TheDeskFiller.liftId(TheBook, 0) }},
                {tag: "review, nothing", component: review, before: () => {}},
                {tag: "review", component: review, before: () => TheDeskFiller.saidTwice(TheBook)}]
        }
        function test_page(row) {
            row.before()
            checker.check({name: row.tag, component: row.component})
        }
    }
    Component {
        id: padOf
        NumberPad { }
    }
}
