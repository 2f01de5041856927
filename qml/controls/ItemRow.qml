// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** One thing that hangs: what, how, and which piece is on which side; left stays left in every language. */
Tappable {
    id: root

    required property string what
    required property string how
    property string leftPiece: ""
    property string rightPiece: ""
    property bool tagged: Theme.stacked
    readonly property bool pieced: root.leftPiece !== "" || root.rightPiece !== ""

    implicitWidth: Theme.touchMain
    implicitHeight: Math.max(Theme.touch, root.contentHeight + Theme.apart)
    name: root.how ? root.what + ", " + root.how : root.what
    about: root.leftPiece && root.rightPiece ? qsTr("left %1, right %2").arg(root.leftPiece).arg(root.rightPiece)
         : root.leftPiece ? qsTr("left %1").arg(root.leftPiece) : root.rightPiece ? qsTr("right %1").arg(root.rightPiece) : ""
    ringInside: true

    background: Rectangle {
        anchors.fill: parent
        color: root.down ? Theme.role.wash : "transparent"
        Rule {
            anchors { left: parent.left; right: parent.right; top: parent.bottom; topMargin: Theme.apart / 2 }
        }
    }
    contentItem: Item {
        id: place

        // reckoned without the tags that a row below brings along, or the two would chase each other
        readonly property real beside: place.width - leftCell.least - rightCell.least - 2 * Theme.apart
        readonly property bool below: root.pieced && (Theme.stacked || place.beside < Math.min(whatMetrics.advanceWidth, place.width / 2))

        anchors.fill: parent
        implicitHeight: place.below ? texts.height + Theme.line + pieces.height : Math.max(texts.height, root.pieced ? pieces.height : 0)

        Column {
            id: texts
            anchors { left: parent.left; right: parent.right; rightMargin: place.below || !root.pieced ? 0 : pieces.width + Theme.apart }
            y: place.below ? Math.max(0, (place.height - place.implicitHeight) / 2) : Math.round((place.height - height) / 2)
            Words {
                id: whatWords
                width: parent.width
                text: root.what
                size: Theme.act
                strong: true
                Accessible.ignored: true
            }
            Words {
                width: parent.width
                visible: text !== ""
                text: root.how
                size: Theme.note
                quiet: true
                Accessible.ignored: true
            }
        }
        Item {
            id: pieces
            anchors.right: parent.right
            y: place.below ? texts.y + texts.height + Theme.line : Math.round((place.height - height) / 2)
            width: pieceRow.width
            height: pieceRow.height
            visible: root.pieced
            Grid {
                id: pieceRow
                readonly property real natural: leftCell.width + rightCell.width + Theme.indent
                columns: place.below && pieceRow.natural > place.width ? 1 : 2
                columnSpacing: place.below ? Theme.indent : Theme.apart
                LayoutMirroring.enabled: false
                LayoutMirroring.childrenInherit: true
                PieceCell {
                    id: leftCell
                    side: "L"
                    piece: root.leftPiece
                    tagged: root.tagged || place.below
                    tagCounts: root.tagged
                    column: place.below ? 0 : Theme.pieceColumn
                }
                PieceCell {
                    id: rightCell
                    side: "R"
                    piece: root.rightPiece
                    tagged: root.tagged || place.below
                    tagCounts: root.tagged
                    column: place.below ? 0 : Theme.pieceColumn
                }
            }
        }
        TextMetrics {
            id: whatMetrics
            text: root.what
            font: whatWords.font
        }
    }

    component PieceCell: Row {
        id: cell
        required property string side
        required property string piece
        required property bool tagged
        required property bool tagCounts
        required property real column
        readonly property real least: Math.max(Theme.pieceColumn, pieceWords.implicitWidth) + (cell.tagCounts ? tag.implicitWidth + Theme.line : 0)
        spacing: Theme.line
        SideTag {
            id: tag
            visible: cell.tagged && cell.piece !== ""
            side: cell.side
            size: Theme.body
            Accessible.ignored: true
        }
        Words {
            id: pieceWords
            width: Math.max(cell.column, implicitWidth)
            text: cell.piece
            horizontalAlignment: cell.tagged ? Text.AlignLeft : Text.AlignRight
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
}
