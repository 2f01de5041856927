// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtCharts
import Steelyard.Charts
import Steelyard.Theme

/** The fitted line of a band and its give or take, as Qt Charts draws them. */
ChartView {
    id: root

    required property real xFrom
    required property real xTo
    required property real yFrom
    required property real yTo
    required property rect plot
    required property var fit
    required property var low
    required property var high
    readonly property var series: ({fit: fitLine, low: lowLine, high: highLine})

    antialiasing: true
    legend.visible: false
    backgroundColor: "transparent"
    plotAreaColor: "transparent"
    margins { left: 0; right: 0; top: 0; bottom: 0 }
    plotArea: root.plot
    onFitChanged: root.fill(fitLine, root.fit)
    onLowChanged: root.fill(lowLine, root.low)
    onHighChanged: root.fill(highLine, root.high)
    Component.onCompleted: {
        root.fitChanged()
        root.lowChanged()
        root.highChanged()
    }

    ValueAxis {
        id: pullAxis
        min: root.xFrom
        max: root.xTo
        labelsVisible: false
        gridVisible: false
        lineVisible: false
    }
    ValueAxis {
        id: lengthAxis
        min: root.yFrom
        max: root.yTo
        labelsVisible: false
        gridVisible: false
        lineVisible: false
    }
    AreaSeries {
        axisX: pullAxis
        axisY: lengthAxis
        color: Theme.fadeNear
        borderColor: "transparent"
        borderWidth: 0
        lowerSeries: LineSeries { id: lowLine }
        upperSeries: LineSeries { id: highLine }
    }
    LineSeries {
        id: fitLine
        width: Theme.heavy
        axisX: pullAxis
        axisY: lengthAxis
        color: Theme.role.ink
        capStyle: Qt.RoundCap
    }

    /** Before the lines are made there is nothing to fill. */
    function fill(line: LineSeries, points: var) {
        if (line && points && points.length > 0)
            SeriesFill.replace(line, points, -Infinity, Infinity)
        else if (line)
            line.clear()
    }
}
