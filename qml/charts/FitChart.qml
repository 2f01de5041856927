// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Theme

/** A band's own picture: length up the page, pull to the right; dots are hung plates, the odd one is open. */
Item {
    id: root

    /** {x, y, odd, label}; the label of an odd one stands beside it. */
    required property var points
    required property string sentence
    property var fit: []
    property var low: []
    property var high: []
    property real xTo: NaN
    property real yFrom: NaN
    property real yTo: NaN
    /** Numbers, or {at, text}. */
    property var xTicks: []
    property var yTicks: []
    property string xUnit: ""
    property string yUnit: ""
    /** The end of what is measured: beyond this y nothing is known. */
    property real measuredTo: NaN
    property string measuredText: ""

    readonly property var dots: Ruling.list(root.points).filter(point => Number.isFinite(point?.x) && Number.isFinite(point?.y))
    readonly property var lines: [].concat(Ruling.list(root.fit), Ruling.list(root.low), Ruling.list(root.high)).filter(point => Number.isFinite(point.x) && Number.isFinite(point.y))
    readonly property var all: root.dots.concat(root.lines)
    readonly property real xEnd: Math.max(Ruling.size(root.xTo, 0), ...root.dots.map(dot => 1.03 * dot.x), 0) || Math.max(1, ...root.all.map(point => 1.03 * point.x))
    readonly property real yStart: Ruling.number(root.yFrom, Math.min(...root.all.map(point => point.y), Infinity) === Infinity ? 0 : Math.min(...root.all.map(point => point.y)))
    readonly property real yEnd: Math.max(root.yStart + 1, Ruling.number(root.yTo, -Infinity), ...root.dots.map(dot => dot.y))
    readonly property var stops: root.chooseStops()
    readonly property rect plot: Qt.rect(Math.round(side.least), root.head, root.plotWide,
                                         Math.max(1, Math.round(root.height - foot.implicitHeight - root.head)))
    readonly property real plotWide: Math.max(1, Math.round(root.width - side.least - Theme.inset))
    readonly property real head: Math.ceil(unit.height) + Theme.line
    readonly property alias chart: chart

    implicitWidth: 40 * Theme.apart
    implicitHeight: Math.max(Theme.pictureHeight, Math.ceil((root.head + foot.implicitHeight) / 0.36))

    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    FitSeries {
        id: chart
        anchors.fill: parent
        xFrom: 0
        xTo: root.xEnd
        yFrom: root.yStart
        yTo: root.yEnd
        plot: root.plot
        fit: root.fit
        low: root.low
        high: root.high
    }
    Rectangle {
        x: root.plot.x
        y: root.plot.y
        width: Theme.hair
        height: root.plot.height
        color: Theme.role.ink
    }
    Words {
        id: unit
        x: root.plot.x + Theme.apart
        text: root.yUnit
        size: Theme.note
        quiet: true
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
    FootScale {
        id: foot
        y: root.plot.bottom
        width: root.width
        height: implicitHeight
        start: root.plot.x
        span: root.plot.width
        from: 0
        to: root.xEnd
        unit: root.xUnit
        ticks: root.xTicks
    }
    SideScale {
        id: side
        y: 0
        height: root.height
        texts: root.stops.map(stop => stop.text)
        heights: root.stops.map(stop => root.yOf(stop.at))
        axis: root.plot.x
        lowest: root.height
    }
    Shape {
        visible: measured.visible
        ShapePath {
            strokeColor: Theme.role.ink
            strokeWidth: Theme.rule
            strokeStyle: ShapePath.DashLine
            dashPattern: [3, 3]
            fillColor: "transparent"
            PathPolyline { path: [Qt.point(root.plot.x, root.yOf(root.measuredTo)), Qt.point(root.plot.right, root.yOf(root.measuredTo))] }
        }
    }
    TextMetrics {
        id: measuredMetrics
        text: root.measuredText
        font: measured.font
    }
    Rectangle {
        anchors.fill: measured
        visible: measured.visible
        color: Theme.role.paper
    }
    Words {
        id: measured
        readonly property bool fits: measuredMetrics.advanceWidth * Theme.least <= measured.width * measured.size
        readonly property point spot: root.besideLine(measured.width, measured.height)
        x: measured.spot.x
        y: measured.spot.y
        width: Math.min(Math.ceil(measuredMetrics.advanceWidth) + Theme.rule, Math.max(0, root.plotWide - 2 * Theme.line))
        height: Math.ceil(contentHeight)
        visible: Number.isFinite(root.measuredTo) && root.measuredTo > root.yStart && root.measuredTo <= root.yEnd
        objectName: "measured"
        text: root.measuredText
        size: Theme.note
        quiet: true
        // one line where it can, smaller where the plot is narrow: two would cover the curve
        wrapMode: measured.fits ? Text.NoWrap : Text.WordWrap
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: Theme.least
        Accessible.ignored: true
    }
    Repeater {
        model: root.dots
        Rectangle {
            required property var modelData
            readonly property bool odd: modelData.odd === true
            x: root.xOf(modelData.x) - width / 2
            y: root.yOf(modelData.y) - height / 2
            width: Theme.marker + (odd ? Theme.line : 0)
            height: width
            objectName: odd ? "oddDot" : "dot"
            color: odd ? Theme.role.paper : Theme.role.ink
            radius: width / 2
            border { width: odd ? Theme.ring : Theme.rule; color: odd ? Theme.role.ink : Theme.role.paper }
        }
    }
    Repeater {
        model: root.dots.filter(dot => dot.odd === true)
        Item {
            id: odd
            required property var modelData
            readonly property point at: Qt.point(root.xOf(odd.modelData.x), root.yOf(odd.modelData.y))
            readonly property point near: Qt.point(Ruling.within(odd.at.x, word.x, word.x + word.width), Ruling.within(odd.at.y, word.y, word.y + word.height))
            z: -1
            Shape {
                visible: Math.hypot(odd.near.x - odd.at.x, odd.near.y - odd.at.y) > 1.5 * Theme.marker
                ShapePath {
                    strokeColor: Theme.role.ink
                    strokeWidth: Theme.hair
                    fillColor: "transparent"
                    PathPolyline { path: [odd.at, odd.near] }
                }
            }
            Words {
                id: word
                readonly property point spot: root.besideDot(odd.modelData, word.implicitWidth, word.implicitHeight)
                x: word.spot.x
                y: word.spot.y
                objectName: "oddWord"
                text: odd.modelData.label ?? ""
                size: Theme.note
                strong: true
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }

    function xOf(pull: real): real {
        return Math.round(root.plot.x + root.plot.width * pull / root.xEnd)
    }
    function yOf(length: real): real {
        return Math.round(root.plot.bottom - root.plot.height * (length - root.yStart) / (root.yEnd - root.yStart))
    }
    function chooseStops(): var {
        const most = Math.max(1, Math.min(5, Math.floor(root.height / Math.max(1, 2 * unit.height))))
        const given = Ruling.list(root.yTicks).map(tick => typeof tick === "number" ? {at: tick, text: Ruling.written(tick)} : tick)
            .filter(tick => Number.isFinite(tick?.at) && tick.at >= root.yStart && tick.at <= root.yEnd)
        const every = Math.ceil(given.length / most)
        return (given.length > 0 ? given.filter((tick, i) => i % every === 0) : Ruling.ticks(root.yStart, root.yEnd, most).map(at => ({at: at, text: Ruling.written(at)})))
            .sort((a, b) => b.at - a.at)
    }
    /** Over or under the line where what is measured ends, where the words cover neither a dot nor a curve. */
    function besideLine(wide: real, deep: real): point {
        const at = root.yOf(root.measuredTo), left = root.plot.x + Theme.apart, right = Math.max(left, root.plot.right - wide), spots = []
        const half = Theme.marker / 2 + Theme.rule
        const rooms = root.dots.map(dot => [root.xOf(dot.x), root.yOf(dot.y), half]).concat(root.lines.map(point => [root.xOf(point.x), root.yOf(point.y), Theme.rule]))
        for (const share of [1, 0, 0.75, 0.5, 0.25])
            for (const y of [at - deep - Theme.rule, at + Theme.line]) {
                const x = Math.round(left + share * (right - left))
                const covered = rooms.filter(room => room[0] > x - room[2] && room[0] < x + wide + room[2] && room[1] > y - room[2] && room[1] < y + deep + room[2]).length
                const onUnit = root.yUnit !== "" && y < root.head && x < unit.x + unit.width + Theme.apart ? 1 : 0
                const out = y < 0 || y + deep > root.plot.bottom ? 1 : 0
                spots.push({spot: Qt.point(x, y), cost: 100 * covered + 8000 * onUnit + 10000 * out + spots.length})
            }
        return spots.reduce((best, other) => other.cost < best.cost ? other : best).spot
    }
    /** The nearest place around a dot where its word covers neither a dot nor a line. */
    function besideDot(dot: var, wide: real, deep: real): point {
        const x = root.xOf(dot.x), y = root.yOf(dot.y), gap = Theme.marker, half = gap / 2 + Theme.line, spots = []
        const dots = root.dots.map(other => [root.xOf(other.x), root.yOf(other.y)]), lines = root.lines.map(other => [root.xOf(other.x), root.yOf(other.y)])
        for (let along = root.plot.x; measured.visible && along < root.plot.right; along += gap)
            lines.push([along, root.yOf(root.measuredTo)])
        for (let far = 1; far <= 9; ++far)
            for (const [right, down] of [[-1, 0], [1, 0], [0, -1], [0, 1], [-1, -1], [1, 1], [-1, 1], [1, -1]]) {
                const left = right === 0 ? x - wide / 2 : right > 0 ? x + far * gap : x - far * gap - wide
                const over = down === 0 ? y - deep / 2 : down > 0 ? y + far * gap : y - far * gap - deep
                const spot = Qt.point(Math.round(Ruling.within(left, 0, Math.max(0, root.width - wide))), Math.round(Ruling.within(over, root.head, Math.max(root.head, root.plot.bottom - deep))))
                const covered = (list, room) => list.filter(at => at[0] > spot.x - room && at[0] < spot.x + wide + room && at[1] > spot.y - room && at[1] < spot.y + deep + room).length
                const onWords = measured.visible && spot.x < measured.x + measured.width + Theme.line && spot.x + wide > measured.x - Theme.line && spot.y < measured.y + measured.height && spot.y + deep > measured.y ? 1 : 0
                const onScale = spot.x < root.plot.x + Theme.line ? 1 : 0
                spots.push({spot: spot, cost: 1000 * covered(dots, half) + 2000 * onWords + 2000 * onScale + 20 * covered(lines, Theme.line) + far})
            }
        return spots.reduce((best, other) => other.cost < best.cost ? other : best).spot
    }
}
