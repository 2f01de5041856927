// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** What hangs besides iron, left and right, and the key to hang more. */
Column {
    id: root

    required property var hanging
    signal opened(int row)
    signal moreRequested
    signal askRequested

    spacing: Theme.apart

    RowLayout {
        width: root.width
        spacing: Theme.apart
        Words {
            Layout.fillWidth: true
            text: qsTr("What hangs")
            size: Theme.act
            strong: true
            Accessible.role: Accessible.Heading
            Accessible.name: text
        }
        SideTag {
            visible: !Theme.stacked && list.count > 0
            Layout.minimumWidth: Theme.pieceColumn
            side: "L"
        }
        SideTag {
            visible: !Theme.stacked && list.count > 0
            Layout.minimumWidth: Theme.pieceColumn
            side: "R"
        }
    }
    Rule {
        width: root.width
        total: true
    }
    Repeater {
        id: list
        model: root.hanging
        ItemRow {
            id: row
            required property int index
            required leftPiece
            required rightPiece
            width: root.width
            objectName: "hung:" + row.index
            onClicked: root.opened(row.index)
        }
    }
    Words {
        width: root.width
        visible: list.count === 0
        text: qsTr("Only iron. Hang a chain or a band.")
        quiet: true
    }
    PressKey {
        width: root.width
        objectName: "hangMore"
        text: qsTr("Hang more")
        onClicked: root.moreRequested()
    }
    PressKey {
        width: root.width
        objectName: "whatToHang"
        text: qsTr("What do I hang?")
        onClicked: root.askRequested()
    }
}
