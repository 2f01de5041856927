// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Theme

/** One half of the level picture: two lines over the height, each with its name at its end, and the scale at the foot. */
Item {
    id: root

    required property var heavy
    required property var thin
    required property var low
    required property var high
    required property real yFrom
    required property real yTo
    required property string heavyName
    required property string thinName
    required property string unit
    /** Heights to write beside the axis; none where the other half has them. */
    property var stops: []
    property string heightUnit: ""

    readonly property real xTo: Math.max(1, ...Ruling.list(root.heavy).map(point => point.x), ...Ruling.list(root.thin).map(point => point.x), ...Ruling.list(root.high).map(point => point.x)) * 1.05
    readonly property real axis: root.stops.length > 0 ? Math.round(side.least) : 0
    readonly property rect plot: Qt.rect(Math.round(root.axis), names.height, Math.max(1, Math.round(root.width - root.axis - Theme.inset)),
                                         Math.max(1, Math.round(root.height - names.height - foot.implicitHeight)))
    readonly property alias chart: chart

    implicitWidth: 20 * Theme.apart
    implicitHeight: Theme.pictureHeight

    Column {
        id: names
        x: root.axis + Theme.apart
        width: root.width - x
        Named { mark: Theme.heavy; text: root.heavyName; objectName: "heavyName" }
        Named { mark: Theme.ring; broken: true; text: root.thinName; objectName: "thinName" }
    }
    LevelSeries {
        id: chart
        anchors.fill: parent
        xTo: root.xTo
        yFrom: root.yFrom
        yTo: root.yTo
        plot: root.plot
        heavy: root.heavy
        thin: root.thin
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
    FootScale {
        id: foot
        y: root.plot.bottom
        width: root.width
        height: implicitHeight
        start: root.plot.x
        span: root.plot.width
        from: 0
        to: root.xTo
        unit: root.unit
    }

    SideScale {
        id: side
        height: root.height
        visible: root.stops.length > 0
        texts: root.stops.map((stop, i) => i === 0 ? Ruling.written(stop) + " " + root.heightUnit : Ruling.written(stop))
        heights: root.stops.map(stop => root.plot.bottom - root.plot.height * (stop - root.yFrom) / (root.yTo - root.yFrom))
        axis: root.plot.x
        lowest: root.plot.bottom
    }

    /** A stroke as the line is drawn, and what it is. */
    component Named: Item {
        id: named
        property real mark: Theme.ring
        property bool broken: false
        property string text: ""
        width: parent.width
        implicitHeight: words.height
        Repeater {
            model: named.broken ? 3 : 1
            Rectangle {
                required property int index
                x: index * Theme.apart
                y: Math.round((words.lineOne - named.mark) / 2)
                width: named.broken ? Theme.apart - Theme.line : 2.5 * Theme.apart
                height: named.mark
                color: Theme.role.ink
            }
        }
        Words {
            id: words
            readonly property real lineOne: lineCount > 0 ? contentHeight / lineCount : contentHeight
            x: 3 * Theme.apart
            width: named.width - x
            text: named.text
            size: Theme.note
            Accessible.ignored: true
        }
    }
}
