// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Five words to type once, or a passphrase of one's own to type twice. */
DoorSheet {
    id: root

    required property VaultMaker maker
    signal taken

    heading: root.maker.drawn ? qsTr("Five words") : qsTr("Your passphrase")
    back: qsTr("Start")
    bodySpacing: Theme.apart
    tools: PressKey {
        objectName: "drawAgain"
        visible: root.maker.drawn
        tight: true
        least: Theme.touchFloor
        text: qsTr("Others")
        name: qsTr("Draw five other words")
        size: Theme.key
        onClicked: {
            second.wipe()
            root.maker.drawAgain()
        }
    }
    foot: PressKey {
        width: parent.width
        objectName: "mainAction"
        main: true
        enabled: second.count > 0
        text: qsTr("NEXT")
        fact: qsTr("recovery code")
        onClicked: root.take()
    }

    SecretLetters {
        width: parent.width
        objectName: "words"
        visible: root.maker.drawn
        note: root.maker.words
        lines: Theme.stacked ? 5 : 3
        color: Theme.role.ink
        font { family: Theme.face; pixelSize: Theme.title; weight: Theme.strong }
        Accessible.role: Accessible.StaticText
        Accessible.name: qsTr("Five words, to be read by eye")
    }
    SecretEntry {
        id: first
        width: parent.width
        objectName: "first"
        visible: !root.maker.drawn
        label: qsTr("Passphrase")
        hint: qsTr("%n characters or more; a sentence is easiest", "", root.maker.least)
        onEdited: root.maker.hush()
        onAccepted: second.field.forceActiveFocus()
    }
    SecretEntry {
        id: second
        width: parent.width
        objectName: "second"
        label: root.maker.drawn ? qsTr("Type them, with a space between") : qsTr("The same once more")
        onEdited: root.maker.hush()
        onAccepted: root.take()
    }
    Notice {
        width: parent.width
        objectName: "refusal"
        visible: head !== ""
        head: root.maker.refusal
    }
    Words {
        width: parent.width
        visible: root.maker.drawn
        text: root.maker.strength
        size: Theme.note
        quiet: true
    }

    function take() {
        if (root.maker.takePassphrase(first.field, second.field))
            root.taken()
    }
}
