// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Drawings
import Steelyard.Theme

/** Bar marks across both drawings: a rule for each that is no band, and a dot where it meets the curve. */
Item {
    id: root

    required property var marks
    /** Where each meets the curve; x is NaN when its pull is not known. */
    required property var places
    required property real sketch
    required property rect plot

    Accessible.ignored: true

    Pool {
        list: root.marks
        Item {
            id: mark
            required property int index
            readonly property bool zoned: root.marks[mark.index]?.zoned === true
            readonly property point place: root.places[mark.index] ?? Qt.point(NaN, 0)
            y: mark.place.y
            objectName: "mark"
            visible: mark.index < root.marks.length
            Rectangle {
                width: root.sketch
                height: Theme.hair
                visible: !mark.zoned
                color: Theme.role.ink
            }
            Rectangle {
                x: root.plot.x - Theme.line
                width: root.plot.width + Theme.line
                height: Theme.hair
                visible: !mark.zoned
                objectName: "line"
                color: Theme.role.ink
            }
            Rectangle {
                x: visible ? mark.place.x - width / 2 : 0
                y: -height / 2
                width: Theme.marker
                height: Theme.marker
                visible: Number.isFinite(mark.place.x)
                objectName: "dot"
                color: Theme.role.accent
                radius: width / 2
                border { width: Theme.rule; color: Theme.role.paper }
            }
        }
    }
}
