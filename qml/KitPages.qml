// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Measure
import Steelyard.Pages.Venue

/** The pages of set-up and kit, and where each leads. */
QtObject {
    id: root

    required property PageStack stack
    required property DeskWork work
    readonly property BarEditor loadEditor: BarEditor { desk: TheDesk }
    readonly property HangEditor hanger: HangEditor { desk: TheDesk }
    readonly property Component setup: Component {
        SetupPage {
            view: SetupView { desk: TheDesk }
            work: root.work
            places: root.stack.places
            place: root.stack.kitPlace
            onPlaceChosen: index => root.stack.go(index); onBackRequested: root.stack.back()
            onMarksRequested: root.marksRequested(); onBarRequested: root.stack.show(root.bar); onMoreRequested: root.stack.show(root.things); onAskRequested: root.askRequested(); onReleaseRequested: root.releaseRequested()
            onNumberRequested: key => root.stack.key(root.loadEditor, key)
            onHungRequested: row => root.stack.show(root.hanging, {row: row})
            onWhoRequested: root.stack.go(root.stack.squadPlace)
            onOriginRequested: root.stack.show(root.origin); onHeightsRequested: root.stack.show(root.heights)
            onStrengthRequested: root.strengthRequested(); onRampRequested: root.rampRequested()
        }
    }
    readonly property Component venue: Component {
        VenuePage {
            work: root.work
            onBackRequested: root.stack.back(); onDone: root.stack.back()
        }
    }
    readonly property Component origin: Component {
        OriginPage {
            view: OriginView { desk: TheDesk; book: TheBook }
            onBackRequested: root.stack.back()
        }
    }
    readonly property Component heights: Component {
        HeightsPage {
            view: HeightsView { desk: TheDesk }
            onBackRequested: root.stack.back()
        }
    }
    readonly property Component bar: Component {
        BarPage {
            id: bar
            editor: BarEditor { desk: TheDesk }
            weighed: WeighedIronView { desk: TheDesk; book: TheBook }
            onBackRequested: root.stack.back()
            onNumberRequested: key => root.stack.key(bar.editor, key)
        }
    }
    readonly property Component things: Component {
        ThingsPage {
            id: things
            view: KitView { desk: TheDesk; book: TheBook; venueId: root.work.venueId }
            work: root.work
            onVenueRequested: root.stack.show(root.venue)
            onBackRequested: root.stack.back()
            onHangRequested: itemId => root.hang(itemId)
            onMeasureRequested: (itemId, kind) => root.measure(itemId, kind)
            onInspectRequested: itemId => root.stack.show(root.inspection, {itemId: itemId}); onLoanRequested: itemId => root.stack.show(root.loan, {itemId: itemId})
            onAlongRequested: root.stack.show(root.along); onCopyRequested: root.stack.show(root.copyList); onArrivalRequested: root.arrivalRequested()
            onSomethingElseRequested: root.stack.show(root.what)
            StackView.onActivating: {
                things.view.refresh()
                things.others.refresh()
            }
        }
    }
    readonly property Component what: Component {
        MeasureWhatPage {
            id: what
            view: MeasureWhat { desk: TheDesk }
            onBackRequested: root.stack.back()
            onMeasureRequested: kind => root.stack.instead(root.stepsOf(kind), root.saidOf(kind, ""))
            StackView.onActivating: what.view.refresh()
        }
    }
    readonly property Component aid: Component {
        AidPage {
            id: aid
            property string itemId: ""
            editor: AidEditor { desk: TheDesk; book: TheBook; venueId: root.work.venueId; itemId: aid.itemId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(aid.editor, key)
            onMeasurementsRequested: root.measurementsRequested(aid.editor.itemId); onWayRequested: way => root.wayOf(aid.editor.itemId, "aid", way)
        }
    }
    readonly property Component machine: Component {
        MachinePage {
            id: machine
            property string itemId: ""
            editor: MachineEditor { desk: TheDesk; book: TheBook; venueId: root.work.venueId; itemId: machine.itemId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(machine.editor, key)
            onMeasurementsRequested: root.measurementsRequested(machine.editor.itemId); onWayRequested: way => root.wayOf(machine.editor.itemId, "machine", way)
        }
    }
    readonly property Component aidSteps: Component {
        AidStepsPage {
            id: aidSteps
            property string itemId: ""
            steps: AidGuide {
                form: AidEditor { desk: TheDesk; book: TheBook; venueId: root.work.venueId; itemId: aidSteps.itemId }
            }
            onDone: root.stack.back()
            onFormRequested: root.stack.instead(root.aid, {itemId: aidSteps.itemId}); onInspectRequested: root.stack.instead(root.inspection, {itemId: aidSteps.itemId})
            onLoanRequested: root.stack.instead(root.loan, {itemId: aidSteps.itemId})
        }
    }
    readonly property Component machineSteps: Component {
        MachineStepsPage {
            id: machineSteps
            property string itemId: ""
            steps: MachineGuide {
                form: MachineEditor { desk: TheDesk; book: TheBook; venueId: root.work.venueId; itemId: machineSteps.itemId }
            }
            onDone: root.stack.back()
            onFormRequested: root.stack.instead(root.machine, {itemId: machineSteps.itemId}); onInspectRequested: root.stack.instead(root.inspection, {itemId: machineSteps.itemId})
            onLoanRequested: root.stack.instead(root.loan, {itemId: machineSteps.itemId})
        }
    }
    readonly property Component hanging: Component {
        HangPage {
            id: hang
            property int row: -1
            editor: HangEditor { desk: TheDesk; row: hang.row }
            onBackRequested: root.stack.home(); onDone: root.stack.home()
            onNumberRequested: key => root.stack.key(hang.editor, key)
            onMeasureRequested: root.measure(hang.editor.itemId, hang.editor.kind)
        }
    }
    readonly property Component chain: Component {
        ChainPage {
            id: chain
            property string itemId: ""
            editor: ChainEditor { desk: TheDesk; book: TheBook; venueId: root.work.venueId; itemId: chain.itemId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(chain.editor, key)
            onMeasurementsRequested: root.measurementsRequested(chain.editor.itemId); onWayRequested: way => root.wayOf(chain.editor.itemId, "chain", way)
        }
    }
    readonly property Component band: Component {
        BandPage {
            id: band
            property string itemId: ""
            editor: BandEditor { desk: TheDesk; book: TheBook; venueId: root.work.venueId; itemId: band.itemId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(band.editor, key)
            onMeasurementsRequested: root.measurementsRequested(band.editor.itemId); onWayRequested: way => root.wayOf(band.editor.itemId, "band", way)
        }
    }
    readonly property Component chainSteps: Component {
        ChainStepsPage {
            id: chainSteps
            property string itemId: ""
            steps: ChainGuide {
                form: ChainEditor { desk: TheDesk; book: TheBook; venueId: root.work.venueId; itemId: chainSteps.itemId }
            }
            onDone: root.stack.back()
            onFormRequested: root.stack.instead(root.chain, {itemId: chainSteps.itemId}); onInspectRequested: root.stack.instead(root.inspection, {itemId: chainSteps.itemId})
            onLoanRequested: root.stack.instead(root.loan, {itemId: chainSteps.itemId})
        }
    }
    readonly property Component bandSteps: Component {
        BandStepsPage {
            id: bandSteps
            property string itemId: ""
            steps: BandGuide {
                form: BandEditor { desk: TheDesk; book: TheBook; venueId: root.work.venueId; itemId: bandSteps.itemId }
            }
            onDone: root.stack.back()
            onFormRequested: root.stack.instead(root.band, {itemId: bandSteps.itemId}); onInspectRequested: root.stack.instead(root.inspection, {itemId: bandSteps.itemId})
            onLoanRequested: root.stack.instead(root.loan, {itemId: bandSteps.itemId})
        }
    }
    readonly property Component inspection: Component {
        InspectPage {
            id: inspection
            property string itemId: ""
            editor: InspectionEditor { book: TheBook; itemId: inspection.itemId }
            onDone: root.stack.back()
        }
    }
    readonly property Component loan: Component {
        LoanPage {
            id: loan
            property string itemId: ""
            editor: LoanEditor { desk: TheDesk; book: TheBook; itemId: loan.itemId }
            onDone: root.stack.back()
            onDayRequested: key => root.stack.key(loan.editor.day, key)
        }
    }
    readonly property Component itemOrigin: Component {
        ItemOriginPage {
            id: itemOrigin
            property string itemId: ""
            view: ItemOriginView { book: TheBook; itemId: itemOrigin.itemId }
            onBackRequested: root.stack.back()
        }
    }
    readonly property Component along: Component {
        AlongPage { view: AlongView { book: TheBook; venueId: root.work.venueId } onDone: root.stack.back() }
    }
    readonly property Component copyList: Component {
        CopyListPage { view: CopyListView { book: TheBook; venueId: root.work.venueId } onDone: root.stack.back() }
    }
    /** The guide of each kind. */
    readonly property var steps: ({chain: root.chainSteps, band: root.bandSteps, aid: root.aidSteps, machine: root.machineSteps})
    readonly property ToolPages tools: ToolPages {
        stack: root.stack
        onMeasurementsRequested: itemId => root.measurementsRequested(itemId)
        onInspectionRequested: itemId => root.stack.instead(root.inspection, {itemId: itemId})
        onLoanRequested: itemId => root.stack.instead(root.loan, {itemId: itemId})
        onWayRequested: (itemId, kind, way) => root.wayOf(itemId, kind, way)
    }
    signal marksRequested(); signal arrivalRequested(); signal askRequested(); signal strengthRequested(); signal rampRequested(); signal releaseRequested()
    signal measurementsRequested(string itemId)

    function hang(itemId: string) {
        const row = root.hanger.hang(itemId)
        if (row >= 0)
            root.stack.show(root.hanging, {row: row})
    }
    /** From a thing's own page on: where its number comes from, whose it is, or to its steps. */
    function wayOf(itemId: string, kind: string, way: string) {
        if (way === "again" && root.stepsOf(kind))
            root.stack.instead(root.stepsOf(kind), root.saidOf(kind, itemId))
        else
            root.stack.show(way === "origin" ? root.itemOrigin : root.loan, {itemId: itemId})
    }
    function measure(itemId: string, kind: string) {
        if (root.stepsOf(kind))
            root.stack.show(root.stepsOf(kind), root.saidOf(kind, itemId))
    }
    function stepsOf(kind: string): Component {
        return root.tools.isTool(kind) ? root.tools.steps : root.steps[kind]
    }
    function saidOf(kind: string, itemId: string): var {
        return root.tools.isTool(kind) ? {kind: kind, itemId: itemId, venueId: root.work.venueId} : {itemId: itemId}
    }
}
