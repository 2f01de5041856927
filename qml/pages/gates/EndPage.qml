// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Who takes a clearance back, or lifts a day status: from today on it holds no more. */
Sheet {
    id: root

    required property GateForm editor
    readonly property bool clearance: root.editor instanceof ClearanceEditor
    property string who: ""
    signal done

    heading: root.clearance ? qsTr("Take it back?") : qsTr("Lift it?")
    under: root.editor?.words.name ?? ""
    back: root.clearance ? qsTr("Clearance") : qsTr("Status")
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.who.trim() !== ""
        text: root.clearance ? qsTr("TAKE BACK") : qsTr("LIFT IT")
        fact: root.who.trim() === "" ? qsTr("once it is said who") : qsTr("from today on")
        factSize: Theme.note
        onClicked: root.end()
    }

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.editor?.book.head ?? ""
        body: root.editor?.book.body ?? ""
    }
    WhoSays {
        id: who
        Layout.fillWidth: true
        label: root.clearance ? qsTr("Who takes it back") : qsTr("Who lifts it")
        names: root.editor?.names ?? []
        who: root.who
        onNamed: who => root.who = who
    }
    Words {
        Layout.fillWidth: true
        objectName: "what"
        text: root.clearance ? qsTr("Every clearance of hers for this lift and method goes with it, those to come too. The set-up page then says do not lift where it is needed.")
                             : qsTr("What others have set holds on: each is lifted by itself.")
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("You can undo it until the vault is locked.")
        quiet: true
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }

    function end() {
        who.read()
        if (root.who.trim() !== "")
            root.editor.end(root.who)
    }
}
