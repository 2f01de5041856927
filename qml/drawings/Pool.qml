// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

/** A delegate for each of a list, kept from one list to the next: a step of the load moves them instead of building them anew. */
Repeater {
    id: root

    required property var list
    property int most: 0

    model: root.most
    onListChanged: root.most = Math.max(root.most, root.list.length)
}
