// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** What comes along to a venue for now: the same things with their measurements, and each still belongs where it did. */
Sheet {
    id: root

    required property AlongView view
    signal done

    heading: qsTr("Take along")
    under: qsTr("to %1, for now").arg(root.view.venue)
    back: qsTr("Kit")
    near: true
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.view.canKeep
        text: qsTr("KEEP")
        fact: root.view.fact
        factSize: Theme.note
        onClicked: root.view.keep()
    }
    onBackRequested: root.done()

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.view.book.head
        body: root.view.book.body
    }
    Words {
        Layout.fillWidth: true
        objectName: "what"
        text: root.view.empty ? qsTr("There is no kit elsewhere to take along.") : qsTr("Tap what comes along. It is the same thing, so its measurements come with it; where it belongs is kept, and a tap sends it back.")
        quiet: true
    }
    Repeater {
        model: root.view.things
        FactRow {
            id: row
            required property int index
            required property string itemId
            required property bool here
            required property bool turned
            required hint
            Layout.fillWidth: true
            objectName: "thing:" + row.index
            markable: true
            marked: row.here
            strong: row.here
            value: row.turned ? (row.here ? qsTr("comes along") : qsTr("goes back")) : row.here ? qsTr("here") : qsTr("not here")
            onOpened: root.view.turn(row.itemId)
        }
    }
    Connections {
        target: root.view
        function onKept() {
            root.done()
        }
    }
}
