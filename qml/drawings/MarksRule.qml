// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** Bar marks as a scale rule stood on the floor: graduations, numbers where there is room, the marks read off it. */
Item {
    id: root

    /** {name, height (m), text, zoneFrom, zoneTo}; a mark with a zone is a band, not a line. */
    required property var marks
    property string sentence: root.known.map(mark => mark.name + " " + mark.text).join(", ")
    /** Metres of one unit of the rule, 0.01 for centimetres. */
    property real unitLength: 0.01
    property real reach: 0

    readonly property var known: Ruling.list(root.marks).filter(mark => Number.isFinite(mark?.height)).sort((a, b) => b.height - a.height)
    readonly property real upTo: Ruling.size(root.reach, Math.max(0.5, ...root.known.map(mark => 1.06 * Math.max(mark.height, Ruling.number(mark.zoneTo, 0)))))
    readonly property real foot: root.height - Theme.indent
    readonly property real perMetre: Math.max(0, root.foot - Theme.apart) / root.upTo
    readonly property var grades: root.rule()
    readonly property real numbersWide: Ruling.wide(notes.height, notes, Ruling.written(Math.floor(root.upTo / Ruling.size(root.unitLength, 0.01)))) + Theme.indent + 2 * Theme.apart
    readonly property real aside: 2 * Theme.indent + Theme.line
    readonly property real widest: Math.max(1, ...root.known.map(mark => root.least(mark)))
    /** The rule gives up its numbers before a mark's words would run off the page. */
    readonly property bool numbered: root.width - Math.max(Theme.touchStep, root.numbersWide) - root.aside >= root.widest
    readonly property real body: root.numbered ? Math.max(Theme.touchStep, root.numbersWide) : 2 * Theme.indent
    readonly property real column: root.body + root.aside
    readonly property int size: root.fitted()
    readonly property var deeps: root.known.map(mark => Math.ceil(figures.height * root.size / Theme.figure) + Theme.hair + Math.ceil(notes.height * root.linesOf(String(mark.name ?? ""))))
    readonly property var rows: root.layOut()

    implicitWidth: 40 * Theme.apart
    implicitHeight: Math.max(Theme.pictureHeight, root.deeps.reduce((sum, deep) => sum + deep + Theme.line, 2 * Theme.indent))

    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    FontMetrics {
        id: notes
        font { family: Theme.face; pixelSize: Theme.note; weight: Theme.plain }
    }
    FontMetrics {
        id: figures
        font { family: Theme.face; pixelSize: Theme.figure; weight: Theme.strong }
    }
    Rectangle {
        y: root.yOf(root.upTo)
        width: root.body
        height: root.foot - y
        color: Theme.role.wash
        border { width: Theme.hair; color: Theme.role.ink }
    }
    Repeater {
        model: root.grades
        Item {
            id: grade
            required property var modelData
            y: grade.modelData.y
            objectName: "grade"
            Rectangle {
                x: root.body - width
                width: grade.modelData.span
                height: Theme.hair
                color: Theme.role.ink
            }
            Words {
                x: Theme.line
                y: -Math.round(height / 2)
                visible: text !== ""
                text: grade.modelData.text
                size: Theme.note
                quiet: true
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }
    Floor {
        y: root.foot
        width: root.width
    }
    Repeater {
        model: root.rows
        Item {
            id: mark
            required property var modelData
            width: root.width
            Rectangle {
                x: root.body
                y: mark.modelData.zoneTop
                width: Math.max(0, mark.width - x)
                height: mark.modelData.zoneDeep
                objectName: "zone"
                visible: height > 0
                color: Theme.role.wash
            }
            Rectangle {
                x: root.body
                y: mark.modelData.y
                width: Theme.indent
                height: Theme.rule
                objectName: "line"
                color: Theme.role.ink
            }
            Leader {
                x: root.body + Theme.indent
                from: mark.modelData.y
                to: say.y + Math.round(value.height / 2)
            }
            Item {
                id: say
                x: root.column
                y: Math.round(mark.modelData.middle - mark.modelData.deep / 2)
                width: Math.max(0, root.width - x)
                objectName: "say"
                Words {
                    id: value
                    text: String(mark.modelData.mark.text ?? "")
                    size: root.size
                    strong: true
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
                Words {
                    y: value.height
                    width: parent.width
                    text: String(mark.modelData.mark.name ?? "")
                    size: Theme.note
                    quiet: true
                    Accessible.ignored: true
                }
            }
        }
    }

    function yOf(height: real): real {
        return Math.round(root.foot - height * root.perMetre)
    }
    /** The least width that a mark's words need. */
    function least(mark: var): real {
        const value = Ruling.wide(figures.height, figures, String(mark.text ?? "")) * Theme.note / Theme.figure
        return Math.max(value, ...String(mark.name ?? "").split(" ").map(word => Ruling.wide(notes.height, notes, word))) + Theme.rule
    }
    /** Lines a name takes in its column, a word too many rather than one too few. */
    function linesOf(name: string): int {
        const room = Math.max(1, root.width - root.column), space = Ruling.wide(notes.height, notes, " ")
        let lines = 1, along = 0
        for (const word of name.split(" ")) {
            const wide = Ruling.wide(notes.height, notes, word)
            if (along > 0 && along + space + wide > room - Theme.rule) {
                ++lines
                along = 0
            }
            along += (along > 0 ? space : 0) + wide
        }
        return lines
    }
    /** The largest size at which every value fits its column. */
    function fitted(): int {
        const widest = Math.max(1, ...root.known.map(mark => Ruling.wide(figures.height, figures, String(mark.text ?? ""))))
        return Math.max(Theme.note, Math.min(Theme.figure, Math.floor(Theme.figure * (root.width - root.column) / widest)))
    }
    function layOut(): var {
        // the number stands level with its mark, the name below it
        const level = figures.height * root.size / Theme.figure / 2
        const places = Ruling.apart(root.known.map((mark, i) => root.yOf(mark.height) + root.deeps[i] / 2 - level), root.deeps, Theme.line, 0, root.foot - Theme.rule)
        return root.known.map((mark, i) => {
            const zoned = Number.isFinite(mark.zoneFrom) && Number.isFinite(mark.zoneTo)
            const top = zoned ? root.yOf(Math.max(mark.zoneFrom, mark.zoneTo)) : 0
            return {mark: mark, y: root.yOf(mark.height), middle: Math.round(places[i]), deep: root.deeps[i], zoneTop: top,
                zoneDeep: zoned ? root.yOf(Math.min(mark.zoneFrom, mark.zoneTo)) - top : 0}
        })
    }
    /** Numbers at round heights that stand clear of each other, and graduations between them as fine as the eye parts. */
    function rule(): var {
        const unit = Ruling.size(root.unitLength, 0.01), units = root.upTo / unit
        if (!(root.perMetre > 0) || !Number.isFinite(units))
            return []
        const numbered = Ruling.ticks(0, units, Math.max(2, Math.floor(root.foot / (1.5 * Math.max(1, notes.height)))))
        const step = numbered.length > 1 ? numbered[1] : units, digit = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9))
        const parts = (digit < 1.5 ? [10, 5, 2] : digit < 2.2 ? [4, 2] : [5]).find(n => step * unit * root.perMetre / n >= 1.5 * Theme.line) ?? 1
        return Array.from({length: Math.floor(units / step * parts + 1e-9) + 1}, (_, i) => ({y: root.yOf(i * step / parts * unit),
            text: root.numbered && i > 0 && i % parts === 0 && root.yOf(i * step / parts * unit) >= notes.height / 2 ? Ruling.written(i / parts * step) : "", span: i % parts === 0 ? Theme.indent : Theme.tickSmall}))
    }
}
