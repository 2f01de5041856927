// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Theme

/** The signature picture: what hangs and what it pulls, on one height axis from the same floor. */
Item {
    id: root

    /**
     * Point lists (x pull as shown, y metres) as PullChart takes them, and heightTo, pullTo; unknownAbove and unknownBelow (m), or unknownFrom
     * for either, when the pull is not known all the way.
     */
    required property var curve
    /** {key, name, height (m), heightText, pull, text, zoneFrom, zoneTo}; a mark with a zone is a band across both drawings. */
    required property var marks
    required property string sentence
    property string unitText: ""
    property string ironName: qsTr("iron")
    property string chainName: qsTr("chain")
    property string bandName: qsTr("band")
    property string unknownText: qsTr("unknown")

    /** What hangs, as SideElevation takes it. */
    property var plates: []
    property var items: []
    property bool withSketch: !Theme.stacked
    /** Where the bar stands when nothing is being read; NaN: in the sticking zone, else half way. */
    property real barHeight: NaN

    /** Reading: a tap or a key moves the line to a stop, at every step and at the marks. Whoever binds readHeight moves it on readAt. */
    property bool reading: true
    property real readHeight: NaN
    property string readingText: ""
    property real readStep: 0.05
    property string lowerText: qsTr("read lower")
    property string higherText: qsTr("read higher")

    readonly property alias facts: facts
    readonly property alias frame: frame
    readonly property alias chart: chart
    readonly property real shownHeight: Ruling.number(reader.at, facts.standing)

    signal readAt(real metres)

    implicitWidth: 40 * Theme.apart
    implicitHeight: frame.wants + (root.reading ? keys.implicitHeight + Theme.apart : 0)

    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    PictureFacts {
        id: facts
        curve: root.curve
        marks: root.marks
        barHeight: root.barHeight
        shareNames: [root.ironName, root.chainName, root.bandName]
    }
    PictureFrame {
        id: frame
        width: root.width
        height: root.reading ? keys.y - Theme.apart : root.height
        facts: facts
        footDeep: foot.implicitHeight
        gutter: heights.least
        columnWide: readOuts.columnWide
        rowsDeep: readOuts.rowsDeep
        namesWide: names.rowWide
        longestName: names.longest
        nameLine: names.line
        readDeep: root.reading ? names.line * (Theme.stacked ? 2 : 1) + Theme.apart : 0
        sketchReach: root.withSketch ? elevation.reach : 0
    }
    HeightReader {
        id: reader
        height: root.readHeight
        facts: facts
        step: root.readStep
    }

    // the sticking zone is a band right across both drawings
    Pool {
        id: zones
        list: facts.known.filter(mark => mark.zoned)
        ZoneStretch {
            id: zone
            required property int index
            readonly property var of: zones.list[zone.index] ?? {zoneFrom: 0, zoneTo: 0}
            x: frame.sketch > 0 ? 0 : frame.plot.x
            y: root.yOf(Math.max(zone.of.zoneFrom, zone.of.zoneTo))
            width: frame.plot.right - x
            height: root.yOf(Math.min(zone.of.zoneFrom, zone.of.zoneTo)) - y
            objectName: "zone"
            visible: zone.index < zones.list.length
            gapFrom: frame.sketch > 0 ? frame.sketch : 0
            gapTo: frame.sketch > 0 ? frame.plot.x - Theme.line : 0
        }
    }
    SideElevation {
        id: elevation
        width: frame.sketch
        height: frame.floorY
        visible: frame.sketch > 0
        barHeight: root.shownHeight
        pixelsPerMetre: frame.perMetre
        floorY: frame.floorY
        plates: root.plates
        items: root.items
    }
    PullChart {
        id: chart
        width: root.width
        height: frame.floorY + foot.height
        heightFrom: 0
        heightTo: facts.heightTo
        pullFrom: facts.pullFrom
        pullTo: facts.pullTo
        plot: frame.plot
        curve: root.curve
        knownFrom: facts.knownFrom
        knownTo: facts.knownTo
    }
    Rectangle {
        x: root.xOf(0)
        y: frame.plot.y
        width: Theme.hair
        height: frame.plot.height
        objectName: "axis"
        color: Theme.role.ink
    }
    FootScale {
        id: foot
        y: frame.floorY
        width: root.width
        height: implicitHeight
        start: frame.plot.x
        span: frame.plot.width
        from: facts.pullFrom
        to: facts.pullTo
        unit: root.unitText
    }
    MarkLines {
        marks: facts.known
        places: facts.known.map(mark => Qt.point(root.xOf(Ruling.number(mark.pull, NaN)), root.yOf(mark.height)))
        sketch: frame.sketch
        plot: frame.plot
    }
    SideScale {
        id: heights
        texts: facts.known.map(mark => mark.heightText)
        heights: facts.known.map(mark => root.yOf(mark.height))
        axis: frame.plot.x
        lowest: frame.floorY
        ticked: false
    }
    MarkReadOuts {
        id: readOuts
        width: root.width
        marks: facts.known
        heights: facts.known.map(mark => root.yOf(mark.height))
        inRows: frame.inRows
        column: frame.plot.right + Theme.apart
        lowest: frame.floorY
        rowsY: frame.floorY + foot.height
    }
    ShareNames {
        id: names
        readonly property real end: frame.namesAbove ? facts.drawnTo : facts.drawnFrom
        readonly property var shares: facts.sharesAt(end)
        y: root.yOf(end) + (frame.namesAbove ? -1 : 1) * Theme.ring
        every: facts.present.map(share => share.name)
        names: shares.map(share => share.name)
        starts: shares.map(share => root.xOf(share.pull))
        from: Math.max(0, Math.min(frame.plot.x + Theme.line, to - longest))
        to: frame.inRows ? root.width : frame.plot.right
        visible: !(frame.namesAbove && line.visible && line.y + line.saidY < y) // where what is read stands just now
        upwards: frame.namesAbove
        rows: frame.nameRows
        // a name too long to begin beside the axis keeps clear of the heights there
        skip: from >= frame.plot.x ? 0 : Math.max(0, frame.namesAbove ? y - heights.highestWord : heights.lowestWord - y) - Theme.tick + Theme.line
    }
    Repeater {
        model: [{from: facts.knownTo, to: facts.topmost}, {from: facts.knownFrom, to: facts.from}]
            .filter((stretch, i) => Number.isFinite(stretch.from) && (stretch.to - stretch.from) * (i === 0 ? 1 : -1) > 0)
        UnknownStretch {
            required property var modelData
            plot: frame.plot
            edge: root.yOf(modelData.from)
            far: root.yOf(modelData.to)
            brokenAt: root.xOf(Ruling.number(facts.at(facts.lines.total, modelData.from), 0))
            text: root.unknownText
        }
    }
    ReadingLine {
        id: line
        y: root.yOf(root.shownHeight)
        width: frame.inRows ? root.width : frame.plot.right
        visible: root.reading && Number.isFinite(reader.at)
        gapFrom: frame.sketch
        gapTo: frame.plot.x - Theme.line
        end: width
        room: y
        dot: root.xOf(facts.at(facts.lines.total, root.shownHeight))
        text: root.readingText
    }
    Item {
        width: frame.plot.right
        height: frame.floorY
        objectName: "tapArea"
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Tap to read the pull at a height")
        TapHandler {
            enabled: root.reading
            onTapped: point => root.read(reader.nearest((frame.floorY - point.position.y) / frame.perMetre), point.position.x)
        }
    }
    ReadingKeys {
        id: keys
        y: root.height - height
        width: root.width
        height: implicitHeight
        visible: root.reading
        lowerText: root.lowerText
        higherText: root.higherText
        canLower: Number.isFinite(reader.next(root.shownHeight, -1))
        canRise: Number.isFinite(reader.next(root.shownHeight, 1))
        onLowered: root.read(reader.next(root.shownHeight, -1), NaN)
        onRaised: root.read(reader.next(root.shownHeight, 1), NaN)
    }

    function read(height: real, finger: real) {
        if (!Number.isFinite(height))
            return
        line.finger = finger
        root.readAt(height)
        // only a page that did not bind the height leaves it to the picture
        if (root.readHeight !== height)
            root.readHeight = height
    }
    function yOf(height: real): real {
        return Math.round(frame.floorY - height * frame.perMetre)
    }
    function xOf(pull: real): real {
        return Math.round(frame.plot.x + frame.plot.width * (pull - facts.pullFrom) / (facts.pullTo - facts.pullFrom))
    }
}
