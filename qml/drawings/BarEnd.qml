// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** The end of a bar from the front, its axis at y = 0: shaft, sleeve, plates to scale in both directions. */
Item {
    id: root

    /** {x, wide, high} in pixels. */
    required property var plates
    required property real shaft
    required property real sleeve
    required property real perMetre

    Rectangle {
        y: -Math.round(height / 2)
        width: root.shaft
        height: Math.max(Theme.ring, Math.round(0.028 * root.perMetre))
        color: Theme.role.ink
    }
    Rectangle {
        x: root.shaft
        y: -Math.round(height / 2)
        width: root.sleeve
        height: Math.max(Theme.line + Theme.rule, Math.round(0.05 * root.perMetre))
        color: Theme.role.paper
        border { width: Theme.hair; color: Theme.role.ink }
    }
    Pool {
        list: root.plates
        Rectangle {
            id: plate
            required property int index
            readonly property var disc: root.plates[plate.index] ?? {x: 0, wide: 0, high: 0}
            x: plate.disc.x
            y: -Math.round(height / 2)
            width: plate.disc.wide
            height: plate.disc.high
            objectName: "plate"
            visible: plate.index < root.plates.length
            color: Theme.role.wash
            border { width: Theme.hair; color: Theme.role.ink }
        }
    }
}
