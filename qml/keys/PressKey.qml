// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Theme

/** Every key of the app: plain, main (writes), chosen or planned. A fact stands beside the verb. */
Tappable {
    id: root

    property string text: ""
    property string fact: ""
    property bool main: false
    property bool chosen: false
    property bool planned: false
    property bool bare: false
    property bool tight: false
    property bool light: false
    property bool outlined: false
    property bool factBelow: false
    property int size: Theme.act
    property int factSize: root.size
    property int least: root.main ? Theme.touchMain : Theme.touch
    readonly property color front: !root.enabled ? Theme.off
                                 : root.main ? Theme.role.accentText
                                 : root.chosen ? Theme.role.paper : Theme.role.ink

    implicitHeight: Math.max(root.least, root.contentHeight + 2 * Theme.apart)
    implicitWidth: Math.max(Theme.touch, root.contentWidth + (root.tight ? 2 : 4) * Theme.apart)
    padding: Theme.apart
    name: root.fact ? root.text + " " + root.fact : root.text
    marked: root.chosen

    background: Rectangle {
        anchors.fill: parent
        color: !root.enabled ? Theme.role.wash
             : root.main ? (root.down ? Theme.role.ink : Theme.role.accent)
             : root.chosen ? Theme.role.ink
             : root.down ? Theme.role.wash
             : root.bare ? "transparent" : Theme.role.paper
        radius: Theme.corner
        border.width: root.enabled && (root.main || root.chosen || root.bare || root.planned) ? 0
                    : !root.enabled ? Theme.hair
                    : root.outlined ? Theme.outline : Theme.edging
        border.color: root.outlined && root.enabled ? Theme.role.ink : Theme.role.edge

        Loader {
            anchors.fill: parent
            active: root.planned
            source: "DashedEdge.qml"
        }
        Rectangle {
            // on the edge, clear of the words above it however many lines they take
            anchors { bottom: parent.bottom; horizontalCenter: parent.horizontalCenter; bottomMargin: Theme.rule }
            width: Theme.indent
            height: Theme.bar
            objectName: "chosenRule"
            visible: root.chosen && root.enabled
            color: root.front
        }
    }
    contentItem: KeyFace {
        width: root.innerWidth
        height: root.innerHeight
        text: root.text
        fact: root.fact
        size: root.size
        factSize: root.factSize
        factBelow: root.factBelow
        light: root.light
        front: root.main && root.down ? Theme.role.paper : root.front
    }
}
