// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** Leafs through the specimens, in any theme, text size and hand. */
Window {
    id: root

    property int index: 0
    property Item shown: null

    width: Theme.firstWidth
    height: Theme.firstHeight + bar.height
    visible: true
    title: specimens.entries[root.index].name
    color: Theme.role.paper

    onWidthChanged: root.fit()
    onHeightChanged: root.fit()
    onIndexChanged: root.show()
    Component.onCompleted: {
        root.fit()
        root.show()
    }

    Specimens {
        id: specimens
    }
    Column {
        id: bar
        anchors { top: parent.top; left: parent.left; right: parent.right; topMargin: Theme.topGap; leftMargin: Theme.edgeGap; rightMargin: Theme.edgeGap }
        spacing: Theme.apart

        KeyRow {
            width: bar.width
            PressKey { text: "‹"; name: "the one before"; enabled: root.index > 0; onClicked: root.index -= 1 }
            PressKey { text: "›"; name: "the next one"; enabled: root.index < specimens.entries.length - 1; onClicked: root.index += 1 }
        }
        ChoiceRow { width: bar.width; options: ["light", "dark", "sun"]; current: Theme.mode; onChosen: index => Theme.mode = index }
        ChoiceRow { width: bar.width; options: Theme.textFactors.map(String); current: Theme.textFactors.indexOf(Theme.textFactor); onChosen: index => Theme.textFactor = Theme.textFactors[index] }
        ChoiceRow { width: bar.width; options: ["usual keys", "big keys"]; current: Theme.bigKeys ? 1 : 0; onChosen: index => Theme.bigKeys = index === 1 }
    }
    Item {
        id: place
        anchors { top: bar.bottom; bottom: parent.bottom; left: parent.left; right: parent.right }
        clip: true
    }

    function fit() {
        Theme.fit(place.width, place.height)
    }
    function show() {
        if (root.shown)
            root.shown.destroy()
        root.shown = specimens.make(root.index, place, place.width, place.height)
        root.shown.anchors.fill = place
    }
}
