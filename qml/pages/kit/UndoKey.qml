// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Undoes what was kept last; it stands there for a while after each. */
PressKey {
    id: root

    required property BookService book

    objectName: "undoLast"
    visible: root.book.undoFact !== ""
    text: qsTr("Undo:")
    fact: root.book.undoFact
    factSize: Theme.note
    onClicked: root.book.undo()
}
