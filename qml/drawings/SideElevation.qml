// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** One end of the bar from the front, to scale both ways: floor, plates, chains hanging and heaped, bands from their anchors. */
Item {
    id: root

    required property real barHeight
    required property real pixelsPerMetre
    required property real floorY
    /** From the inside out: {diameterMm, thicknessMm}. */
    property var plates: []
    /** Side by side, from the plates out: {kind: "chain" | "band", …} as ChainHung and BandHung take them. */
    property var items: []
    property string sentence: ""

    readonly property real perMetre: Ruling.size(root.pixelsPerMetre, 0)
    readonly property real standing: Math.max(0, Ruling.number(root.barHeight, 0))
    readonly property real barY: Math.round(root.floorY - root.standing * root.perMetre)
    readonly property var discs: Ruling.list(root.plates).map(plate => ({thick: Math.min(0.3, Ruling.size(plate?.thicknessMm, 10) / 1000),
        wide: Math.min(1, Ruling.size(plate?.diameterMm, 100) / 1000)}))
    /** Chains and bands apart, so that a change of plates moves them but makes none anew. */
    readonly property var hung: Ruling.list(root.items).filter(item => item?.kind === "chain" || item?.kind === "band")
    readonly property var chains: root.hung.filter(item => item.kind === "chain")
    readonly property var bands: root.hung.filter(item => item.kind === "band")
    /** How far the drawing reaches to the side, in metres, when nothing has to be pushed together. */
    readonly property real reach: root.inside + Math.max(0.32, root.iron + root.hung.reduce((sum, item) => sum + root.slot(item), 0.05))
    readonly property real inside: 0.04
    readonly property real iron: root.discs.reduce((sum, disc) => sum + disc.thick + 0.002, 0)
    readonly property var spots: root.layOut()
    readonly property var noSpot: ({x: 0, room: 0})

    implicitWidth: Math.ceil(root.reach * root.perMetre)
    implicitHeight: root.floorY + 2 * Theme.apart

    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence
    Accessible.ignored: root.sentence === ""

    Floor {
        y: root.floorY
        width: root.width
    }
    BarEnd {
        y: root.barY
        objectName: "bar"
        visible: root.perMetre > 0
        plates: root.spots.discs
        shaft: root.spots.shaft
        sleeve: root.spots.sleeve
        perMetre: root.perMetre
    }
    Repeater {
        model: root.chains
        ChainHung {
            id: hungChain
            required property var modelData
            required property int index
            readonly property var spot: root.spots.chains[hungChain.index] ?? root.noSpot
            x: hungChain.spot.x
            objectName: "chain"
            barHeight: root.standing
            perMetre: root.perMetre
            floorY: root.floorY
            chain: hungChain.modelData
            room: hungChain.spot.room
        }
    }
    Repeater {
        model: root.bands
        BandHung {
            id: hungBand
            required property var modelData
            required property int index
            readonly property var spot: root.spots.bands[hungBand.index] ?? root.noSpot
            x: hungBand.spot.x
            objectName: "band"
            barHeight: root.standing
            perMetre: root.perMetre
            floorY: root.floorY
            band: hungBand.modelData
            room: hungBand.spot.room
        }
    }

    function slot(item: var): real {
        return (item.kind === "chain" ? 0.11 : 0.08) * (item.hang === "doubled" || item.hang === "bunched" ? 1.3 : 1)
    }
    /** Plates keep their scale as long as they can; what hangs beside them moves together when the page is narrow. */
    function layOut(): var {
        const scale = root.perMetre, wide = Math.max(1, root.width), shaft = Math.round(Math.min(root.inside * scale, wide / 6))
        const squeeze = Math.min(1, 0.6 * (wide - shaft) / Math.max(1, root.iron * scale))
        const made = {shaft: shaft, sleeve: 0, discs: [], chains: [], bands: []}
        if (!(scale > 0))
            return made
        let x = shaft
        for (const disc of root.discs) {
            const thick = Math.max(1, disc.thick * scale * squeeze)
            made.discs.push({x: Math.round(x), wide: Math.max(1, Math.round(thick)), high: Math.round(disc.wide * scale)})
            x += thick + 0.002 * scale * squeeze
        }
        const all = root.hung.reduce((sum, item) => sum + root.slot(item), 0.03), free = Math.max(1, wide - x)
        const per = Math.min(scale, free / all)
        x += 0.015 * per
        for (const item of root.hung) {
            const room = root.slot(item) * per
            const kind = item.kind === "chain" ? made.chains : made.bands
            kind.push({x: Math.round(x + room / 2), room: room})
            x += room
        }
        made.sleeve = Math.round(Math.min(wide - shaft, Math.max(0.32 * Math.min(scale, wide / root.reach), x + 0.015 * per - shaft)))
        return made
    }
}
