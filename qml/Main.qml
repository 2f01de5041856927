// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Model
import Steelyard.Theme

/** The window: it fits the theme to its size and shows the flow of pages. */
Window {
    id: root

    readonly property alias flow: flow

    width: Theme.firstWidth
    height: Theme.firstHeight
    visible: true
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
    PageFlow {
        id: flow
        anchors.fill: parent
        focus: true
    }
}
