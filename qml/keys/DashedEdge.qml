// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Shapes
import Steelyard.Theme

/** The edge of a key that is planned and not yet done; in a file of its own, so that keys load without shapes. */
Shape {
    id: root

    ShapePath {
        strokeColor: Theme.role.ink
        strokeWidth: Theme.rule
        strokeStyle: ShapePath.DashLine
        dashPattern: [3, 2]
        fillColor: "transparent"
        PathPolyline {
            path: [Qt.point(1, 1), Qt.point(root.width - 1, 1), Qt.point(root.width - 1, root.height - 1),
                   Qt.point(1, root.height - 1), Qt.point(1, 1)]
        }
    }
}
