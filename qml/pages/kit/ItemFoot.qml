// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The key that keeps what was measured; it waits, and says so, until there is something to keep. */
PressKey {
    id: root

    required property ItemEditor editor

    objectName: "mainAction"
    main: true
    enabled: root.editor.canKeep
    text: qsTr("KEEP")
    fact: root.editor.canKeep ? root.editor.name : root.editor.measurementId !== "" ? qsTr("once changed") : qsTr("once measured")
    factSize: Theme.act
}
