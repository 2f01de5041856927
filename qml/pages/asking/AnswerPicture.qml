// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Model

/** How level the best answer is with her strength; nothing where that was not asked, as charts take long to make. */
Item {
    id: root

    required property HangAsker asker
    readonly property bool there: root.asker.picture.pull.length > 0

    implicitHeight: loader.item ? (loader.item as Item).implicitHeight : 0
    visible: root.there
    onThereChanged: root.show()
    Component.onCompleted: root.show()

    Loader {
        id: loader
        width: root.width
    }

    function show() {
        if (root.there)
            loader.setSource("LevelOfAnswer.qml", {asker: root.asker})
        else
            loader.source = ""
    }
}
