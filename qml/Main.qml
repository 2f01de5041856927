// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Model
import Steelyard.Theme

/** The window: it fits the theme to its size and shows the flow of pages. */
Window {
    id: root

    /** False as long as what the first page needs is still on its way. */
    property bool begun: true
    readonly property Item flow: (pages.item ? pages.item : door.item) as Item

    width: Theme.firstWidth
    height: Theme.firstHeight
    visible: root.begun
    title: qsTr("Steelyard")
    color: Theme.role.paper

    onWidthChanged: root.fit()
    onHeightChanged: root.fit()
    Component.onCompleted: root.fit()

    Binding {
        target: Theme
        property: "mode"
        value: ThePreferences.theme
    }
    Binding {
        target: Theme
        property: "textFactor"
        value: Theme.textFactors[ThePreferences.textSize]
    }
    Binding {
        target: Theme
        property: "leftHanded"
        value: ThePreferences.hand === 1
    }
    Binding {
        target: Theme
        property: "bigKeys"
        value: ThePreferences.bigKeys
    }
    Shortcut {
        sequence: "F11"
        onActivated: root.visibility = root.visibility === Window.FullScreen ? Window.Windowed : Window.FullScreen
    }
    // made for a sample only
    Loader {
        id: example
        // a loader keeps the height of what it has let go
        height: (item as Item)?.implicitHeight ?? 0
        anchors { top: parent.top; left: parent.left; right: parent.right }
        active: root.begun && TheVault.sample
        source: active ? "ExampleStrip.qml" : ""
        onHeightChanged: root.fit()
    }
    Loader {
        id: door
        anchors { top: example.bottom; bottom: parent.bottom; left: parent.left; right: parent.right }
        active: root.begun && TheVault.state !== VaultService.Open
        focus: active
        source: active ? "DoorFlow.qml" : ""
    }
    // both by their addresses, so that neither is loaded before its time
    Loader {
        id: pages
        anchors { top: example.bottom; bottom: parent.bottom; left: parent.left; right: parent.right }
        active: TheVault.state === VaultService.Open
        focus: active
        source: active ? "PageFlow.qml" : ""
    }

    /** The pages have what the example's strip leaves. */
    function fit() {
        Theme.fit(root.width, root.height - example.height)
    }
}
