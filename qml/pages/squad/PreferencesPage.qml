// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Model

/** How the app looks on this device. */
Sheet {
    id: root

    heading: qsTr("Preferences")
    under: qsTr("this device only")
    back: qsTr("Squad")

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
}
