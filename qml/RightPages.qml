// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Pages.Measure
import Steelyard.Pages.Right

/** The pages where what was kept is put right or settled, and where each leads. */
QtObject {
    id: root

    required property PageStack stack
    readonly property Component sizes: Component {
        SizesPage {
            id: sizes
            property string athleteId: ""
            view: SizesView { book: TheBook; athleteId: sizes.athleteId }
            onBackRequested: root.stack.back()
            onSizeRequested: sizeId => root.stack.show(root.size, {athleteId: sizes.athleteId, sizeId: sizeId})
            StackView.onActivating: sizes.view.refresh()
        }
    }
    readonly property Component size: Component {
        SizePage {
            id: size
            property string athleteId: ""
            property string sizeId: ""
            editor: SizeEditor { desk: TheDesk; book: TheBook; athleteId: size.athleteId; sizeId: size.sizeId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(size.editor, key)
            onDayRequested: key => root.stack.key(size.editor.day, key)
        }
    }
    readonly property Component measurements: Component {
        MeasurementsPage {
            id: measurements
            property string itemId: ""
            view: MeasurementsView { book: TheBook; itemId: measurements.itemId }
            onBackRequested: root.stack.back()
            onMeasurementRequested: id => root.putRight(measurements.view.kind, measurements.itemId, id)
        }
    }
    readonly property Component chain: Component {
        ChainPage {
            id: chain
            property string itemId: ""
            property string measurementId: ""
            editor: ChainEditor { desk: TheDesk; book: TheBook; itemId: chain.itemId; measurementId: chain.measurementId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(chain.editor, key)
            onDayRequested: key => root.stack.key(chain.editor.day, key)
        }
    }
    readonly property Component band: Component {
        BandPage {
            id: band
            property string itemId: ""
            property string measurementId: ""
            editor: BandEditor { desk: TheDesk; book: TheBook; itemId: band.itemId; measurementId: band.measurementId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(band.editor, key)
            onDayRequested: key => root.stack.key(band.editor.day, key)
        }
    }
    readonly property Component aid: Component {
        AidPage {
            id: aid
            property string itemId: ""
            property string measurementId: ""
            editor: AidEditor { desk: TheDesk; book: TheBook; itemId: aid.itemId; measurementId: aid.measurementId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(aid.editor, key)
            onDayRequested: key => root.stack.key(aid.editor.day, key)
        }
    }
    readonly property Component machine: Component {
        MachinePage {
            id: machine
            property string itemId: ""
            property string measurementId: ""
            editor: MachineEditor { desk: TheDesk; book: TheBook; itemId: machine.itemId; measurementId: machine.measurementId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(machine.editor, key)
            onDayRequested: key => root.stack.key(machine.editor.day, key)
        }
    }
    /** The form of each kind. */
    readonly property var forms: ({chain: root.chain, band: root.band, aid: root.aid, machine: root.machine})
    readonly property ToolPages tools: ToolPages { stack: root.stack }
    readonly property Component review: Component {
        ReviewPage { view: ReviewView { book: TheBook } onBackRequested: root.stack.back() }
    }

    /** A kind without a form of its own has nothing to be put right in. */
    function putRight(kind: string, itemId: string, measurementId: string) {
        if (root.tools.isTool(kind))
            root.tools.putRight(kind, itemId, measurementId)
        else if (root.forms[kind])
            root.stack.show(root.forms[kind], {itemId: itemId, measurementId: measurementId})
    }
}
