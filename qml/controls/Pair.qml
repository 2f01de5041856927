// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Theme

/** Two columns beside each other where both have room, one below the other elsewhere. A plain item, because layouts three deep keep heights from before their words wrapped. */
Item {
    id: root

    property alias first: firstColumn.data
    property alias second: secondColumn.data
    property bool beside: Theme.wide && root.width >= Theme.pairWidth
    property real share: 0.5
    property real gap: Theme.gutter
    property real spacing: Theme.block

    implicitWidth: Theme.touchMain
    implicitHeight: root.beside ? Math.max(firstColumn.implicitHeight, secondColumn.implicitHeight)
                  : firstColumn.implicitHeight + secondColumn.implicitHeight
                    + (firstColumn.implicitHeight > 0 && secondColumn.implicitHeight > 0 ? root.spacing : 0)

    ColumnLayout {
        id: firstColumn
        anchors { left: parent.left; top: parent.top }
        width: root.beside ? Math.round((root.width - root.gap) * root.share) : root.width
        height: implicitHeight
        spacing: root.spacing
    }
    ColumnLayout {
        id: secondColumn
        anchors.right: parent.right
        y: root.beside || firstColumn.height === 0 ? 0 : firstColumn.height + root.spacing
        width: root.beside ? root.width - root.gap - firstColumn.width : root.width
        height: implicitHeight
        spacing: root.spacing
    }
}
