// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Shapes
import Steelyard.Theme

/** A thin line from a height on a scale to the words that had to stand a little higher or lower. */
Shape {
    id: root

    required property real from
    required property real to
    property real span: Theme.indent

    Accessible.ignored: true

    ShapePath {
        strokeColor: Theme.role.ink
        strokeWidth: Theme.hair
        fillColor: "transparent"
        PathPolyline { path: [Qt.point(0, root.from + 0.5), Qt.point(root.span, root.to + 0.5)] }
    }
}
