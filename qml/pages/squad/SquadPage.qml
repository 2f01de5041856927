// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** The people: a key for each stretch of the alphabet that holds a handful, and their names. */
Sheet {
    id: root

    required property SquadView view
    signal athleteRequested(string athleteId)
    signal addRequested
    signal preferencesRequested
    signal lockRequested
    signal deedsRequested
    signal reviewRequested

    heading: qsTr("Squad")
    bodySpacing: Theme.apart
    tools: [
        PressKey {
            objectName: "preferences"
            tight: true
            least: Theme.touchFloor
            text: qsTr("Preferences")
            size: Theme.key
            onClicked: root.preferencesRequested()
        },
        PressKey {
            objectName: "lock"
            tight: true
            least: Theme.touchFloor
            text: qsTr("Lock")
            name: qsTr("Lock the vault")
            size: Theme.key
            onClicked: root.lockRequested()
        }
    ]
    foot: [
        UndoKey {
            Layout.fillWidth: true
            book: root.view.book
        },
        KeyRow {
            Layout.fillWidth: true
            PressKey {
                objectName: "add"
                text: qsTr("Add")
                name: qsTr("Add an athlete")
                onClicked: root.addRequested()
            }
            PressKey {
                objectName: "deeds"
                text: qsTr("Done lately")
                onClicked: root.deedsRequested()
            }
        }
    ]

    ChoiceRow {
        Layout.fillWidth: true
        objectName: "letters"
        visible: root.view.letters.length > 1
        tight: true
        options: root.view.letters
        current: root.view.letter
        onChosen: index => root.view.letter = index === root.view.letter ? -1 : index
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "squads"
        visible: root.view.squads.length > 1 && root.view.letter < 0
        options: root.view.squads
        current: root.view.squad
        onChosen: index => root.view.squad = index
    }
    Words {
        Layout.fillWidth: true
        objectName: "backupNote"
        visible: root.view.letter < 0
        text: TheVault.backupNote
        size: Theme.note
        quiet: true
    }
    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: head !== ""
        head: root.view.book.head
        body: root.view.book.body
    }
    FactRow {
        Layout.fillWidth: true
        objectName: "review"
        visible: root.view.reviewCount > 0
        label: qsTr("To be settled")
        hint: qsTr("devices said different things")
        value: String(root.view.reviewCount)
        onOpened: root.reviewRequested()
    }
    Words {
        Layout.fillWidth: true
        visible: root.view.empty
        text: qsTr("Nobody is in the squad yet. A name is enough to begin with; bar marks, birth year and the rest can wait.")
    }
    Repeater {
        model: root.view.athletes
        FactRow {
            id: row
            required property string athleteId
            required hint
            Layout.fillWidth: true
            objectName: "athlete:" + row.athleteId
            strong: true
            onOpened: root.athleteRequested(row.athleteId)
        }
    }
}
