// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** Whether she may use one thing for a lift, every reason against it, and what is to be looked over before. */
Sheet {
    id: root

    required property UseView view
    readonly property useWords words: root.view.words
    signal thingRequested
    signal capRequested
    signal sledRequested

    heading: root.words.thing
    under: root.words.who
    back: qsTr("List")
    foot: Words {
        Layout.fillWidth: true
        objectName: "may"
        text: root.words.stop ? qsTr("DO NOT USE") : root.words.ready ? qsTr("READY") : qsTr("NOT READY: look over first")
        size: Theme.act
        strong: true
        horizontalAlignment: Text.AlignHCenter
        Accessible.name: text
    }

    SetupNotices {
        id: stops
        Layout.fillWidth: true
        visible: stops.any
        notices: root.view.stops
        stops: true
    }
    Words {
        Layout.fillWidth: true
        objectName: "mass"
        text: root.words.mass
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Words {
        Layout.fillWidth: true
        objectName: "figures"
        visible: text !== ""
        text: root.words.figures
    }
    Repeater {
        model: root.words.flip
        Words {
            required property int index
            required property string modelData
            Layout.fillWidth: true
            objectName: "flip:" + index
            text: modelData
            size: Theme.note
        }
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "lifts"
        visible: root.view.lifts.length > 1
        label: qsTr("For")
        options: root.view.lifts
        current: root.view.lift
        onChosen: index => root.view.lift = index
    }
    Words {
        Layout.fillWidth: true
        visible: root.words.set !== ""
        text: root.words.setLabel
        size: Theme.note
        quiet: true
    }
    CountRow {
        Layout.fillWidth: true
        objectName: "set"
        visible: root.words.set !== ""
        name: root.words.setLabel
        value: root.words.set
        onStepped: up => root.view.step(up)
    }
    FactRow {
        Layout.fillWidth: true
        objectName: "against"
        visible: root.words.against !== ""
        label: qsTr("Held against")
        hint: qsTr("the most that she may have in her hands")
        value: root.words.against
        onOpened: root.capRequested()
    }
    SetupNotices {
        id: looks
        Layout.fillWidth: true
        visible: looks.any
        notices: []
        cautions: root.view.cautions
        onLookedOver: code => root.view.lookOver(code)
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "sled"
        visible: root.view.kind === "sled"
        text: qsTr("How it slides, and her runs")
        onClicked: root.sledRequested()
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "thing"
        text: qsTr("How it was measured")
        onClicked: root.thingRequested()
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Stop for pain, dizziness, chest pain, sudden headache or numbness. Local rules, and whoever is licensed or responsible here, go before this page.")
        size: Theme.note
        quiet: true
    }
}
