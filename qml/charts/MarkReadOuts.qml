// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Theme

/** What is read off at each mark: beside the plot, each at its height or as near as the others let it, or as rows below the picture. */
Item {
    id: root

    /** {name, text} from the top down, and the height on the page of each. */
    required property var marks
    required property var heights
    required property bool inRows
    /** Left edge of the column beside the plot, and the end it must keep above. */
    property real column: 0
    property real lowest: 0
    property real rowsY: 0

    readonly property var sizes: root.marks.map(mark => root.measure(mark))
    /** Width the column needs, and height the rows need. */
    readonly property real columnWide: Math.max(0, ...root.sizes.map(size => size.wide)) + Theme.rule
    readonly property real rowsDeep: root.sizes.reduce((sum, size) => sum + root.rowDeep(size), 0)
    readonly property real line: Math.ceil(strongs.height)
    readonly property var places: root.sizes.length === root.heights.length
        ? Ruling.apart(root.heights.map((y, i) => y + root.sizes[i].deep / 2 - root.line / 2), root.sizes.map(size => size.deep), Theme.line, 0, root.lowest) : []

    Accessible.ignored: true

    FontMetrics {
        id: strongs
        font { family: Theme.face; pixelSize: Theme.note; weight: Theme.strong }
    }
    FontMetrics {
        id: plains
        font { family: Theme.face; pixelSize: Theme.note; weight: Theme.plain }
    }
    Pool {
        list: root.marks
        Item {
            id: mark
            required property int index
            readonly property var of: root.marks[mark.index] ?? {text: "", name: ""}
            readonly property var size: root.sizes[mark.index] ?? {value: 0, name: 0, deep: 0}
            readonly property real middle: Math.round(root.places[mark.index] ?? 0)
            readonly property real upper: root.inRows ? root.rowY(mark.index) : Math.round(mark.middle - mark.size.deep / 2)
            visible: mark.index < root.marks.length

            Rule {
                y: mark.upper
                width: root.width
                visible: root.inRows
            }
            Leader {
                x: root.column - Theme.apart
                visible: !root.inRows && Math.abs(to - from) > root.line / 2
                from: root.heights[mark.index] ?? 0
                to: mark.upper + root.line / 2
                span: Theme.line + Theme.rule
            }
            Item {
                x: root.inRows ? 0 : root.column
                y: mark.upper + (root.inRows ? Theme.line : 0)
                width: root.inRows ? root.width : root.columnWide
                height: mark.size.deep
                objectName: "readOut"
                Words {
                    id: value
                    text: mark.of.text
                    size: Theme.note
                    strong: true
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
                Words {
                    x: root.beside(mark.size) ? value.width + Theme.indent : 0
                    y: root.beside(mark.size) ? 0 : root.line
                    width: parent.width - x
                    text: mark.of.name
                    size: Theme.note
                    quiet: true
                    lineHeight: Theme.snug
                    Accessible.ignored: true
                }
            }
        }
    }

    /** In a row the name follows the value on the same line when both fit. */
    function beside(size: var): bool {
        return root.inRows && size.value + Theme.indent + size.name <= root.width
    }
    function rowDeep(size: var): real {
        const lines = size.value + Theme.indent + size.name <= root.width ? 1 : 1 + Math.ceil(1.2 * size.name / Math.max(1, root.width))
        return lines * root.line + 2 * Theme.line
    }
    function rowY(index: int): real {
        return root.rowsY + root.sizes.slice(0, index).reduce((sum, size) => sum + root.rowDeep(size), 0)
    }
    /** Beside the plot a name of two words stands on two lines. */
    function measure(mark: var): var {
        const value = Ruling.wide(strongs.height, strongs, mark.text), whole = Ruling.wide(plains.height, plains, mark.name)
        const words = mark.name.split(" "), widest = Math.max(...words.map(word => Ruling.wide(plains.height, plains, word)))
        const wide = Math.max(value, widest), space = Ruling.wide(plains.height, plains, " ")
        let lines = mark.name === "" ? 0 : 1, along = 0
        for (const word of words) {
            const w = Ruling.wide(plains.height, plains, word)
            if (along > 0 && along + space + w > wide) {
                ++lines
                along = 0
            }
            along += (along > 0 ? space : 0) + w
        }
        return {value: value, name: whole, wide: wide, deep: root.line + Math.ceil(lines * plains.height)}
    }
}
