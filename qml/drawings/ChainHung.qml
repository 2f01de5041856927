// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** A chain under the bar, to scale: its lead, links in the air at true pitch (face and edge in turn), the rest heaped on the floor. */
Item {
    id: root

    required property real barHeight
    required property real perMetre
    required property real floorY
    /** {hang: "straight" | "doubled" | "bunched", lead, length, pitch, wire, bunch}, in metres; `bunch` is the bundle's height. */
    required property var chain
    property real room: 2 * Theme.indent

    readonly property real lead: Math.max(0, Ruling.number(root.chain?.lead, 0))
    readonly property real pitch: Ruling.size(root.chain?.pitch, 0.05)
    readonly property real wire: Math.min(root.pitch / 2, Ruling.size(root.chain?.wire, root.pitch / 3))
    readonly property bool doubled: root.chain?.hang === "doubled"
    readonly property bool bunched: root.chain?.hang === "bunched"
    readonly property real bunch: Ruling.size(root.chain?.bunch, 4 * root.pitch)
    /** Links of the whole chain, those in the air (of all strands), those on the floor. */
    readonly property int links: Math.round(Math.min(20, Math.max(0, Ruling.number(root.chain?.length, 0))) / root.pitch)
    readonly property int hangingLinks: root.count(Math.max(0, root.barHeight - root.lead))
    readonly property int floorLinks: root.links - root.hangingLinks

    readonly property real barY: Math.round(root.floorY - root.barHeight * root.perMetre)
    readonly property real endY: Math.round(root.barY + Math.min(root.lead, Math.max(0, root.barHeight)) * root.perMetre)
    readonly property real slackLead: Math.max(0, root.lead - Math.max(0, root.barHeight)) * root.perMetre
    readonly property real linkLong: Math.max(2 * Theme.line, (root.pitch + 2 * root.wire) * root.perMetre)
    readonly property real linkWide: Math.max(Theme.line + Theme.rule, 3.4 * root.wire * root.perMetre)
    readonly property real heapRow: Theme.line + Theme.rule
    /** A heap spreads before it grows higher than a hand. */
    readonly property int heapBase: Math.max(2, Math.min(6, Math.floor(root.room / (0.62 * root.linkLong))),
                                             Math.ceil(Math.min(100, root.floorLinks) / Math.max(3, Math.floor(0.15 * root.perMetre / root.heapRow))))

    Accessible.ignored: true

    Repeater {
        model: root.heap(root.floorLinks, root.floorY, root.heapBase)
        LyingLink { objectName: "heaped" }
    }
    Rectangle {
        x: -Math.floor(width / 2)
        y: root.barY
        width: Theme.rule
        height: Math.max(0, root.endY - root.barY)
        objectName: "lead"
        visible: root.links > 0
        color: Theme.role.ink
    }
    Rectangle {
        y: root.floorY - height
        width: Math.min(root.slackLead, root.room / 2)
        height: Theme.rule
        visible: root.links > 0 && width > 0
        color: Theme.role.ink
    }
    Repeater {
        model: root.bunched ? [] : root.strands()
        Rectangle {
            required property var modelData
            x: Math.round(modelData.x - width / 2)
            y: modelData.y
            width: modelData.face ? Math.round(root.linkWide) : Theme.ring
            height: Math.round(root.linkLong)
            objectName: "link"
            radius: width / 2
            color: modelData.face ? "transparent" : Theme.role.ink
            border { width: Theme.rule; color: Theme.role.ink }
        }
    }
    Repeater {
        model: root.bunched ? root.heap(root.hangingLinks, root.endY + root.bundleDeep(), root.bundleBase()) : []
        LyingLink { objectName: "link" }
    }
    component LyingLink: Rectangle {
        required property var modelData
        x: modelData.x
        y: modelData.y
        width: Math.round(root.linkLong)
        height: root.heapRow
        radius: height / 2
        color: Theme.role.paper
        border { width: Theme.hair; color: Theme.role.ink }
    }

    function count(drop: real): int {
        if (!Number.isFinite(drop))
            return 0
        if (root.bunched)
            return Math.floor(root.links * Math.min(1, drop / root.bunch) + 1e-9)
        const each = Math.floor(drop / root.pitch + 1e-9)
        return root.doubled ? Math.min(2 * each, root.links) : Math.min(each, root.links)
    }
    /** Links in the air; a pitch too fine to see is drawn coarser. */
    function strands(): var {
        const fine = Math.max(1, Math.ceil(Theme.line / (root.pitch * root.perMetre)))
        const step = root.pitch * fine * root.perMetre, made = [], sides = root.doubled ? 2 : 1
        for (let side = 0; side < sides; ++side) {
            const mine = Math.floor((root.hangingLinks + (side === 0 ? sides - 1 : 0)) / sides / fine)
            for (let i = 0; i < mine; ++i)
                made.push({face: i % 2 === 0, x: sides === 1 ? 0 : (side - 0.5) * (root.linkWide + Theme.rule), y: Math.round(root.endY + i * step)})
        }
        return made
    }
    function bundleDeep(): real {
        return Math.max(root.heapRow, root.bunch * root.perMetre)
    }
    function bundleBase(): int {
        return Math.max(2, Math.ceil(root.links / Math.max(1, Math.floor(root.bundleDeep() / root.heapRow))))
    }
    /** Lying links in rows from `bottom` up, a row of `base` and one less in turn; a very large heap shows its first hundred links. */
    function heap(count: int, bottom: real, base: int): var {
        const made = []
        let row = 0, along = 0
        for (let i = 0; i < Math.min(100, count); ++i) {
            const inRow = base - row % 2
            made.push({x: Math.round((along - (inRow - 1) / 2) * 0.62 * root.linkLong - root.linkLong / 2), y: Math.round(bottom - (row + 1) * root.heapRow)})
            if (++along >= inRow) {
                along = 0
                ++row
            }
        }
        return made
    }
}
