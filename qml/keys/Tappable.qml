// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Theme

/** What can be tapped: fires on lift, not when the finger slides off, once for a double tap; Enter and Space do the same. */
TapPlace {
    id: root

    property string name: ""
    property string about: ""
    property bool marked: false
    property bool markable: false
    property bool repeats: false
    property bool ringInside: false
    property Item contentItem: null
    property Item background: null
    property real padding: 0
    property real topPadding: root.padding
    property real bottomPadding: root.padding
    property bool spaceDown: false
    readonly property bool down: root.held || root.spaceDown
    readonly property real innerWidth: root.width - 2 * root.padding
    readonly property real innerHeight: root.height - root.topPadding - root.bottomPadding
    readonly property real contentWidth: root.contentItem ? root.contentItem.implicitWidth : 0
    readonly property real contentHeight: root.contentItem ? root.contentItem.implicitHeight : 0

    signal clicked

    implicitWidth: Theme.touch
    implicitHeight: Theme.touch
    activeFocusOnTab: true
    Accessible.role: Accessible.Button
    Accessible.name: root.name
    Accessible.description: root.about
    Accessible.checkable: root.markable
    Accessible.checked: root.marked
    Accessible.onPressAction: root.press()
    Keys.onReturnPressed: event => root.keyed(event)
    Keys.onEnterPressed: event => root.keyed(event)
    Keys.onSpacePressed: event => root.spaced(event)
    Keys.onReleased: event => root.lifted(event)
    onTapped: root.press()
    onActiveFocusChanged: root.spaceDown = false
    onEnabledChanged: root.spaceDown = false

    // sizes are said: they are known before the words in them are laid out, which anchors are not
    Item {
        width: root.width
        height: root.height
        data: root.background ? [root.background] : []
    }
    Item {
        x: root.padding
        y: root.topPadding
        width: root.innerWidth
        height: root.innerHeight
        data: root.contentItem ? [root.contentItem] : []
    }
    Rectangle {
        anchors { fill: parent; margins: root.ringInside ? 0 : -Theme.line }
        visible: root.ringed
        color: "transparent"
        radius: Theme.corner + Theme.line
        border { width: Theme.ring; color: Theme.role.accent }
    }

    function press() {
        if (root.repeats || TapGuard.admits(root))
            root.clicked()
    }
    function keyed(event: var) {
        event.accepted = true
        if (!event.isAutoRepeat)
            root.press()
    }
    /** The space bar does as a finger does: down, and on lifting it counts. */
    function spaced(event: var) {
        event.accepted = true
        if (!event.isAutoRepeat)
            root.spaceDown = true
    }
    function lifted(event: var) {
        if (event.key !== Qt.Key_Space || event.isAutoRepeat || !root.spaceDown)
            return
        event.accepted = true
        root.spaceDown = false
        root.press()
    }
    /** The same as a tap, without the pause between two taps. */
    function click() {
        root.clicked()
    }
}
