// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Iron here that was weighed: a bar to take for the one in use, plates to take with what they weigh. */
ColumnLayout {
    id: root

    required property WeighedIronView iron
    property int plateRows: plates.count

    visible: root.iron.bars.length > 0 || root.plateRows > 0
    spacing: Theme.block

    ChoiceRow {
        Layout.fillWidth: true
        objectName: "weighedBars"
        visible: root.iron.bars.length > 0
        label: qsTr("The bar weighs")
        options: root.iron.bars
        current: root.iron.bar
        onChosen: index => root.iron.bar = index
    }
    Repeater {
        id: plates
        model: root.iron.plates
        FactRow {
            id: row
            required property int index
            required property string what
            required property string how
            required property bool taken
            Layout.fillWidth: true
            objectName: "weighedPlates:" + row.index
            label: row.what
            hint: row.how
            value: row.taken ? qsTr("as weighed") : qsTr("as marked")
            entry: row.taken ? ReadOut.State.Entered : ReadOut.State.None
            onOpened: root.iron.takePlates(row.index)
        }
    }
    Words {
        Layout.fillWidth: true
        visible: root.plateRows > 0
        text: qsTr("Tap weighed plates to load with what they weigh, or with their mark again. Chalk it on them.")
        size: Theme.note
        quiet: true
    }
}
