// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Window
import QtCharts
import Steelyard.Charts
import Steelyard.Theme

/** Pull by height as Qt Charts draws it: three textures, a two-step fade, one heavy line. Axis words are ours, outside. */
ChartView {
    id: root

    required property real heightFrom
    required property real heightTo
    required property real pullFrom
    required property real pullTo
    required property rect plot
    /** Lists of points (x pull, y height): zero, iron, chain, band, total, low1, high1, low2, high2. */
    required property var curve
    /** Between these heights the band's pull is known. */
    required property real knownFrom
    required property real knownTo
    readonly property string tiles: ":/steelyard/tiles/%1-" + Theme.role.tile + (Screen.devicePixelRatio > 1 ? "@2x.png" : ".png")
    /** The series by name, for who wants to look at what they hold. */
    readonly property var series: ({zero: zeroLine, iron: ironLine, chain: chainLine, band: bandLine, total: totalLine,
        low1: low1, high1: high1, low2: low2, high2: high2, helped: helpedLine})

    antialiasing: true
    legend.visible: false
    backgroundColor: "transparent"
    plotAreaColor: "transparent"
    margins { left: 0; right: 0; top: 0; bottom: 0 }
    plotArea: root.plot
    onCurveChanged: root.fill()
    onKnownFromChanged: root.fill()
    onKnownToChanged: root.fill()
    Component.onCompleted: root.fill()

    ValueAxis {
        id: pullAxis
        min: root.pullFrom
        max: root.pullTo
        labelsVisible: false
        gridVisible: false
        lineVisible: false
    }
    ValueAxis {
        id: heightAxis
        min: root.heightFrom
        max: root.heightTo
        labelsVisible: false
        gridVisible: false
        lineVisible: false
    }
    Fill {
        color: Theme.ironShade
        lowerSeries: LineSeries { id: zeroLine }
        upperSeries: LineSeries { id: ironLine }
    }
    Fill {
        brushFilename: root.tiles.arg("chain")
        lowerSeries: LineSeries { id: ironLine2 }
        upperSeries: LineSeries { id: chainLine }
    }
    // help from above takes away from what hangs: that fades before it gets the band's texture
    Fill {
        color: Theme.faded(Theme.role.paper, 0.6)
        lowerSeries: LineSeries { id: helpedLine }
        upperSeries: LineSeries { id: chainLine3 }
    }
    Fill {
        brushFilename: root.tiles.arg("band")
        lowerSeries: LineSeries { id: chainLine2 }
        upperSeries: LineSeries { id: bandLine }
    }
    Fill {
        color: Theme.fadeFar
        lowerSeries: LineSeries { id: low2 }
        upperSeries: LineSeries { id: high2 }
    }
    Fill {
        color: Theme.fadeNear
        lowerSeries: LineSeries { id: low1 }
        upperSeries: LineSeries { id: high1 }
    }
    LineSeries {
        id: totalLine
        width: Theme.heavy
        axisX: pullAxis
        axisY: heightAxis
        color: Theme.role.ink
        capStyle: Qt.RoundCap
    }

    component Fill: AreaSeries {
        axisX: pullAxis
        axisY: heightAxis
        borderColor: "transparent"
        borderWidth: 0
    }

    function fill() {
        const all = root.heightFrom, top = root.heightTo, from = root.knownFrom, to = root.knownTo
        const put = (line, points, low, high) => SeriesFill.replace(line, points ?? [], low, high)
        const chain = root.curve?.chain ?? [], band = root.curve?.band ?? []
        put(zeroLine, root.curve?.zero, -Infinity, Infinity)
        put(ironLine, root.curve?.iron, -Infinity, Infinity)
        put(ironLine2, root.curve?.iron, -Infinity, Infinity)
        put(chainLine, chain, -Infinity, Infinity)
        put(helpedLine, SeriesFill.lesser(chain, band), from, to)
        put(chainLine2, chain, from, to)
        put(chainLine3, chain, from, to)
        for (const name of ["band", "low2", "high2", "low1", "high1", "total"])
            put(root.series[name], root.curve?.[name], from, to)
    }
}
