// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Steelyard.Theme

/** One plate seen from its edge: it stays (wash), comes off (dashed) or goes on (solid). */
Rectangle {
    id: root

    property int change: 0

    color: root.change > 0 ? Theme.role.ink : root.change < 0 ? Theme.role.paper : Theme.role.wash
    radius: Math.min(Theme.rule, root.width / 2)
    border { width: root.change < 0 ? 0 : Math.min(Theme.rule, root.width / 2); color: Theme.role.ink }

    Shape {
        visible: root.change < 0
        ShapePath {
            strokeColor: Theme.role.ink
            strokeWidth: Theme.rule
            strokeStyle: ShapePath.DashLine
            dashPattern: [2, 2]
            fillColor: "transparent"
            PathPolyline {
                path: [Qt.point(1, 1), Qt.point(root.width - 1, 1), Qt.point(root.width - 1, root.height - 1),
                       Qt.point(1, root.height - 1), Qt.point(1, 1)]
            }
        }
    }
}
