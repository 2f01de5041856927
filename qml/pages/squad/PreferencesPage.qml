// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** How the app looks on this device, and the units of the vault. */
Sheet {
    id: root

    property bool sample: false
    signal removeSampleRequested
    signal limitsRequested

    heading: qsTr("Preferences")
    under: qsTr("units belong to the vault, the rest to this device")
    back: qsTr("Squad")
    foot: ThrowKey {
        Layout.fillWidth: true
        objectName: "removeSample"
        visible: root.sample
        text: qsTr("Remove the example")
        onClicked: root.removeSampleRequested()
    }

    UnitsChoice {
        id: units
        book: TheBook
    }
    LimitsEditor {
        id: limits
        desk: TheDesk
        book: TheBook
    }
    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: TheBook.head
        body: TheBook.body
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "massUnit"
        label: qsTr("Masses and pulls in")
        options: [qsTr("kilograms"), qsTr("pounds")]
        current: units.mass
        onChosen: index => units.mass = index
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "lengthUnit"
        label: qsTr("Heights and lengths in")
        options: [qsTr("centimetres"), qsTr("inches")]
        current: units.length
        onChosen: index => units.length = index
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("What was typed stays as it was typed, and plates keep their marks.")
        size: Theme.note
        quiet: true
    }
    FactRow {
        Layout.fillWidth: true
        objectName: "limits"
        label: qsTr("Your limits")
        hint: qsTr("tyre, way down, anchors, how long a measurement counts")
        value: limits.ownCount === 0 ? qsTr("as shipped") : qsTr("%n of your own", "", limits.ownCount)
        onOpened: root.limitsRequested()
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "language"
        label: qsTr("Language")
        options: ThePreferences.languages
        current: ThePreferences.language
        onChosen: index => ThePreferences.language = index
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "theme"
        label: qsTr("Paper")
        options: [qsTr("light"), qsTr("dark"), qsTr("for the sun")]
        current: ThePreferences.theme
        onChosen: index => ThePreferences.theme = index
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "textSize"
        label: qsTr("Text")
        options: [qsTr("usual"), qsTr("larger"), qsTr("large"), qsTr("largest")]
        current: ThePreferences.textSize
        onChosen: index => ThePreferences.textSize = index
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "hand"
        label: qsTr("Thumb, with the phone on its side")
        options: [qsTr("right"), qsTr("left")]
        current: ThePreferences.hand
        onChosen: index => ThePreferences.hand = index
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "bigKeys"
        label: qsTr("Keys that answer a lift")
        options: [qsTr("usual"), qsTr("big, for gloves")]
        current: ThePreferences.bigKeys ? 1 : 0
        onChosen: index => ThePreferences.bigKeys = index === 1
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "staysOn"
        label: qsTr("Display, while the vault is open")
        options: [qsTr("stays on"), qsTr("as the device")]
        current: ThePreferences.staysOn ? 0 : 1
        onChosen: index => ThePreferences.staysOn = index === 0
    }
}
