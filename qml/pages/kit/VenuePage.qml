// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model

/** A new venue: its name is enough. */
Sheet {
    id: root

    required property DeskWork work
    signal done

    heading: qsTr("Add a venue")
    back: qsTr("Kit")
    near: true
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        enabled: venue.text.trim() !== ""
        text: qsTr("KEEP")
        fact: venue.text.trim()
        onClicked: root.work.keepVenue(venue.read())
    }

    NameField {
        id: venue
        Layout.fillWidth: true
        objectName: "venue"
        label: qsTr("Name of the place")
        hint: qsTr("what is measured there is listed under it")
        maximumLength: 40
        onAccepted: root.work.keepVenue(venue.read())
    }
    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: head !== ""
        head: root.work.book.head
        body: root.work.book.body
    }
    Connections {
        target: root.work
        function onVenueKept() {
            root.done()
        }
    }
}
