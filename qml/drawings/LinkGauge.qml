// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Theme

/** One link of a chain, with where its wire, its pitch and its inner width are read; the one asked for is heavy. */
Item {
    id: root

    /** "wire", "pitch" or "innerWidth". */
    property string part: ""
    readonly property real wire: Math.max(Theme.apart, Math.min(root.height / 6, root.width / 10))
    readonly property real span: 6 * root.wire
    readonly property real wide: 3.5 * root.wire

    implicitWidth: 20 * Theme.apart
    implicitHeight: Theme.touchMain
    Accessible.ignored: true

    Item {
        id: link
        anchors.centerIn: parent
        width: root.span
        height: root.wide

        Rectangle {
            anchors.fill: parent
            color: "transparent"
            radius: height / 2
            border { width: root.wire; color: Theme.role.edge }
        }
        Tape {
            x: root.wire
            y: root.wide / 2
            span: root.span - 2 * root.wire
            asked: root.part === "pitch"
            visible: asked
        }
        Tape {
            x: root.span / 2
            y: root.wire
            upright: true
            span: root.wide - 2 * root.wire
            asked: root.part === "innerWidth"
            visible: asked
        }
        Tape {
            x: root.span / 2
            upright: true
            span: root.wire
            asked: root.part === "wire"
            visible: asked
        }
    }
}
