// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** A page at the door: it looks as a Sheet does and is made of little, since the first picture waits for it. */
Leaf {
    id: root

    property int bodySpacing: Theme.block
    default property alias body: column.data
    property alias tools: toolRow.data
    property alias foot: footColumn.data
    property alias contentY: flick.contentY
    readonly property alias overflowing: flick.overflowing
    readonly property bool footed: footColumn.implicitHeight > 0
    readonly property bool beside: Theme.low && root.footed
    readonly property bool beforeHand: root.beside && Theme.leftHanded
    readonly property real footWidth: root.beside ? Math.round(root.width / 2) - Theme.edgeGap : root.width
    readonly property real bodyWidth: root.beside ? root.width - root.footWidth : root.width
    readonly property bool headed: !(Theme.low && Theme.stacked)

    bodyView: flick
    footView: footFlick

    Item {
        id: head

        readonly property real besideKeys: head.width - (backKey.visible ? backKey.width + Theme.apart : 0) - toolRow.width - Theme.apart
        // a heading of one squeezed word a line stands below the keys instead
        readonly property bool below: Theme.stacked || head.besideKeys < 5 * Theme.title
        readonly property bool toolsBelow: Theme.stacked && backKey.visible && backKey.width + Theme.apart + toolRow.width > head.width
        readonly property real gap: head.below ? Theme.apart : Theme.line
        readonly property real keysHeight: Math.max(backKey.visible ? backKey.height : 0, head.toolsBelow ? 0 : toolRow.height)
        readonly property real titleHeight: Math.ceil(title.height)
        readonly property real firstRow: Math.max(head.keysHeight, root.headed && !head.below ? head.titleHeight : 0)
        readonly property real firstRows: head.toolsBelow ? head.firstRow + head.gap + toolRow.height : head.firstRow

        // said and not anchored from both sides: words are laid out once, since their width is known before they are
        anchors { top: parent.top; left: parent.left; topMargin: Theme.topGap; leftMargin: (root.beforeHand ? root.footWidth : 0) + Theme.edgeGap }
        width: root.bodyWidth - 2 * Theme.edgeGap
        height: (root.headed && head.below ? title.y + head.titleHeight : head.firstRows) + Theme.apart

        PressKey {
            id: backKey
            objectName: "back"
            anchors.left: parent.left
            y: Math.round((head.firstRow - height) / 2)
            visible: root.back !== ""
            tight: true
            text: backKey.visible ? (LayoutMirroring.enabled ? "› " : "‹ ") + root.back : ""
            name: qsTr("Back to %1").arg(root.back)
            size: Theme.key
            least: Theme.touchFloor
            onClicked: root.backRequested()
        }
        SheetTitle {
            id: title
            readonly property real start: backKey.visible && !head.below ? backKey.width + Theme.apart + Theme.line : 0
            anchors { left: parent.left; leftMargin: title.start }
            width: head.below ? head.width : head.width - title.start - toolRow.width - Theme.apart
            y: head.below ? head.firstRows + head.gap : Math.round((head.firstRow - height) / 2)
            visible: root.headed
            heading: root.heading
            under: Theme.stacked ? "" : root.under
        }
        Row {
            id: toolRow
            anchors { left: head.toolsBelow ? parent.left : undefined; right: head.toolsBelow ? undefined : parent.right }
            y: head.toolsBelow ? head.firstRow + head.gap : Math.round((head.firstRow - height) / 2)
            spacing: Theme.apart
        }
    }
    Scroller {
        id: flick
        anchors {
            top: head.bottom; bottom: root.beside ? parent.bottom : footBox.top; left: head.left
            leftMargin: -Theme.edgeGap; bottomMargin: root.beside ? Theme.bottomGap : 0
        }
        width: root.bodyWidth
        clip: true
        contentHeight: column.y + column.height + Theme.apart

        SheetTitle {
            id: bodyTitle
            anchors { left: parent.left; leftMargin: Theme.edgeGap }
            width: head.width
            visible: !root.headed || Theme.stacked && root.under !== ""
            heading: root.headed ? "" : root.heading
            under: root.under
        }
        Column {
            id: column
            anchors { left: parent.left; leftMargin: Theme.edgeGap }
            width: head.width
            y: bodyTitle.visible ? bodyTitle.height + Theme.apart : 0
            spacing: root.bodySpacing
        }
    }
    Rectangle {
        anchors { right: flick.right; rightMargin: Theme.line / 2 }
        y: flick.y + flick.visibleArea.yPosition * flick.height
        width: Theme.line
        height: flick.visibleArea.heightRatio * flick.height
        visible: root.overflowing
        radius: width / 2
        color: Theme.role.edge
    }
    Rectangle {
        anchors { left: flick.left; right: flick.right; bottom: flick.top }
        height: Theme.hair
        visible: root.overflowing && flick.contentY > 0
        color: Theme.role.edge
    }
    Item {
        id: footBox

        readonly property real most: root.beside ? root.height - Theme.bottomGap
            : root.height - Theme.bottomGap - Theme.topGap - head.height - Math.min(flick.contentHeight, Theme.touchMain)

        anchors {
            left: root.beforeHand ? parent.left : undefined; right: root.beforeHand ? undefined : parent.right
            top: root.beside ? parent.top : undefined; bottom: parent.bottom; bottomMargin: Theme.bottomGap
        }
        width: root.footWidth
        height: root.footed ? Math.min(footColumn.implicitHeight + Theme.apart, Math.max(footBox.most, Theme.touchMain)) : 0

        Scroller {
            id: footFlick
            anchors {
                left: parent.left; top: parent.top; bottom: parent.bottom
                topMargin: root.beside ? Theme.topGap : Theme.apart; leftMargin: root.beside && !root.beforeHand ? 0 : Theme.edgeGap
            }
            width: root.footWidth - (root.beside ? Theme.edgeGap : 2 * Theme.edgeGap)
            contentHeight: footColumn.height
            clip: interactive

            Column {
                id: footColumn
                width: footFlick.width
                y: root.beside ? Math.max(0, footFlick.height - implicitHeight) : 0
                spacing: Theme.apart
            }
        }
        Rectangle {
            width: parent.width
            height: Theme.hair
            visible: root.overflowing && !root.beside
            color: Theme.role.edge
        }
    }
}
