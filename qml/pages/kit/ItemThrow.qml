// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Throws away what is not kept, or takes out what is: a new thing, a kept one, or one of its measurements. */
ThrowKey {
    id: root

    required property ItemEditor editor
    readonly property bool righting: root.editor.measurementId !== ""
    readonly property bool takesOut: root.righting ? !root.editor.drafted : root.editor.itemId !== ""
    signal done

    objectName: "throw"
    visible: root.editor.drafted || root.editor.itemId !== ""
    tight: true
    least: Theme.touchFloor
    text: root.righting ? (root.takesOut ? qsTr("Take out") : qsTr("Forget")) : root.takesOut ? qsTr("Out of the kit") : qsTr("Forget")
    size: Theme.key
    onClicked: {
        if (root.takesOut)
            root.editor.remove()
        else
            root.editor.throwDraft()
        if (!root.righting)
            root.done()
    }
}
