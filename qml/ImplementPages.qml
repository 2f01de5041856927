// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Steelyard.Model
import Steelyard.Pages.Gates
import Steelyard.Pages.Implements

/** The pages of what is lifted, carried or dragged by itself: what is here, who may use it, what it is held against. */
QtObject {
    id: root

    required property PageStack stack
    required property DeskWork work
    readonly property Component here: Component {
        HerePage {
            id: here
            property string athleteId: ""
            view: HereView { book: TheBook; athleteId: here.athleteId; venueId: root.work.venueId }
            onBackRequested: root.stack.back()
            onThingRequested: itemId => root.stack.show(root.use, {athleteId: here.athleteId, itemId: itemId})
            onArrivalRequested: root.stack.show(root.arrival)
        }
    }
    readonly property Component use: Component {
        UsePage {
            id: use
            property string athleteId: ""
            property string itemId: ""
            view: UseView { book: TheBook; athleteId: use.athleteId; itemId: use.itemId }
            onBackRequested: root.stack.back()
            onThingRequested: root.thingRequested(use.itemId, use.view.kind)
            onSledRequested: root.stack.show(root.sled, {athleteId: use.athleteId, itemId: use.itemId})
            onCapRequested: root.stack.show(root.cap, {athleteId: use.athleteId, liftId: use.view.liftId})
        }
    }
    readonly property Component sled: Component {
        SledPage {
            id: sled
            property string athleteId: ""
            property string itemId: ""
            view: SledView { book: TheBook; venueId: root.work.venueId; itemId: sled.itemId; athleteId: sled.athleteId }
            onBackRequested: root.stack.back()
            onPullRequested: root.stack.show(root.surface, {itemId: sled.itemId})
            onRunRequested: surface => root.stack.show(root.run, {athleteId: sled.athleteId, itemId: sled.itemId, surface: surface})
        }
    }
    readonly property Component surface: Component {
        SurfacePage {
            id: surface
            property string itemId: ""
            editor: SurfaceEditor { desk: TheDesk; book: TheBook; venueId: root.work.venueId; itemId: surface.itemId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(surface.editor, key)
        }
    }
    readonly property Component run: Component {
        RunPage {
            id: run
            property string athleteId: ""
            property string itemId: ""
            property string surface: ""
            editor: RunEditor { desk: TheDesk; book: TheBook; venueId: root.work.venueId; itemId: run.itemId; athleteId: run.athleteId; surface: run.surface }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(run.editor, key)
        }
    }
    readonly property Component cap: Component {
        CapPage {
            id: cap
            property string athleteId: ""
            property string liftId: ""
            editor: CapEditor { desk: TheDesk; book: TheBook; athleteId: cap.athleteId; liftId: cap.liftId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(cap.editor, key)
            onPickRequested: root.stack.show(root.pick, {editor: cap.editor})
        }
    }
    readonly property Component pick: Component {
        PickPage {
            id: pick
            property CapEditor editor: null
            heading: qsTr("Which lift?")
            back: qsTr("Held against")
            options: pick.editor?.lifts ?? []
            current: pick.editor?.of ?? -1
            onBackRequested: root.stack.back()
            onChosen: index => { pick.editor.of = index; root.stack.back() }
        }
    }
    readonly property Component arrival: Component {
        ArrivalPage {
            id: arrival
            view: ArrivalView { desk: TheDesk; book: TheBook; venueId: root.work.venueId }
            onBackRequested: root.stack.back()
            onMeasureRequested: (itemId, kind) => root.measureRequested(itemId, kind)
            lane: LaneEditor { desk: TheDesk; book: TheBook; venueId: root.work.venueId }
            onLaneRequested: key => root.stack.key(arrival.lane, key)
            onAnotherRequested: root.anotherRequested()
            StackView.onActivating: arrival.view.refresh()
        }
    }
    /** Its form, with its record. */
    signal thingRequested(string itemId, string kind)
    /** To be measured in steps. */
    signal measureRequested(string itemId, string kind)
    signal anotherRequested
}
