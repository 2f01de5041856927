// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The scale that something is weighed on, where one here was checked: its step and accuracy come with it. */
ColumnLayout {
    id: root

    required property ItemEditor editor
    readonly property ScaleChoice scale: ScaleChoice { form: root.editor }

    visible: root.scale.names.length > 0
    spacing: Theme.apart

    ChoiceRow {
        Layout.fillWidth: true
        objectName: "scales"
        label: qsTr("Weighed on")
        options: root.scale.names
        current: root.scale.chosen
        onChosen: index => root.scale.chosen = index
    }
    Words {
        Layout.fillWidth: true
        objectName: "scaleText"
        visible: text !== ""
        text: root.scale.text
        size: Theme.note
        quiet: true
    }
}
