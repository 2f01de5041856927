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

    onWidthChanged: Theme.fit(root.width, root.height)
    onHeightChanged: Theme.fit(root.width, root.height)
    Component.onCompleted: Theme.fit(root.width, root.height)

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
    Loader {
        id: door
        anchors.fill: parent
        active: root.begun && TheVault.state !== VaultService.Open
        focus: active
        source: active ? "DoorFlow.qml" : ""
    }
    // both by their addresses, so that neither is loaded before its time
    Loader {
        id: pages
        anchors.fill: parent
        active: TheVault.state === VaultService.Open
        focus: active
        source: active ? "PageFlow.qml" : ""
    }
}
