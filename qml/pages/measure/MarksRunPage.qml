// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Bar marks of one lifter after the other: bottom and top with the keys on the page, kept as the last is keyed. */
AskSheet {
    id: root

    required property MarksRun run
    readonly property string alsoHint: root.stands || root.pad.hint === "" ? "" : " · " + root.pad.hint
    signal done

    pad: NumberPad { editor: root.run.form; key: root.run.key }
    asks: root.run.key !== ""
    name: root.pad.subject
    hint: Theme.stacked ? "" : root.pad.hint
    heading: root.run.heading
    // which mark it is stays by the number where the rest scrolls
    under: root.asks && Theme.stacked ? "" : root.run.progress
    target: root.asks && Theme.stacked ? root.run.progress + root.alsoHint : ""
    back: qsTr("Lifts")
    tools: PressKey {
        objectName: "zone"
        visible: root.asks
        tight: true
        least: Theme.touchFloor
        text: root.run.zone ? qsTr("No zone") : qsTr("Zone too")
        size: Theme.key
        onClicked: root.run.zone = !root.run.zone
    }
    foot: PressKey {
        Layout.fillWidth: true
        objectName: visible ? "mainAction" : ""
        visible: !root.asks
        main: true
        text: root.run.nextName !== "" ? qsTr("NEXT") : qsTr("DONE")
        fact: root.run.nextName
        onClicked: root.nextLifter()
    }
    onAnswered: root.run.next()
    onBackRequested: root.goBack()

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.run.work.book.head
        body: root.run.work.book.body
    }
    Notice {
        Layout.fillWidth: true
        objectName: "trouble"
        visible: !root.asks && root.run.form.trouble !== ""
        head: root.run.form.trouble
        body: qsTr("Go back and read it again.")
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "readBy"
        visible: root.asks && root.run.form.racks.length > 0
        label: qsTr("Read by")
        options: root.run.form.racks
        current: root.run.form.rack
        onChosen: index => root.run.form.rack = index
    }
    Words {
        Layout.fillWidth: true
        objectName: "copied"
        visible: text !== ""
        text: root.run.copied
        strong: true
    }
    MarksRule {
        Layout.fillWidth: true
        // beside the keys there is room for what has been read
        visible: (!root.asks || root.footBeside && Theme.wide) && root.run.form.marks.length > 0 && Theme.textFactor < 1.5
        marks: root.run.form.marks
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "copyTo"
        visible: !root.asks && root.run.alike.length > 0
        label: qsTr("The same marks for another lift too")
        options: root.run.alike
        onChosen: index => root.run.copyTo(index)
    }

    function nextLifter() {
        if (root.run.nextName !== "")
            root.run.nextLifter()
        else
            root.done()
    }
    function goBack() {
        if (!root.run.back())
            root.done()
    }
}
