// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The list of another venue copied to this one: names and counts, and nothing measured. */
Sheet {
    id: root

    required property CopyListView view
    signal done

    heading: qsTr("Copy a list")
    under: qsTr("to %1").arg(root.view.venue)
    back: qsTr("Kit")
    near: true
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.view.canKeep
        text: qsTr("COPY")
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
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "sources"
        label: qsTr("The list of")
        options: root.view.sources
        current: root.view.source
        onChosen: index => root.view.source = index
    }
    Words {
        Layout.fillWidth: true
        objectName: "what"
        text: qsTr("For a place with like kit of its own: names and counts are copied, measurements are not. Another chain weighs something else; each is measured there before it hangs. Kit that you carry there is taken along instead.")
        quiet: true
    }
    Repeater {
        model: root.view.things
        ColumnLayout {
            id: row
            required property int index
            required property string label
            required property string hint
            Layout.fillWidth: true
            spacing: Theme.line
            // a layout this deep keeps the height from before a name wrapped
            Item {
                Layout.fillWidth: true
                implicitHeight: Math.max(thing.height, count.height)
                Words {
                    id: thing
                    anchors { left: parent.left; right: count.left; rightMargin: Theme.indent }
                    objectName: "thing:" + row.index
                    text: row.label
                    size: Theme.act
                }
                Words {
                    id: count
                    anchors.right: parent.right
                    objectName: "count:" + row.index
                    text: row.hint
                    size: Theme.act
                }
            }
            Rule { Layout.fillWidth: true }
        }
    }
    Connections {
        target: root.view
        function onKept() {
            root.done()
        }
    }
}
