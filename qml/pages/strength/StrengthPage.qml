// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** How strong somebody is, lift by lift: what counts today, how it came and how old it is. */
Sheet {
    id: root

    required property StrengthView view
    signal liftRequested(string lift)

    heading: root.view.name
    under: root.view.any ? qsTr("strength: one repetition maximum, as a range") : qsTr("strength")
    back: qsTr("Athlete")

    UndoKey {
        Layout.fillWidth: true
        book: root.view.book
    }
    Notice {
        Layout.fillWidth: true
        objectName: "waits"
        visible: root.view.waits.length > 0
        head: root.view.waits[0] ?? ""
        body: root.view.waits[1] ?? ""
    }
    Words {
        Layout.fillWidth: true
        objectName: "none"
        visible: !root.view.any
        text: qsTr("No test is kept yet. Open a lift and add one: a set of up to 10 reps with what was left in reserve, or a maximum that was tried out.")
        size: Theme.body
    }
    ColumnLayout {
        id: list
        Layout.fillWidth: true
        spacing: Theme.apart

        Repeater {
            model: root.view.lifts
            FactRow {
                id: row
                required property string lift
                required property bool tested
                required hint
                Layout.fillWidth: true
                objectName: "strength:" + row.lift
                strong: row.tested
                besideLabel: row.tested
                onOpened: root.liftRequested(row.lift)
            }
        }
    }
    Words {
        Layout.fillWidth: true
        visible: root.view.scaled
        text: qsTr("F/M is what was lifted by body mass; F/M^0.67 takes out that bigger people are stronger. Both are for one person over time, and no norm.")
        size: Theme.note
        quiet: true
    }
    Words {
        Layout.fillWidth: true
        visible: root.view.any
        text: qsTr("The last day with plain iron counts, not the best. Limits take the low end of the range, percentages its middle.")
        size: Theme.note
        quiet: true
    }
}
