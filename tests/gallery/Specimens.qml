// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Theme

/** Every control in its states, as pages {name, component}. */
QtObject {
    id: root

    readonly property KeySpecimens keys: KeySpecimens { }
    readonly property RowSpecimens rows: RowSpecimens { }
    readonly property DrawingSpecimens drawings: DrawingSpecimens { }
    readonly property ChartSpecimens charts: ChartSpecimens { }
    /** For who shows them in another look. */
    readonly property QtObject theme: Theme
    readonly property var entries: [...root.keys.entries, ...root.rows.entries, ...root.drawings.entries, ...root.charts.entries]

    /** By the component itself: a bound one may not be made from outside. */
    function make(index: int, parent: Item, width: real, height: real): Item {
        return root.entries[index].component.createObject(parent, {width: width, height: height})
    }
}
