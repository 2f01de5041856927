// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** What her load in a lift is held against: which lift, and how much of its lowest estimate. */
Sheet {
    id: root

    required property CapEditor editor
    signal pickRequested
    signal numberRequested(string key)
    signal done

    heading: root.editor.lift
    under: qsTr("%1: held against").arg(root.editor.who)
    back: qsTr("Use")
    tools: ThrowKey {
        objectName: "throw"
        visible: root.editor.there
        tight: true
        least: Theme.touchFloor
        text: qsTr("Leave out")
        size: Theme.key
        onClicked: root.editor.takeBack()
    }
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: root.editor.canKeep
        text: qsTr("KEEP")
        fact: root.editor.share
        factSize: Theme.act
        onClicked: root.editor.keep()
    }

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.editor.book.head
        body: root.editor.book.body
    }
    FactRow {
        Layout.fillWidth: true
        objectName: "of"
        label: qsTr("Of which lift of hers")
        value: root.editor.lifts[root.editor.of] ?? qsTr("not chosen")
        onOpened: root.pickRequested()
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("How much of it")
        size: Theme.note
        quiet: true
    }
    Stepper {
        Layout.fillWidth: true
        objectName: "share"
        name: qsTr("How much of it")
        value: root.editor.share
        onStepDown: root.editor.step(false)
        onStepUp: root.editor.step(true)
        onTypeRequested: root.numberRequested("share")
    }
    Words {
        Layout.fillWidth: true
        objectName: "comesTo"
        text: root.editor.comesTo
        size: Theme.act
        strong: true
    }
    Connections {
        target: root.editor
        function onDone() {
            root.done()
        }
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Seventy per cent is ours to begin with: common practice, no source. Held against it is the load with its give-or-take.")
        size: Theme.note
        quiet: true
    }
}
