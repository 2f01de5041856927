// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Theme

/** Who says so: typed, or tapped among those who were named before. */
Column {
    id: root

    required property string label
    required property var names
    property string who: ""
    property string hint: ""
    signal named(string who)

    spacing: Theme.apart

    NameField {
        id: field
        width: root.width
        objectName: "who"
        label: root.label
        hint: root.hint
        text: root.who
        maximumLength: 60
        onEdited: text => root.named(text)
    }
    ChoiceRow {
        width: root.width
        objectName: "names"
        visible: root.names.length > 0
        label: qsTr("named before")
        options: root.names
        current: Array.from(root.names).indexOf(root.who)
        onChosen: index => root.named(root.names[index])
    }

    /** What stands in the field, with what the input method still holds. */
    function read() {
        root.named(field.read())
    }
}
