// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** One lifter's bar marks for one lift. */
Sheet {
    id: root

    required property MarksEditor editor
    signal numberRequested(string key)
    signal preferencesRequested
    signal done

    heading: qsTr("Her bar marks")
    under: qsTr("floor to the bar's middle, read at the sleeve")
    tools: PressKey {
        objectName: "preferences"
        tight: true
        least: Theme.touchFloor
        text: qsTr("Preferences")
        size: Theme.key
        onClicked: root.preferencesRequested()
    }
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        text: qsTr("SEE")
        fact: qsTr("what she lifts")
        onClicked: root.done()
    }

    ChoiceRow {
        Layout.fillWidth: true
        objectName: "start"
        label: qsTr("The lift starts")
        options: [qsTr("from her own bottom"), qsTr("with plates on the floor")]
        current: root.editor.fromFloor ? 1 : 0
        onChosen: index => root.editor.fromFloor = index === 1
    }
    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: root.editor.trouble !== ""
        head: root.editor.trouble
    }
    Pair {
        Layout.fillWidth: true
        share: 0.62
        first: FieldList {
            Layout.fillWidth: true
            fields: root.editor.fields
            onOpened: key => root.numberRequested(key)
        }
        second: MarksRule {
            Layout.fillWidth: true
            Layout.preferredHeight: Theme.pictureHeight
            visible: root.editor.marks.length > 0 && Theme.textFactor < 1.5
            marks: root.editor.marks
        }
    }
}
