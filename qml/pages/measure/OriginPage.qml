// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Where a number of the set-up comes from: its parts, how each came to be known, and which makes it uncertain. */
Sheet {
    id: root

    required property OriginView view

    heading: qsTr("Where it comes from")
    back: qsTr("Set-up")

    ChoiceRow {
        Layout.fillWidth: true
        objectName: "numbers"
        visible: root.view.number !== ""
        label: qsTr("Which number")
        options: root.view.numbers
        current: root.view.current
        onChosen: index => root.view.current = index
    }
    Words {
        Layout.fillWidth: true
        objectName: "number"
        text: root.view.number === "" ? qsTr("There is no number yet: enter her bar marks, and hang what was measured far enough.") : root.view.number
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Words {
        Layout.fillWidth: true
        objectName: "advice"
        visible: text !== ""
        text: root.view.advice
        size: Theme.body
    }
    Repeater {
        model: root.view.lines
        OriginLine {
            required property int index
            Layout.fillWidth: true
            objectName: "line:" + index
        }
    }
    Words {
        Layout.fillWidth: true
        visible: root.view.number !== ""
        text: qsTr("The parts add up to the number. ± is for 19 times in 20; parts that have nothing to do with each other add in squares: JCGM 100:2008.")
        size: Theme.note
        quiet: true
    }
}
