// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Keys
import Steelyard.Theme

/** The head of a page: way back, heading, tools, and what stays pinned below them. Opaque, so that nothing shows through while the page scrolls. */
Rectangle {
    id: root

    required property string heading
    required property string under
    required property string back
    required property bool headed
    /** The heading stands below its keys in full width, and the line under it between them. */
    property bool headingBelow: false
    property alias tools: toolGrid.data
    property alias pinned: pinnedColumn.data
    readonly property real room: root.width - 2 * Theme.edgeGap
    readonly property real beside: root.room - (backKey.visible ? backKey.implicitWidth + Theme.apart : 0) - toolGrid.natural - Theme.apart
    // a heading of one squeezed word a line stands below the keys instead, and so does one with a word that would run under them
    readonly property bool below: Theme.stacked || root.headingBelow || root.beside < Math.max(5 * Theme.title, title.widestWord + Theme.line)
    readonly property bool toolsBelow: root.below && backKey.visible && backKey.implicitWidth + Theme.apart + toolGrid.natural > root.room

    signal backRequested

    implicitHeight: Theme.topGap + grid.implicitHeight + (pinnedColumn.implicitHeight > 0 ? Theme.line + pinnedColumn.implicitHeight : 0) + Theme.apart
    color: Theme.role.paper

    GridLayout {
        id: grid
        anchors { left: parent.left; right: parent.right; top: parent.top; leftMargin: Theme.edgeGap; rightMargin: Theme.edgeGap; topMargin: Theme.topGap }
        columnSpacing: Theme.apart
        rowSpacing: root.below ? Theme.apart : Theme.line
        columns: 3

        PressKey {
            id: backKey
            objectName: "back"
            Layout.row: 0
            Layout.column: 0
            Layout.minimumWidth: implicitWidth
            visible: root.back !== ""
            tight: true
            text: (LayoutMirroring.enabled ? "› " : "‹ ") + root.back
            name: qsTr("Back to %1").arg(root.back)
            size: Theme.key
            least: Theme.touchFloor
            onClicked: root.backRequested()
        }
        SheetTitle {
            id: title
            Layout.row: root.below ? 2 : 0
            Layout.column: root.below ? 0 : 1
            Layout.columnSpan: root.below ? 3 : 1
            Layout.fillWidth: true
            Layout.leftMargin: root.back && !root.below ? Theme.line : 0
            visible: root.headed
            heading: root.heading
            under: Theme.stacked || between.visible ? "" : root.under
        }
        Item {
            Layout.row: 0
            Layout.column: 1
            Layout.fillWidth: true
            visible: (!root.headed || root.below) && !between.visible
        }
        Words {
            id: between
            Layout.row: 0
            Layout.column: 1
            Layout.fillWidth: true
            Layout.leftMargin: Theme.line
            // where it does not fit between them in one line it stands under the heading, as elsewhere
            visible: root.headingBelow && root.headed && !Theme.stacked && text !== "" && underMetrics.advanceWidth + Theme.indent <= root.beside
            text: root.under
            size: Theme.note
            quiet: true
        }
        GridLayout {
            id: toolGrid
            readonly property real natural: toolGrid.sumOfWidths()
            Layout.row: root.toolsBelow ? 1 : 0
            Layout.column: root.toolsBelow ? 0 : 2
            Layout.columnSpan: root.toolsBelow ? 3 : 1
            columns: toolGrid.natural > root.room ? 1 : Math.max(1, toolGrid.children.length)
            columnSpacing: Theme.apart
            rowSpacing: Theme.apart

            function sumOfWidths(): real {
                let sum = 0
                for (let i = 0; i < toolGrid.children.length; ++i)
                    sum += toolGrid.children[i].visible ? toolGrid.children[i].implicitWidth + Theme.apart : 0
                return Math.max(0, sum - Theme.apart)
            }
        }
    }
    TextMetrics {
        id: underMetrics
        text: root.under
        font: between.font
    }
    ColumnLayout {
        id: pinnedColumn
        anchors { left: parent.left; right: parent.right; top: grid.bottom; leftMargin: Theme.edgeGap; rightMargin: Theme.edgeGap; topMargin: Theme.line }
        spacing: Theme.line
    }
}
