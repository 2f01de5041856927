// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Theme

/** The sticking zone as a stretch right across a picture; it shows where it begins and ends, also over the iron's shade and in the sun. */
Rectangle {
    id: root

    color: Theme.role.wash

    Rectangle {
        width: root.width
        height: Theme.hair
        color: Theme.role.edge
    }
    Rectangle {
        y: root.height
        width: root.width
        height: Theme.hair
        color: Theme.role.edge
    }
}
