// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** One side of the bar from the inside out: plates to scale, a number under each with a leader. No colour. */
Item {
    id: root

    /** From the inside out: {label, diameterMm, thicknessMm, hang: "" | "chain" | "band", change: −1 | 0 | 1}. */
    required property var plates
    property string sideText: ""
    property real drawHeight: Theme.stripHeight
    property int numberSize: Theme.figure
    property string sentence: (root.sideText === "" ? "" : root.sideText + ": ") + root.items.map(item => item.label).join(", ")

    readonly property var items: Ruling.list(root.plates).map(plate => root.read(plate))
    readonly property real perMm: root.drawHeight / Math.max(450, ...root.items.map(item => item.diameter))
    readonly property real axis: Math.round(root.strip.y + root.drawHeight / 2)
    readonly property real foot: root.strip.y + root.drawHeight + Theme.apart
    readonly property var strip: root.layOut()
    readonly property var noSpot: ({item: {label: "", hang: "", change: 0, diameter: 0}, x: 0, wide: 0, mid: 0, label: 0})

    implicitWidth: 40 * Theme.apart
    implicitHeight: root.foot + (root.strip.listed ? listed.height : root.items.length > 0 ? root.strip.line : 0)

    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    FontMetrics {
        id: metrics
        font { family: Theme.face; pixelSize: root.numberSize; weight: Theme.strong }
    }
    FontMetrics {
        id: notes
        font { family: Theme.face; pixelSize: Theme.note; weight: Theme.plain }
    }
    Words {
        y: root.strip.sideAbove ? 0 : Math.round(root.axis - height / 2)
        width: root.strip.sideAbove ? root.width : root.strip.side
        objectName: "side"
        visible: text !== ""
        text: root.strip.sideAbove ? root.sideText : root.sideText.split(" ").join("\n")
        size: Theme.note
        quiet: true
        wrapMode: root.strip.sideAbove ? Text.WordWrap : Text.NoWrap
        Accessible.ignored: true
    }
    Rectangle {
        x: root.strip.start
        y: root.axis - Theme.ring
        width: root.strip.shaft
        height: 2 * Theme.ring
        color: Theme.role.ink
    }
    Rectangle {
        x: root.strip.start + root.strip.shaft
        y: root.axis - Math.round(height / 2)
        width: Theme.line
        height: 2 * Theme.tick
        color: Theme.role.ink
    }
    Rectangle {
        x: root.strip.start + root.strip.shaft + Theme.line
        y: root.axis - Math.round(height / 2)
        width: root.strip.end - x
        height: 2 * Theme.line + Theme.rule
        objectName: "sleeve"
        color: Theme.role.paper
        border { width: Theme.hair; color: Theme.role.ink }
    }
    Pool {
        id: irons
        list: root.strip.spots.filter(spot => spot.item.hang === "")
        PlateSide {
            id: iron
            required property int index
            readonly property var spot: irons.list[iron.index] ?? root.noSpot
            x: iron.spot.x
            y: root.axis - Math.round(height / 2)
            width: iron.spot.wide
            height: Math.max(2 * Theme.line, Math.round(iron.spot.item.diameter * root.perMm))
            objectName: "plate"
            visible: iron.index < irons.list.length
            change: iron.spot.item.change
        }
    }
    Pool {
        id: hangers
        list: root.strip.spots.filter(spot => spot.item.hang !== "")
        Hanger {
            id: hanger
            required property int index
            readonly property var spot: hangers.list[hanger.index] ?? root.noSpot
            x: hanger.spot.x
            y: root.axis - Theme.apart
            width: hanger.spot.wide
            height: root.strip.y + root.drawHeight - y + Theme.rule
            objectName: "hanger"
            visible: hanger.index < hangers.list.length
            chain: hanger.spot.item.hang === "chain"
        }
    }
    Pool {
        list: root.strip.spots
        Item {
            id: named
            required property int index
            readonly property var spot: root.strip.spots[named.index] ?? root.noSpot
            visible: named.index < root.strip.spots.length

            Shape {
                visible: !root.strip.listed
                ShapePath {
                    strokeColor: Theme.role.edge
                    strokeWidth: Theme.hair
                    fillColor: "transparent"
                    PathPolyline {
                        path: [Qt.point(named.spot.mid, root.leaderTop(named.spot.item)), Qt.point(named.spot.label, root.foot)]
                    }
                }
            }
            Words {
                x: Math.round(named.spot.label - width / 2)
                y: root.foot
                height: root.strip.line
                objectName: "number"
                visible: !root.strip.listed
                text: named.spot.item.label
                size: named.spot.item.hang === "" ? root.strip.size : Math.min(root.strip.size, Theme.body)
                strong: named.spot.item.hang === ""
                wrapMode: Text.NoWrap
                verticalAlignment: Text.AlignVCenter
                Accessible.ignored: true
            }
        }
    }
    Words {
        id: listed
        y: root.foot
        width: root.width
        objectName: "listed"
        visible: root.strip.listed
        text: root.items.map(item => item.label).join("  ")
        size: Theme.act
        strong: true
        Accessible.ignored: true
    }

    function leaderTop(item: var): real {
        return item.hang !== "" ? root.strip.y + root.drawHeight + Theme.rule
                                : Math.min(root.foot, root.axis + Math.round(item.diameter * root.perMm / 2) + Theme.hair)
    }
    function read(plate: var): var {
        const hang = plate?.hang === "chain" || plate?.hang === "band" ? plate.hang : ""
        const change = hang === "" ? Math.sign(Ruling.number(plate?.change, 0)) : 0
        const sign = change > 0 ? "+" : change < 0 ? "−" : ""
        return {label: sign + String(plate?.label ?? ""), hang: hang, change: change,
            diameter: Math.min(1000, Ruling.size(plate?.diameterMm, 100)), thickness: Math.min(400, Ruling.size(plate?.thicknessMm, 10))}
    }
    /** Where all stands: the drawing shrinks along the bar and the numbers shrink to their least before they are listed instead. */
    function layOut(): var {
        const words = root.sideText.split(" "), widest = Math.max(...words.map(word => Ruling.wide(notes.height, notes, word)))
        const sideAbove = words.length > 2 || widest > root.width / 4 || words.length * notes.height > root.drawHeight
        const side = root.sideText === "" || sideAbove ? 0 : widest
        const start = side > 0 ? side + Theme.apart : 0, shaft = Theme.wide ? 3 * Theme.apart : 2 * Theme.apart
        const made = {side: side, sideAbove: sideAbove && root.sideText !== "", start: start, shaft: shaft, spots: [],
            y: sideAbove && root.sideText !== "" ? Theme.line + Math.ceil(notes.height) * Math.ceil(Ruling.wide(notes.height, notes, root.sideText) / Math.max(1, root.width)) : 0}
        root.drawAlong(made)
        root.numberAlong(made)
        return made
    }
    function drawAlong(made: var) {
        const from = made.start + made.shaft + Theme.line, room = Math.max(1, root.width - from - 2 * Theme.apart)
        const thick = root.perMm * (Theme.wide ? 5 : 6.2), hanger = 2.5 * Theme.apart
        const want = root.items.map(item => item.hang !== "" ? hanger : Math.max(Theme.line, item.thickness * thick))
        const total = want.reduce((sum, wide) => sum + wide, 0), gaps = Theme.ring * root.items.length
        const squeeze = Math.min(1, Math.max(0.1, room - gaps) / Math.max(1, total))
        const gap = Math.min(Theme.ring, room / (3 * Math.max(1, root.items.length)))
        let x = from + gap
        root.items.forEach((item, i) => {
            const wide = Math.max(1, want[i] * squeeze)
            made.spots.push({item: item, x: Math.round(x), wide: Math.max(1, Math.round(wide)), mid: Math.round(x + wide / 2), label: 0})
            x += wide + gap
        })
    }
    function numberAlong(made: var) {
        const gap = Theme.wide ? 2 * Theme.apart : Theme.apart, room = root.width - made.start
        // chain and band have a smaller word; widths grow in proportion to the size
        const unit = metrics.height > 0 ? root.numberSize : 1
        const widths = size => root.items.map(item => Ruling.wide(metrics.height, metrics, item.label)
                                              * (item.hang === "" ? size : Math.min(size, Theme.body)) / unit + Theme.rule)
        let size = root.numberSize
        const needs = s => widths(s).reduce((sum, wide) => sum + wide, 0) + gap * Math.max(0, root.items.length - 1)
        while (size > Theme.act && needs(size) > room)
            --size
        made.size = size
        made.line = Math.ceil(size * metrics.height / unit)
        made.listed = needs(size) > room
        const places = Ruling.apart(made.spots.map(spot => spot.mid), widths(size), gap, made.start, root.width)
        let free = made.start
        made.spots.forEach((spot, i) => {
            spot.label = Math.round(places[i])
            // what hangs can stand above its word, as far out as the page allows
            if (spot.item.hang !== "" && !made.listed)
                spot.x = Math.round(Ruling.within(spot.label - spot.wide / 2, Math.max(spot.x, free), Math.max(spot.x, root.width - spot.wide - 2 * Theme.apart)))
            spot.mid = Math.round(spot.x + spot.wide / 2)
            free = spot.x + spot.wide + Theme.rule
        })
        made.end = Math.min(root.width, Math.max(free + 2 * Theme.apart, made.start + 15 * Theme.apart))
    }
}
