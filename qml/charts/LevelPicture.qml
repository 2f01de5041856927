// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Theme

/** How level the pull is with her strength: pull and strength on one side, the share on the other, on one height axis. */
Item {
    id: root

    /** Points, pull or share to the right and height up, in the shown units. */
    required property var pull
    required property var strength
    required property var strengthLow
    required property var strengthHigh
    required property var share
    required property var shareLow
    required property var shareHigh
    required property var plain
    required property string pullUnit
    required property string heightUnit
    required property string sentence

    readonly property var heights: Ruling.list(root.pull).map(point => point.y)
    readonly property real yFrom: Math.min(...root.heights, Infinity) === Infinity ? 0 : Math.min(...root.heights)
    readonly property real yTo: Math.max(root.yFrom + 1, ...root.heights)
    readonly property var stops: Ruling.ticks(root.yFrom, root.yTo, Math.max(1, Math.min(5, Math.floor(root.deep / (5 * Theme.note))))).slice().sort((a, b) => b - a)
    /** Where the words are large the halves stand one over the other. */
    readonly property bool beside: root.width >= 38 * Theme.apart * Theme.textFactor
    readonly property real deep: 1.3 * Theme.pictureHeight
    readonly property alias pulls: left
    readonly property alias shares: right

    implicitWidth: 40 * Theme.apart
    implicitHeight: root.beside ? root.deep : 2 * root.deep + Theme.block

    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sentence

    LevelPanel {
        id: left
        width: root.beside ? Math.round((root.width + left.axis) / 2) - Theme.line : root.width
        height: root.deep
        heavy: root.pull
        thin: root.strength
        low: root.strengthLow
        high: root.strengthHigh
        yFrom: root.yFrom
        yTo: root.yTo
        heavyName: qsTr("the pull")
        thinName: qsTr("what she can hold")
        unit: root.pullUnit
        stops: root.stops
        heightUnit: root.heightUnit
    }
    LevelPanel {
        id: right
        x: root.beside ? left.width + 2 * Theme.line : 0
        y: root.beside ? 0 : root.deep + Theme.block
        width: root.width - x
        height: root.deep
        heavy: root.share
        thin: root.plain
        low: root.shareLow
        high: root.shareHigh
        yFrom: root.yFrom
        yTo: root.yTo
        heavyName: qsTr("its share of that")
        thinName: qsTr("with plain iron")
        unit: qsTr("%")
        stops: root.beside ? [] : root.stops
        heightUnit: root.heightUnit
    }
}
