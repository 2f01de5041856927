// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** The sticking zone as a stretch right across a picture; it shows where it begins and ends, also over the iron's shade and in the sun. */
Rectangle {
    id: root

    /** Between these x stand words, which no line crosses. */
    property real gapFrom: 0
    property real gapTo: 0

    color: Theme.role.wash

    component End: Item {
        Rectangle { width: root.gapFrom; height: Theme.hair; visible: root.gapTo > root.gapFrom; color: Theme.role.edge }
        Rectangle { x: root.gapTo; width: root.width - root.gapTo; height: Theme.hair; color: Theme.role.edge }
    }
    End { }
    End { y: root.height }
}
