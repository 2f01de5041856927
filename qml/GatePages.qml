// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Steelyard.Model
import Steelyard.Pages.Gates

/** The pages of what somebody may do, and where each leads. */
QtObject {
    id: root

    required property PageStack stack
    readonly property Component dayStatus: Component {
        DayStatusPage {
            id: dayStatus
            property string athleteId: ""
            view: StandingView { book: TheBook; athleteId: dayStatus.athleteId }
            onBackRequested: root.stack.back()
            onAddRequested: root.stack.show(root.status, {athleteId: dayStatus.athleteId})
            onStatusRequested: statusId => root.stack.show(root.status, {athleteId: dayStatus.athleteId, recordId: statusId})
            StackView.onActivating: dayStatus.view.refresh()
        }
    }
    readonly property Component status: Component {
        StatusPage {
            id: status
            property string athleteId: ""
            property string recordId: ""
            editor: StatusEditor { desk: TheDesk; book: TheBook; athleteId: status.athleteId; recordId: status.recordId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onFromRequested: key => root.stack.key(status.editor.from, key)
            onUntilRequested: key => root.stack.key(status.editor.until, key)
            onEndRequested: root.stack.show(root.end, {editor: status.editor})
        }
    }
    readonly property Component clearances: Component {
        ClearancesPage {
            id: clearances
            property string athleteId: ""
            view: StandingView { book: TheBook; athleteId: clearances.athleteId }
            onBackRequested: root.stack.back()
            onAddRequested: root.stack.show(root.clearance, {athleteId: clearances.athleteId})
            onClearanceRequested: clearanceId => root.stack.show(root.clearance, {athleteId: clearances.athleteId, recordId: clearanceId})
            StackView.onActivating: clearances.view.refresh()
        }
    }
    readonly property Component clearance: Component {
        ClearancePage {
            id: clearance
            property string athleteId: ""
            property string recordId: ""
            editor: ClearanceEditor { desk: TheDesk; book: TheBook; athleteId: clearance.athleteId; recordId: clearance.recordId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onFromRequested: key => root.stack.key(clearance.editor.from, key)
            onUntilRequested: key => root.stack.key(clearance.editor.until, key)
            onPickRequested: which => root.stack.show(which === "lift" ? root.lift : root.method, {editor: clearance.editor})
            onEndRequested: root.stack.show(root.end, {editor: clearance.editor})
        }
    }
    readonly property Component lift: Component {
        PickPage {
            id: lift
            property ClearanceEditor editor: null
            heading: qsTr("Which lift?")
            options: lift.editor?.lifts ?? []
            current: lift.editor?.lift ?? -1
            onBackRequested: root.stack.back()
            onChosen: index => { lift.editor.lift = index; root.stack.back() }
        }
    }
    readonly property Component method: Component {
        PickPage {
            id: method
            property ClearanceEditor editor: null
            heading: qsTr("Which method?")
            options: method.editor?.methods ?? []
            current: method.editor?.method ?? -1
            onBackRequested: root.stack.back()
            onChosen: index => { method.editor.method = index; root.stack.back() }
        }
    }
    readonly property Component end: Component {
        // the form below hears of it too, and goes with it
        EndPage { onBackRequested: root.stack.back(); onDone: root.stack.back() }
    }
    readonly property Component limits: Component {
        LimitsPage {
            id: limits
            editor: LimitsEditor { desk: TheDesk; book: TheBook }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(limits.editor, key)
        }
    }
}
