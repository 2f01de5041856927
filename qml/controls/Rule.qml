// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Theme

/** A straight rule; `total` stands above a sum, `closed` is the double rule under a kept entry. */
Item {
    id: root

    property bool total: false
    property bool closed: false
    property color ink: root.total || root.closed ? Theme.role.ink : Theme.role.edge

    implicitWidth: Theme.touch
    implicitHeight: root.closed ? 3 * Theme.rule : root.total ? Theme.rule : Theme.hair
    Accessible.ignored: true

    Rectangle {
        width: parent.width
        height: root.total || root.closed ? Theme.rule : Theme.hair
        color: root.ink
    }
    Rectangle {
        visible: root.closed
        y: 2 * Theme.rule
        width: parent.width
        height: Theme.rule
        color: root.ink
    }
}
