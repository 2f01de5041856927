// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** The dotted rule under what was filled in and not yet touched. */
Item {
    id: root

    property color ink: Theme.role.ink

    implicitHeight: Theme.rule
    clip: true
    Accessible.ignored: true

    Row {
        spacing: Theme.line
        Repeater {
            model: Math.ceil(root.width / (2 * Theme.line))
            Rectangle {
                width: Theme.line
                height: Theme.rule
                color: root.ink
            }
        }
    }
}
