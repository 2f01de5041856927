// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Model
import Steelyard.Pages.Measure

/** The pages of scales, weighed iron, straps, racks and implements: in steps, all numbers at once, and one measurement put right. */
QtObject {
    id: root

    required property PageStack stack
    readonly property var forms: ({scale: root.scale, iron: root.iron, lead: root.lead, rack: root.rack,
        tyre: root.tyre, log: root.log, stone: root.stone, keg: root.keg, sled: root.sled, carry: root.carry, bell: root.bell})
    readonly property Component scale: Component {
        ScaleEditor { desk: TheDesk; book: TheBook }
    }
    readonly property Component iron: Component {
        IronEditor { desk: TheDesk; book: TheBook }
    }
    readonly property Component lead: Component {
        LeadEditor { desk: TheDesk; book: TheBook }
    }
    readonly property Component rack: Component {
        RackEditor { desk: TheDesk; book: TheBook }
    }
    readonly property Component tyre: Component {
        ImplementEditor { desk: TheDesk; book: TheBook; what: "tyre" }
    }
    readonly property Component log: Component {
        ImplementEditor { desk: TheDesk; book: TheBook; what: "log" }
    }
    readonly property Component stone: Component {
        ImplementEditor { desk: TheDesk; book: TheBook; what: "stone" }
    }
    readonly property Component keg: Component {
        ImplementEditor { desk: TheDesk; book: TheBook; what: "keg" }
    }
    readonly property Component sled: Component {
        ImplementEditor { desk: TheDesk; book: TheBook; what: "sled" }
    }
    readonly property Component carry: Component {
        ImplementEditor { desk: TheDesk; book: TheBook; what: "carry" }
    }
    readonly property Component bell: Component {
        ImplementEditor { desk: TheDesk; book: TheBook; what: "bell" }
    }
    readonly property Component steps: Component {
        ToolStepsPage {
            id: inSteps
            property string kind: ""
            property string itemId: ""
            property string venueId: ""
            steps: ToolGuide { form: root.formOf(inSteps.kind, inSteps, {venueId: inSteps.venueId, itemId: inSteps.itemId}) }
            onDone: root.stack.back()
            onFormRequested: root.stack.instead(root.form, {kind: inSteps.kind, itemId: inSteps.itemId, venueId: inSteps.venueId})
            onInspectRequested: root.inspectionRequested(inSteps.itemId); onLoanRequested: root.loanRequested(inSteps.itemId)
        }
    }
    readonly property Component form: Component {
        ToolPage {
            id: allNumbers
            property string kind: ""
            property string itemId: ""
            property string venueId: ""
            property string measurementId: ""
            editor: root.formOf(allNumbers.kind, allNumbers, {venueId: allNumbers.venueId, itemId: allNumbers.itemId, measurementId: allNumbers.measurementId})
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(allNumbers.editor, key)
            onDayRequested: key => root.stack.key(allNumbers.editor.day, key)
            onMeasurementsRequested: root.measurementsRequested(allNumbers.itemId)
            onWayRequested: way => root.wayRequested(allNumbers.itemId, allNumbers.kind, way)
        }
    }
    signal measurementsRequested(string itemId)
    signal inspectionRequested(string itemId)
    signal loanRequested(string itemId)
    signal wayRequested(string itemId, string kind, string way)

    function formOf(kind: string, page: Item, said: var): ToolEditor {
        return root.forms[kind].createObject(page, said) as ToolEditor
    }
    function isTool(kind: string): bool {
        return root.forms[kind] !== undefined
    }
    function putRight(kind: string, itemId: string, measurementId: string) {
        root.stack.show(root.form, {kind: kind, itemId: itemId, measurementId: measurementId})
    }
}
