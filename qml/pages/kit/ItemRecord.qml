// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Model
import Steelyard.Theme

/** What is on record about a kept thing besides its last measurement: where it belongs. */
ColumnLayout {
    id: root

    required property ItemEditor editor

    visible: root.editor.venues.length > 0
    spacing: Theme.block

    ChoiceRow {
        Layout.fillWidth: true
        objectName: "belongs"
        label: qsTr("Belongs to")
        options: root.editor.venues
        current: root.editor.venue
        onChosen: index => root.editor.venue = index
    }
}
