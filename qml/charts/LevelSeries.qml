// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtCharts
import Steelyard.Charts
import Steelyard.Theme

/** A heavy line and a thin one over the same heights, with a give or take behind one of them, as Qt Charts draws them. */
ChartView {
    id: root

    required property real xTo
    required property real yFrom
    required property real yTo
    required property rect plot
    required property var heavy
    required property var thin
    required property var low
    required property var high
    readonly property var series: ({heavy: heavyLine, thin: thinLine, low: lowLine, high: highLine})

    antialiasing: true
    legend.visible: false
    backgroundColor: "transparent"
    plotAreaColor: "transparent"
    margins { left: 0; right: 0; top: 0; bottom: 0 }
    plotArea: root.plot
    onHeavyChanged: root.fill(heavyLine, root.heavy)
    onThinChanged: root.fill(thinLine, root.thin)
    onLowChanged: root.fill(lowLine, root.low)
    onHighChanged: root.fill(highLine, root.high)
    Component.onCompleted: {
        root.heavyChanged()
        root.thinChanged()
        root.lowChanged()
        root.highChanged()
    }

    ValueAxis {
        id: across
        min: 0
        max: root.xTo
        labelsVisible: false
        gridVisible: false
        lineVisible: false
    }
    ValueAxis {
        id: heights
        min: root.yFrom
        max: root.yTo
        labelsVisible: false
        gridVisible: false
        lineVisible: false
    }
    AreaSeries {
        axisX: across
        axisY: heights
        color: Theme.fadeNear
        borderColor: "transparent"
        borderWidth: 0
        lowerSeries: LineSeries { id: lowLine }
        upperSeries: LineSeries { id: highLine }
    }
    LineSeries {
        id: thinLine
        width: Theme.ring
        axisX: across
        axisY: heights
        color: Theme.role.ink
        style: Qt.DashLine
    }
    LineSeries {
        id: heavyLine
        width: Theme.heavy
        axisX: across
        axisY: heights
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
