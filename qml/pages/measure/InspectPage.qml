// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** A thing looked over: what was found takes it out of use, and a look that finds it fit brings it back. */
Sheet {
    id: root

    required property InspectionEditor editor
    signal done

    heading: root.editor.name
    under: root.editor.state
    back: qsTr("Kit")
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.editor.outOfUse || root.editor.fault >= 0
        text: root.editor.outOfUse ? qsTr("BACK IN USE") : qsTr("OUT OF USE")
        fact: root.editor.outOfUse ? qsTr("looked over today") : root.editor.fault >= 0 ? root.editor.faults[root.editor.fault] : qsTr("once it is said why")
        factSize: Theme.act
        onClicked: root.editor.keep(root.editor.outOfUse)
    }
    onBackRequested: root.done()

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.editor.book.head
        body: root.editor.book.body
    }
    Words {
        Layout.fillWidth: true
        objectName: "what"
        text: root.editor.outOfUse ? qsTr("Out of use: no set-up with it is ready. A cut band or a worn link is not mended by looking: bring it back only once it was put right and found fit by whoever answers for the kit.")
            : qsTr("Chain: a link worn, bent, cracked or stretched, a hook that does not close. Band or bench aid: a cut, a crack, a thin or sticky place, a loose seam. Machine: a frayed cable, a pin that does not hold. Doubtful is out of use; what the maker or the house says goes first.")
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "fault"
        visible: !root.editor.outOfUse
        label: qsTr("Found")
        options: root.editor.faults
        current: root.editor.fault
        onChosen: index => root.editor.fault = index
    }
    NameField {
        Layout.fillWidth: true
        objectName: "note"
        label: root.editor.outOfUse ? qsTr("What was done, if you say so") : qsTr("Where, or what else")
        text: root.editor.note
        maximumLength: 60
        onEdited: text => root.editor.note = text
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }
}
