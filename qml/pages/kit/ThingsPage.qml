// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The kit that is here: hang from it, measure more of it. */
Sheet {
    id: root

    required property KitView view
    required property DeskWork work
    readonly property MeasureWhat others: MeasureWhat { desk: root.view.desk }
    signal venueRequested
    signal hangRequested(string itemId)
    signal measureRequested(string itemId, string kind)
    signal inspectRequested(string itemId)
    signal somethingElseRequested
    signal loanRequested(string itemId)
    signal alongRequested
    signal copyRequested
    signal arrivalRequested

    heading: root.work.venues.length > 1 && root.work.venue === 0 ? qsTr("Kit") : qsTr("Kit here")
    under: root.view.empty ? "" : qsTr("Tap what to hang")
    back: qsTr("Set-up")
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "newOther"
        outlined: true
        text: qsTr("Measure new kit")
        fact: root.others.begun
        factSize: Theme.note
        onClicked: root.somethingElseRequested()
    }

    ChoiceRow {
        Layout.fillWidth: true
        objectName: "venues"
        visible: root.work.venues.length > 1
        options: root.work.venues
        current: root.work.venue
        onChosen: index => root.work.venue = index
    }
    UndoKey {
        Layout.fillWidth: true
        book: root.work.book
    }
    Words {
        Layout.fillWidth: true
        visible: root.view.empty
        text: qsTr("No kit is measured yet. A chain takes a minute: weigh it, or gauge one link. A band takes four: hang plates on it and read its length.")
    }
    Repeater {
        model: root.view.things
        ThingRow {
            id: row
            required property int index
            required property string itemId
            required property string kind
            Layout.fillWidth: true
            objectName: "item:" + (row.index + 1)
            onHangRequested: root.hangRequested(row.itemId)
            onInspectRequested: root.inspectRequested(row.itemId)
            onLoanRequested: root.loanRequested(row.itemId)
            onAlongRequested: root.alongRequested()
            onMeasureRequested: root.measureRequested(row.itemId, row.kind)
        }
    }
    KeyRow {
        Layout.fillWidth: true
        visible: root.work.venue > 0 && root.work.venues.length > 2
        PressKey {
            objectName: "along"
            text: qsTr("Take along")
            fact: qsTr("kit of another venue, for now")
            factSize: Theme.note
            onClicked: root.alongRequested()
        }
        PressKey {
            objectName: "copyList"
            text: qsTr("Copy a list")
            fact: qsTr("names only, to be measured")
            factSize: Theme.note
            onClicked: root.copyRequested()
        }
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "arrival"
        visible: root.work.venue > 0
        text: qsTr("Just arrived")
        fact: qsTr("tyres, logs, kegs, sleds, handles: one after the other")
        factSize: Theme.note
        onClicked: root.arrivalRequested()
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "newVenue"
        text: qsTr("Add a venue")
        onClicked: root.venueRequested()
    }
}
