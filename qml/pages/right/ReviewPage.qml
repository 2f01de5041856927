// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit

/** What several devices said differently, each to be settled by a tap on the answer that is right. */
Sheet {
    id: root

    required property ReviewView view

    heading: qsTr("To be settled")
    under: root.view.count === 0 ? "" : qsTr("tap what is right")
    back: qsTr("Squad")

    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: head !== ""
        head: root.view.book.head
        body: root.view.book.body
    }
    UndoKey {
        Layout.fillWidth: true
        book: root.view.book
    }
    Words {
        Layout.fillWidth: true
        objectName: "nothing"
        visible: root.view.count === 0
        text: qsTr("Nothing waits here. When two devices say different things about the same, both stand here until you choose.")
    }
    Repeater {
        model: root.view.contested
        ContestedCard {
            id: card
            required property int index
            required what
            required answers
            required given
            Layout.fillWidth: true
            objectName: "contested:" + card.index
            onChosen: answer => root.view.settle(card.index, answer)
        }
    }
}
