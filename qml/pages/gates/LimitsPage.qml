// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** The coach's own limits, each with the one it was shipped with. */
Sheet {
    id: root

    required property LimitsEditor editor
    signal numberRequested(string key)
    signal done

    heading: qsTr("Your limits")
    under: root.editor.drafted ? qsTr("not kept yet") : qsTr("for the whole vault")
    back: qsTr("Preferences")
    tools: ThrowKey {
        objectName: "throw"
        visible: root.editor.drafted
        tight: true
        least: Theme.touchFloor
        text: qsTr("Forget")
        size: Theme.key
        onClicked: root.editor.throwDraft()
    }
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.editor.drafted
        text: qsTr("KEEP")
        fact: root.editor.drafted ? root.editor.keeps : qsTr("once changed")
        factSize: Theme.note
        onClicked: root.editor.keep()
    }

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.editor.book.head
        body: root.editor.book.body
    }
    Words {
        Layout.fillWidth: true
        objectName: "deference"
        text: qsTr("Limits as they are shipped are ours, chosen on the careful side. Local rules, a maker's word and a federation's go before ours and yours.")
    }
    UndoKey {
        Layout.fillWidth: true
        book: root.editor.book
    }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: 2 * Theme.block

        Repeater {
            model: root.editor.limits
            LimitLine {
                id: line
                required key
                required label
                required value
                required hint
                required shipped
                required down
                required up
                required canDown
                required canUp
                required own
                Layout.fillWidth: true
                objectName: line.key
                onStepped: up => root.editor.step(line.key, up)
                onTyped: root.numberRequested(line.key)
                onReset: root.editor.asShipped(line.key)
            }
        }
    }
    Connections {
        target: root.editor
        function onKept() {
            root.done()
        }
    }
}
