// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Shapes
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Theme

/** Where the pull is not known: the line breaks off at two strokes, a dashed rule says where, a word says what. */
Item {
    id: root

    required property rect plot
    /** Where knowledge ends, and the far end of the stretch, as heights on the page; where the line broke off. */
    required property real edge
    required property real far
    required property real brokenAt
    required property string text

    Accessible.ignored: true

    Shape {
        ShapePath {
            strokeColor: Theme.role.ink
            strokeWidth: Theme.rule
            strokeStyle: ShapePath.DashLine
            dashPattern: [3, 3]
            fillColor: "transparent"
            PathPolyline { path: [Qt.point(root.plot.x, root.edge), Qt.point(root.plot.right, root.edge)] }
        }
        ShapePath {
            strokeColor: Theme.role.ink
            strokeWidth: Theme.ring
            fillColor: "transparent"
            PathMultiline { paths: root.strokes() }
        }
    }
    Rectangle {
        x: words.x - Theme.line
        y: words.y
        width: words.width + 2 * Theme.line
        height: words.height
        visible: words.text !== ""
        color: Theme.role.paper
        border { width: Theme.hair; color: Theme.role.ink }
    }
    Words {
        id: words
        x: Math.round(Ruling.within(root.brokenAt - width - 2 * Theme.apart, root.plot.x + Theme.apart, Math.max(root.plot.x + Theme.apart, root.plot.right - width - Theme.apart)))
        y: Math.round(Ruling.within((root.edge + root.far) / 2 - height / 2, 0, Math.max(0, root.plot.bottom - height)))
        width: Math.min(implicitWidth, Math.max(0, root.plot.width - 3 * Theme.apart))
        objectName: "unknown"
        text: root.text
        size: Theme.note
        strong: true
        Accessible.ignored: true
    }

    function strokes(): var {
        const half = Theme.apart, gap = Theme.line
        return [0, 1].map(i => [Qt.point(root.brokenAt - half, root.edge + half / 2 - i * 2 * gap), Qt.point(root.brokenAt + half, root.edge - half / 2 - i * 2 * gap)])
    }
}
