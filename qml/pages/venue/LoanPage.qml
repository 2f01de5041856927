// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** Whose a thing is and who has it now: ours and here, borrowed, or lent out; and when it is to be back. */
Sheet {
    id: root

    required property LoanEditor editor
    readonly property bool ours: root.editor.kind === 0
    signal dayRequested(string key)
    signal done

    heading: root.editor.name
    under: root.editor.state === "" ? qsTr("now: ours, and here") : qsTr("now: %1").arg(root.editor.state)
    back: qsTr("Kit")
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.editor.canKeep
        text: qsTr("KEEP")
        fact: root.keepFact()
        factSize: Theme.note
        onClicked: root.keep()
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
        objectName: "kind"
        label: qsTr("It is")
        options: [qsTr("ours, and here"), qsTr("borrowed"), qsTr("lent out")]
        current: root.editor.kind
        onChosen: index => {
            who.read()
            root.editor.kind = index
        }
    }
    NameField {
        id: who
        Layout.fillWidth: true
        objectName: "who"
        visible: !root.ours
        label: root.editor.kind === 2 ? qsTr("Who has it") : qsTr("Whose it is")
        text: root.editor.who
        maximumLength: 60
        onEdited: text => root.editor.who = text
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "when"
        visible: !root.ours
        label: qsTr("Back by")
        options: root.editor.days
        current: root.editor.when
        onChosen: index => root.editor.when = index
    }
    Words {
        Layout.fillWidth: true
        objectName: "dayText"
        visible: text !== ""
        text: root.editor.dayText
        strong: true
    }
    FieldList {
        Layout.fillWidth: true
        visible: !root.ours && root.editor.when === LoanEditor.OtherDay
        fields: root.editor.day.fields
        onOpened: key => root.dayRequested(key)
    }
    Words {
        Layout.fillWidth: true
        objectName: "what"
        text: root.editor.kind === 2 ? qsTr("While it is lent, it is not free to hang, and no set-up with it is ready. Its measurements stay.")
            : root.editor.kind === 1 ? qsTr("Kit lists say whose it is, and put it first in the week before it goes back. Measure it before you hang it: nobody else's number is its own.")
            : qsTr("It stands in its venue's list like the rest.")
        quiet: true
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }

    function keep() {
        who.read()
        root.editor.keep()
    }
    function keepFact(): string {
        if (root.editor.canKeep)
            return root.ours ? qsTr("it is back") : root.editor.who
        return root.ours ? qsTr("once changed") : root.editor.who === "" ? qsTr("once it is said who") : qsTr("once changed")
    }
}
