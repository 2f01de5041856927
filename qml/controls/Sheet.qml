// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Keys
import Steelyard.Theme

/** A page: head, scrolling body, keys that stay, places; on a phone's side the keys stand beside the body. */
FocusScope {
    id: root

    property string heading: ""
    property string under: ""
    property string back: ""
    property bool bar: true
    property var places: []
    property int place: 0
    property bool stretch: false
    property int bodySpacing: Theme.block
    property real footShare: 0.5
    default property alias body: column.data
    property alias tools: head.tools
    property alias foot: footColumn.data
    property alias pinned: head.pinned
    property alias contentY: flick.contentY
    readonly property bool barred: root.bar && root.places.length > 0
    readonly property bool footed: footColumn.implicitHeight > 0
    readonly property bool beside: Theme.low && root.footed
    readonly property bool beforeHand: root.beside && Theme.leftHanded
    readonly property real footWidth: root.beside ? Math.round(root.width * root.footShare) : root.width
    // large text: what is only explained scrolls with the page, and a low page scrolls its heading too
    readonly property bool headed: !(Theme.low && Theme.stacked)
    readonly property bool overflowing: flick.contentHeight > flick.height + Theme.line
    readonly property Item focused: Window.activeFocusItem
    // the software renderer of 6.4 paints a Shape unclipped once it is scrolled fully out of its clip: at each turn
    // head and foot are painted anew over it, and only a changed property makes them so
    property bool turned: false
    readonly property real repaint: root.turned ? 0.01 : 0

    signal backRequested
    signal placeChosen(int index)

    focus: true
    Keys.onEscapePressed: event => root.leave(event)
    Keys.onBackPressed: event => root.leave(event)
    Keys.onPressed: event => root.page(event)
    onFocusedChanged: root.show(root.focused)

    Rectangle {
        anchors.fill: parent
        color: Theme.role.paper
    }
    Flickable {
        id: flick
        anchors {
            top: head.bottom; bottom: root.beside ? placesBox.top : footBox.top
            left: parent.left; right: parent.right
            leftMargin: root.beforeHand ? root.footWidth - Theme.edgeGap : 0
            rightMargin: root.beside && !root.beforeHand ? root.footWidth - Theme.edgeGap : 0
        }
        clip: true
        contentHeight: column.y + column.height + Theme.apart
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height
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
        readonly property real most: root.beside ? placesBox.y : root.height - placesBox.height - head.height - Math.min(flick.contentHeight, Theme.touchMain)
        anchors {
            left: root.beforeHand ? parent.left : undefined; right: root.beforeHand ? undefined : parent.right
            bottom: placesBox.top; top: root.beside ? parent.top : undefined
        }
        width: root.beside ? root.footWidth - Theme.edgeGap : root.width
        height: root.footed ? Math.min(footColumn.implicitHeight + Theme.apart, Math.max(footBox.most, Theme.touchMain)) : 0
        color: Theme.role.paper
        radius: root.repaint

        Flickable {
            id: footFlick
            anchors {
                fill: parent
                topMargin: root.beside ? Theme.topGap : Theme.apart
                leftMargin: root.beside && !root.beforeHand ? 0 : Theme.edgeGap
                rightMargin: root.beforeHand ? 0 : Theme.edgeGap
            }
            contentHeight: footColumn.height
            interactive: contentHeight > height
            clip: interactive
            boundsBehavior: Flickable.StopAtBounds

            ColumnLayout {
                id: footColumn
                width: footFlick.width
                height: implicitHeight
                y: root.beside ? Math.max(0, footFlick.height - implicitHeight) : 0
                spacing: Theme.apart
            }
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

    /** Arrow, Back and Esc: one signal. */
    function leave(event: var) {
        event.accepted = true
        root.backRequested()
    }
    function page(event: var) {
        const step = event.key === Qt.Key_PageDown ? flick.height : event.key === Qt.Key_PageUp ? -flick.height : 0
        event.accepted = step !== 0
        flick.contentY = Math.max(0, Math.min(flick.contentHeight - flick.height, flick.contentY + 0.8 * step))
    }
    /** Scrolls what has the keyboard into sight. */
    function show(item: Item) {
        for (let up = item; up; up = up.parent)
            if (up === flick.contentItem)
                return root.reveal(item, flick)
            else if (up === footFlick.contentItem)
                return root.reveal(item, footFlick)
    }
    function reveal(item: Item, view: Flickable) {
        const top = item.mapToItem(view.contentItem, 0, 0).y - Theme.apart
        const bottom = top + item.height + 2 * Theme.apart
        if (top < view.contentY)
            view.contentY = Math.max(0, top)
        else if (bottom > view.contentY + view.height)
            view.contentY = Math.min(Math.max(0, view.contentHeight - view.height), bottom - view.height)
    }
}
