// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** What is here that she may use: every thing that is lifted, carried or dragged by itself, with its mass and what stands against it. */
Sheet {
    id: root

    required property HereView view
    signal thingRequested(string itemId)
    signal arrivalRequested

    back: qsTr("Athlete")
    heading: qsTr("What she may use")
    under: root.view.venue === "" ? root.view.name : qsTr("%1, %2").arg(root.view.name).arg(root.view.venue)
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "arrival"
        outlined: true
        text: qsTr("Enter what is here")
        onClicked: root.arrivalRequested()
    }

    Words {
        Layout.fillWidth: true
        objectName: "counts"
        visible: text !== ""
        text: root.view.counts
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: head !== ""
        head: root.view.trouble
    }
    Repeater {
        model: root.view.things
        HereRow {
            id: row
            required property int index
            required property string itemId
            required property bool permits
            Layout.fillWidth: true
            objectName: "thing:" + (row.index + 1)
            onOpened: root.thingRequested(row.itemId)
        }
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Local rules, and whoever is licensed or responsible here, go before this list.")
        size: Theme.note
        quiet: true
    }
}
