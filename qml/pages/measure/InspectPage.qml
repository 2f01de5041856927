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

    heading: qsTr("Look over: %1").arg(root.editor.name)
    under: root.editor.state
    back: qsTr("Kit")
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.editor.outOfUse || root.editor.found >= 0
        text: root.editor.outOfUse ? qsTr("BACK IN USE") : root.editor.fit ? qsTr("FIT FOR USE") : root.editor.found > 0 ? qsTr("OUT OF USE") : qsTr("KEEP")
        fact: root.editor.fit ? qsTr("looked over today") : root.editor.found > 0 ? root.editor.findings[root.editor.found] ?? "" : qsTr("once it is said what was found")
        factSize: Theme.act
        onClicked: root.editor.keep()
    }
    onBackRequested: root.done()

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.editor.book.head
        body: root.editor.book.body
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "fault"
        visible: !root.editor.outOfUse
        label: qsTr("Found")
        options: root.editor.findings
        current: root.editor.found
        onChosen: index => root.editor.found = index
    }
    Words {
        Layout.fillWidth: true
        objectName: "what"
        text: root.editor.outOfUse ? qsTr("Out of use: it is offered nowhere, and no set-up with it is ready. What is worn or broken is not mended by looking: bring it back only once it was put right and found fit by whoever answers for the kit.")
            : root.editor.lookAt
    }
    NameField {
        Layout.fillWidth: true
        objectName: "note"
        label: root.editor.outOfUse ? qsTr("What was done, if you say so") : qsTr("Where, or what else")
        text: root.editor.note
        maximumLength: 60
        onEdited: text => root.editor.note = text
    }
    Words {
        Layout.fillWidth: true
        objectName: "first"
        text: qsTr("Doubtful is out of use. What the maker says and the rules of the house go first.")
        quiet: true
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }
}
