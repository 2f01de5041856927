// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Shapes
import Steelyard.Theme

/** The floor in section: a rule, hatched below like earth. */
Item {
    id: root

    implicitHeight: Theme.rule + Theme.apart
    Accessible.ignored: true

    Rectangle {
        width: root.width
        height: Theme.rule
        color: Theme.role.ink
    }
    Shape {
        ShapePath {
            strokeColor: Theme.role.edge
            strokeWidth: Theme.hair
            fillColor: "transparent"
            PathSvg { path: root.earth() }
        }
    }

    function earth(): string {
        const deep = Theme.tickSmall
        let path = "M 0 0"
        for (let x = deep; x < root.width; x += Theme.apart)
            path += ` M ${x} ${Theme.rule} L ${x - deep} ${Theme.rule + deep}`
        return path
    }
}
