// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
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
    readonly property real body: Math.max(Theme.touchStep, ...root.grades.map(grade => Ruling.wide(notes.height, notes, grade.text))) + Theme.indent + 2 * Theme.apart
    readonly property real column: root.body + 2 * Theme.indent + Theme.apart
    readonly property int size: root.fitted()
    readonly property real deep: Math.ceil(figures.height * root.size / Theme.figure) + Math.ceil(notes.height)
    readonly property var rows: root.layOut()

    implicitWidth: 40 * Theme.apart
    implicitHeight: Math.max(Theme.pictureHeight, root.known.length * (root.deep + Theme.line) + 2 * Theme.indent)

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
                to: mark.modelData.middle
            }
            Column {
                x: root.column
                y: Math.round(mark.modelData.middle - height / 2)
                width: Math.max(0, root.width - x)
                objectName: "say"
                Words {
                    width: parent.width
                    text: String(mark.modelData.mark.text ?? "")
                    size: root.size
                    strong: true
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
                Words {
                    width: parent.width
                    text: String(mark.modelData.mark.name ?? "")
                    size: Theme.note
                    quiet: true
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
        }
    }

    function yOf(height: real): real {
        return Math.round(root.foot - height * root.perMetre)
    }
    /** The largest size at which every value fits its column. */
    function fitted(): int {
        const widest = Math.max(1, ...root.known.map(mark => Ruling.wide(figures.height, figures, String(mark.text ?? ""))))
        return Math.max(Theme.note, Math.min(Theme.figure, Math.floor(Theme.figure * (root.width - root.column) / widest)))
    }
    function layOut(): var {
        const places = Ruling.apart(root.known.map(mark => root.yOf(mark.height)), root.known.map(() => root.deep), Theme.line, 0, root.foot)
        return root.known.map((mark, i) => {
            const zoned = Number.isFinite(mark.zoneFrom) && Number.isFinite(mark.zoneTo)
            const top = zoned ? root.yOf(Math.max(mark.zoneFrom, mark.zoneTo)) : 0
            return {mark: mark, y: root.yOf(mark.height), middle: Math.round(places[i]), zoneTop: top,
                zoneDeep: zoned ? root.yOf(Math.min(mark.zoneFrom, mark.zoneTo)) - top : 0}
        })
    }
    /** Graduations as fine as the eye parts them, numbers at round ones that stand clear of each other. */
    function rule(): var {
        const units = root.upTo / Ruling.size(root.unitLength, 0.01), made = []
        if (!(root.perMetre > 0))
            return made
        const fine = Ruling.ticks(0, units, Math.max(2, Math.floor(root.foot / Theme.line / 1.5)))
        const numbered = Ruling.ticks(0, units, Math.max(2, Math.floor(root.foot / (1.5 * notes.height))))
        const step = fine.length > 1 ? fine[1] - fine[0] : units
        for (const at of fine) {
            const named = numbered.some(other => Math.abs(other - at) < step / 4)
            made.push({y: root.yOf(at * Ruling.size(root.unitLength, 0.01)), text: named && at > 0 ? Ruling.written(at) : "",
                span: named ? Theme.indent + Theme.line : Theme.tickSmall})
        }
        return made
    }
}
