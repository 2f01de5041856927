// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The way up to what hangs: the same chains and bands, rising iron. */
Sheet {
    id: root

    required property RampView view
    /** The shares can be stepped. */
    property bool changing: false

    heading: qsTr("Warm-up")
    under: root.view.head
    back: qsTr("Set-up")

    Notice {
        Layout.fillWidth: true
        objectName: "refusal"
        visible: head !== ""
        head: root.view.refusal
    }
    Words {
        Layout.fillWidth: true
        objectName: "least"
        visible: text !== ""
        text: root.view.least
        size: Theme.body
    }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: Theme.block

        Repeater {
            model: root.view.steps
            Column {
                id: one

                required property int index
                required property string share
                required property string load
                required property string pull
                required property string change
                required property string note
                required property bool canLess
                required property bool canMore
                required property bool working

                Layout.fillWidth: true
                objectName: "ramp:" + one.index
                spacing: Theme.line

                Rule { width: one.width; total: one.working }
                Words {
                    width: one.width
                    objectName: "load"
                    text: one.working ? qsTr("%1, the working set").arg(one.load) : qsTr("%1: %2").arg(one.share).arg(one.load)
                    size: Theme.act
                    strong: true
                }
                Words { width: one.width; objectName: "pull"; text: one.pull; size: Theme.body }
                Words { width: one.width; objectName: "change"; text: one.change; size: Theme.body }
                Words { width: one.width; objectName: "note"; visible: text !== ""; text: one.note; size: Theme.note; quiet: true }
                CountRow {
                    width: one.width
                    objectName: "share:" + one.index
                    visible: root.changing && !one.working
                    name: qsTr("Share of the working pull")
                    value: one.share
                    canLess: one.canLess
                    canMore: one.canMore
                    onStepped: up => root.view.step(one.index, up)
                }
            }
        }
    }
    PressKey {
        Layout.fillWidth: true
        objectName: "changeShares"
        visible: root.view.refusal === ""
        text: root.changing ? qsTr("Leave the shares so") : qsTr("Change the shares")
        onClicked: root.changing = !root.changing
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "place"
        visible: root.changing
        label: qsTr("Shares of the pull")
        options: root.view.places
        current: root.view.place
        onChosen: index => root.view.place = index
    }
    Notice {
        Layout.fillWidth: true
        objectName: "caution"
        visible: root.view.hung
        head: qsTr("Change plates with what hangs at rest")
        body: qsTr("Take the pull off bands before a plate comes off, and never strip plates with bands from above on. Chains stay even on both sides, feet clear of them.")
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("The shares are ours, and common practice: step them as you know her.")
        size: Theme.note
        quiet: true
    }
}
