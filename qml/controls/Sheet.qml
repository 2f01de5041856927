// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Keys
import Steelyard.Theme

/** A page: head, scrolling body, keys that stay, places; on a phone's side, or where the page asks for it, the keys stand beside the body. */
Leaf {
    id: root

    property bool bar: true
    property var places: []
    property int place: 0
    property bool stretch: false
    /** On a tablet the keys that stay follow a short page, rather than stand far below it. */
    property bool near: false
    property int bodySpacing: Theme.block
    property real footShare: 0.5
    default property alias body: column.data
    property alias tools: head.tools
    property alias foot: footColumn.data
    property alias pinned: head.pinned
    property alias headingBelow: head.headingBelow
    /** The keys stand beside the body also where there is room below it. */
    property bool footBeside: Theme.low
    property alias contentY: flick.contentY
    readonly property bool barred: root.bar && root.places.length > 0
    readonly property bool footed: footColumn.implicitHeight > 0
    readonly property bool beside: root.footBeside && root.footed
    readonly property bool beforeHand: root.beside && Theme.leftHanded
    readonly property real footWidth: root.beside ? Math.round(root.width * root.footShare) : root.width
    // large text: what is only explained scrolls with the page, and a low page scrolls its heading too
    readonly property bool headed: !(Theme.low && Theme.stacked)
    readonly property alias overflowing: flick.overflowing
    // the software renderer of 6.4 paints a Shape unclipped once it is scrolled fully out of its clip: at each turn
    // head and foot are painted anew over it, and only a changed property makes them so
    property bool turned: false
    readonly property real repaint: root.turned ? 0.01 : 0

    signal placeChosen(int index)

    bodyView: flick
    footView: footFlick

    Scroller {
        id: flick
        anchors {
            top: head.bottom; bottom: root.beside ? placesBox.top : footBox.top
            left: parent.left; right: parent.right
            leftMargin: root.beforeHand ? root.footWidth - Theme.edgeGap : 0
            rightMargin: root.beside && !root.beforeHand ? root.footWidth - Theme.edgeGap : 0
        }
        clip: true
        contentHeight: column.y + column.height + Theme.apart
        onContentYChanged: root.turned = !root.turned
        onContentHeightChanged: root.turned = !root.turned

        SheetTitle {
            id: bodyTitle
            anchors { left: parent.left; right: parent.right; leftMargin: Theme.edgeGap; rightMargin: Theme.edgeGap }
            visible: !root.headed || Theme.stacked && root.under !== ""
            heading: root.headed ? "" : root.heading
            under: root.under
        }
        ColumnLayout {
            id: column
            anchors { left: parent.left; right: parent.right; leftMargin: Theme.edgeGap; rightMargin: Theme.edgeGap }
            y: bodyTitle.visible ? bodyTitle.height + Theme.apart : 0
            height: root.stretch ? Math.max(implicitHeight, flick.height - Theme.apart) : implicitHeight
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
    SheetHead {
        id: head
        anchors {
            top: parent.top; left: parent.left; right: parent.right
            leftMargin: root.beforeHand ? root.footWidth - Theme.edgeGap : 0
            rightMargin: root.beside && !root.beforeHand ? root.footWidth - Theme.edgeGap : 0
        }
        heading: root.heading
        under: root.under
        back: root.back
        headed: root.headed
        radius: root.repaint
        onBackRequested: root.backRequested()

        Rule {
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
            visible: root.overflowing && flick.contentY > 0
        }
    }
    Rectangle {
        id: footBox
        readonly property real most: root.beside ? placesBox.y : root.height - placesBox.height - head.height - Math.min(column.y + column.implicitHeight + Theme.apart, Theme.touchMain)
        anchors {
            left: root.beforeHand ? parent.left : undefined; right: root.beforeHand ? undefined : parent.right
            bottom: placesBox.top
            bottomMargin: root.near && Theme.wide && !root.beside ? Math.max(0, placesBox.y - head.height - flick.contentHeight - footBox.height) : 0
        }
        width: root.beside ? root.footWidth - Theme.edgeGap : root.width
        height: root.beside ? placesBox.y : root.footed ? Math.min(footColumn.implicitHeight + Theme.apart, Math.max(footBox.most, Theme.touchMain)) : 0
        color: Theme.role.paper
        radius: root.repaint

        Scroller {
            id: footFlick
            anchors {
                fill: parent
                topMargin: root.beside ? Theme.topGap : Theme.apart
                leftMargin: root.beside && !root.beforeHand ? 0 : Theme.edgeGap
                rightMargin: root.beforeHand ? 0 : Theme.edgeGap
            }
            contentHeight: footColumn.height
            clip: interactive

            ColumnLayout {
                id: footColumn
                width: footFlick.width
                height: implicitHeight
                y: root.beside ? Math.max(0, footFlick.height - implicitHeight) : 0
                spacing: Theme.apart
            }
        }
        // keys beyond the edge are never out of sight without a word
        Rectangle {
            anchors { right: footFlick.right; rightMargin: Theme.line / 2 - Theme.edgeGap }
            y: footFlick.y + footFlick.visibleArea.yPosition * footFlick.height
            width: Theme.line
            height: footFlick.visibleArea.heightRatio * footFlick.height
            objectName: "footMark"
            visible: root.footed && footFlick.overflowing
            radius: width / 2
            color: Theme.role.edge
        }
        Rule {
            width: parent.width
            visible: root.overflowing && !root.beside
        }
    }
    Rectangle {
        id: placesBox
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        height: (root.barred ? Theme.apart + placesBar.implicitHeight : 0) + Theme.bottomGap
        color: Theme.role.paper
        radius: root.repaint

        PlacesBar {
            id: placesBar
            anchors { left: parent.left; right: parent.right; top: parent.top; leftMargin: Theme.edgeGap; rightMargin: Theme.edgeGap; topMargin: Theme.apart }
            visible: root.barred
            places: root.places
            place: root.place
            onChosen: index => root.placeChosen(index)
        }
    }
}
