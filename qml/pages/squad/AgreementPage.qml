// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model

/** That a parent or guardian agrees to what is kept about a minor. */
Sheet {
    id: root

    required property AthleteEditor editor
    signal done

    heading: qsTr("Guardian's agreement")
    under: root.editor?.name ?? ""
    back: qsTr("Athlete")
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: who.text.trim() !== ""
        text: qsTr("AGREED")
        fact: qsTr("today")
        onClicked: root.agree()
    }

    NameField {
        id: who
        Layout.fillWidth: true
        objectName: "who"
        label: qsTr("Who agreed")
        hint: qsTr("a parent or guardian, by name")
        maximumLength: 60
        onAccepted: root.agree()
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Say what is kept: name, squad, year of birth, body mass, height, loads and notes, on this device, sealed. Say who sees it, and that they can have it taken out again.")
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Local law and your federation or school decide what you need, and may ask for more, in writing or from the athlete as well.")
        strong: true
    }

    function agree() {
        const name = who.read().trim()
        if (name === "")
            return
        root.editor.agree(name)
        root.done()
    }
}
