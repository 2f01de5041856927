// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** A straight rule; `total` stands above a sum, `dotted` under what was filled in, `closed` is the double rule under a kept entry. */
Item {
    id: root

    property bool total: false
    property bool dotted: false
    property bool closed: false
    property color ink: root.total || root.closed || root.dotted ? Theme.role.ink : Theme.role.edge
    readonly property int thick: root.total || root.closed || root.dotted ? Theme.rule : Theme.hair

    implicitWidth: Theme.touch
    implicitHeight: root.closed ? 3 * Theme.rule : root.thick
    clip: root.dotted
    Accessible.ignored: true

    Rectangle {
        width: parent.width
        height: root.thick
        visible: !root.dotted
        color: root.ink
    }
    Rectangle {
        y: 2 * Theme.rule
        width: parent.width
        height: root.thick
        visible: root.closed
        color: root.ink
    }
    Row {
        visible: root.dotted
        spacing: Theme.line
        Repeater {
            model: root.dotted ? Math.ceil(root.width / (2 * Theme.line)) : 0
            Rectangle {
                width: Theme.line
                height: root.thick
                color: root.ink
            }
        }
    }
}
