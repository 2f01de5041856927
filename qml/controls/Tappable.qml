// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Controls.Basic
import Steelyard.Theme

/** What can be tapped: fires on lift, not when the finger slides off, once for a double tap; Enter and Space do the same. */
FocusScope {
    id: root

    property string name: ""
    property string about: ""
    property bool marked: false
    property bool markable: false
    property bool repeats: false
    property bool ringInside: false
    property alias contentItem: button.contentItem
    property alias background: button.background
    property alias padding: button.padding
    property alias topPadding: button.topPadding
    property alias bottomPadding: button.bottomPadding
    readonly property alias down: button.down
    readonly property alias visualFocus: button.visualFocus
    readonly property real contentWidth: button.implicitContentWidth
    readonly property real contentHeight: button.implicitContentHeight

    signal clicked

    implicitWidth: Theme.touch
    implicitHeight: Theme.touch

    AbstractButton {
        id: button

        anchors.fill: parent
        focus: true
        padding: 0
        // Qt 6.4 lets no button have another role, so what is chosen is said in the description
        Accessible.role: Accessible.Button
        Accessible.name: root.name
        Accessible.description: root.about
        Accessible.checkable: root.markable
        Accessible.checked: root.marked
        Accessible.onPressAction: root.press()
        Keys.onReturnPressed: event => root.keyed(event)
        Keys.onEnterPressed: event => root.keyed(event)
        onClicked: root.press()
    }
    Rectangle {
        anchors { fill: parent; margins: root.ringInside ? 0 : -Theme.line }
        visible: button.visualFocus
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
    /** The same as a tap, without the pause between two taps. */
    function click() {
        root.clicked()
    }
}
