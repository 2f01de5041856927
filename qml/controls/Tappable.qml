// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Controls.Basic
import Steelyard.Theme

/** What can be tapped: fires on lift, not when the finger slides off, once for a double tap; Enter and Space do the same. */
FocusScope {
    id: root

    property string name: ""
    property string about: ""
    property int role: Accessible.Button
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

        function press() {
            if (root.repeats || TapGuard.admits(root))
                root.clicked()
        }

        anchors.fill: parent
        focus: true
        padding: 0
        Accessible.role: root.role
        Accessible.name: root.name
        Accessible.description: root.about
        Accessible.checkable: root.markable
        Accessible.checked: root.marked
        Accessible.onPressAction: button.press()
        Keys.onReturnPressed: event => root.keyed(event)
        Keys.onEnterPressed: event => root.keyed(event)
        onClicked: button.press()
    }
    Rectangle {
        anchors { fill: parent; margins: root.ringInside ? 0 : -Theme.line }
        visible: button.visualFocus
        color: "transparent"
        radius: Theme.corner + Theme.line
        border { width: Theme.ring; color: Theme.role.accent }
    }

    function keyed(event: var) {
        event.accepted = true
        if (!event.isAutoRepeat)
            button.press()
    }
    /** The same as a tap, without the pause between two taps. */
    function click() {
        root.clicked()
    }
}
