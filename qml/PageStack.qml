// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Steelyard.Model
import Steelyard.Pages.Kit

/** A stack of pages in places; header arrow, Back and Esc all end in back(). */
StackView {
    id: root

    readonly property var places: [qsTr("Squad"), qsTr("Kit")]
    readonly property int squadPlace: 0
    readonly property int kitPlace: 1
    property int place: root.kitPlace
    /** Of each place, in their order. */
    property list<Component> firstPages

    pushEnter: null; pushExit: null
    popEnter: null; popExit: null
    replaceEnter: null; replaceExit: null
    focus: true
    // the page that is shown has the keyboard: Back and Esc are keys
    onCurrentItemChanged: root.currentItem?.forceActiveFocus()

    Component {
        id: keypadPage
        KeypadPage {
            id: keypad
            required property FieldEditor editor
            required property string field
            pad: NumberPad { editor: keypad.editor; key: keypad.field }
            onBackRequested: root.back(); onDone: root.back()
        }
    }

    /** Shows a place from its first page. */
    function go(index: int) {
        root.place = index
        root.replace(null, root.firstPages[index])
    }
    /** One page further in, with the values of its own properties. */
    function show(page: Component, values: var) {
        root.push(page, values ?? {})
    }
    /** Another page in place of this one. */
    function instead(page: Component, values: var) {
        root.replace(page, values ?? {})
    }
    function key(editor: FieldEditor, field: string) {
        root.push(keypadPage, {editor: editor, field: field})
    }
    function home() {
        root.pop(null)
    }
    /** One page back; from a place's first page to the set-up, and no further: nothing closes by a stray key. */
    function back() {
        if (root.depth > 1)
            root.pop()
        else if (root.place !== root.kitPlace)
            root.go(root.kitPlace)
    }
}
