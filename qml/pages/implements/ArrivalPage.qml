// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** On arrival: what lies here and is not known yet, one after the other, each with its mass once it is. */
Sheet {
    id: root

    required property ArrivalView view
    required property LaneEditor lane
    signal laneRequested(string key)
    signal measureRequested(string itemId, string kind)
    signal anotherRequested

    back: qsTr("Kit")
    heading: qsTr("What is here")
    under: root.view.venue === "" ? qsTr("choose a venue in Kit first") : root.view.venue
    foot: [
        PressKey {
            Layout.fillWidth: true
            objectName: visible ? "mainAction" : ""
            visible: root.view.nextKind !== ""
            main: true
            text: qsTr("NEXT")
            fact: root.view.nextName
            factSize: Theme.act
            onClicked: root.measureRequested(root.view.nextItem, root.view.nextKind)
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "another"
            outlined: true
            text: qsTr("Something that is not on the list")
            onClicked: root.anotherRequested()
        }
    ]

    Words {
        Layout.fillWidth: true
        objectName: "progress"
        text: root.view.progress
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    UndoKey {
        Layout.fillWidth: true
        book: root.view.book
    }
    Repeater {
        model: root.view.things
        FactRow {
            id: row
            required property int index
            required property string itemId
            required property string kind
            required property string thing
            required property string what
            required property bool open
            required value
            Layout.fillWidth: true
            objectName: "thing:" + (row.index + 1)
            label: row.thing
            hint: row.what
            entry: row.open ? ReadOut.State.Planned : ReadOut.State.None
            onOpened: root.measureRequested(row.itemId, row.kind)
        }
    }
    FieldList {
        Layout.fillWidth: true
        fields: root.lane.fields
        onOpened: key => root.laneRequested(key)
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Leave and come back: what was begun waits as it was typed.")
        size: Theme.note
        quiet: true
    }
}
