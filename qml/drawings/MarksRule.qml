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
    readonly property real body: Theme.touchStep
    readonly property var grades: root.rule()
    readonly property var rows: root.layOut()

    implicitWidth: 40 * Theme.apart
    implicitHeight: Math.max(Theme.pictureHeight, root.known.length * (name.height + value.height) + 2 * Theme.indent)

    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    Words { id: name; visible: false; size: Theme.note; text: "0"; Accessible.ignored: true }
    Words { id: value; visible: false; size: Theme.figure; strong: true; text: "0"; Accessible.ignored: true }

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
                x: root.body + 2 * Theme.indent + Theme.apart
                y: Math.round(mark.modelData.middle - height / 2)
                width: Math.max(0, root.width - x)
                objectName: "say"
                Words {
                    width: parent.width
                    text: mark.modelData.mark.text ?? ""
                    size: Theme.figure
                    strong: true
                    lineHeight: Theme.snug
                    Accessible.ignored: true
                }
                Words {
                    width: parent.width
                    text: mark.modelData.mark.name ?? ""
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
    function layOut(): var {
        const deep = name.height + value.height * Theme.snug
        const places = Ruling.apart(root.known.map(mark => root.yOf(mark.height)), root.known.map(() => deep), 0, 0, root.foot)
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
        const numbered = Ruling.ticks(0, units, Math.max(2, Math.floor(root.foot / (1.5 * name.height))))
        const step = fine.length > 1 ? fine[1] - fine[0] : units
        for (const at of fine) {
            const named = numbered.some(other => Math.abs(other - at) < step / 4)
            made.push({y: root.yOf(at * Ruling.size(root.unitLength, 0.01)), text: named && at > 0 ? Ruling.written(at) : "",
                span: named ? Theme.indent + Theme.line : Theme.tickSmall})
        }
        return made
    }
}
