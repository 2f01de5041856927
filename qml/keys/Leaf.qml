// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Theme

/** What every page is by its nature: its title, one way back, and what has the keyboard scrolled into sight. */
FocusScope {
    id: root

    required property Scroller bodyView
    required property Scroller footView
    property string heading: ""
    property string under: ""
    property string back: ""
    readonly property Item focused: Window.activeFocusItem

    signal backRequested

    focus: true
    Keys.onEscapePressed: event => root.leave(event)
    Keys.onBackPressed: event => root.leave(event)
    Keys.onPressed: event => root.bodyView.page(event)
    onFocusedChanged: root.show(root.focused)

    Rectangle {
        anchors.fill: parent
        color: Theme.role.paper
    }

    /** Arrow, Back and Esc: one signal. */
    function leave(event: var) {
        event.accepted = true
        root.backRequested()
    }
    function show(item: Item) {
        // what has the keyboard may be known before this page is whole
        if (!root.bodyView || !root.footView)
            return
        const held = root.bodyView.holds(item)
        root.bodyView.typing = held && item instanceof TextInput
        if (held)
            root.bodyView.reveal(item)
        else if (root.footView.holds(item))
            root.footView.reveal(item)
    }
}
