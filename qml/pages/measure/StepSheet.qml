// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** One step of measuring: the question, a drawing of where to hold the tape, and the keys on the same page. */
Sheet {
    id: root

    required property MeasureGuide guide
    readonly property bool asks: root.guide.page === MeasureGuide.Page.Number
    readonly property bool begins: root.guide.page === MeasureGuide.Page.Begin
    readonly property bool ends: root.guide.page === MeasureGuide.Page.Result
    readonly property NumberPad pad: NumberPad { editor: root.guide.form; key: root.guide.key }
    readonly property bool stands: root.pad.text === "" && root.pad.standing !== ""
    /** Of a number's page, between the words and the keys. */
    property alias notes: pair.first

    /** Later, or back past the first step: what was keyed waits. */
    signal done

    heading: root.guide.heading
    under: root.guide.progress
    back: root.begins ? qsTr("Kit") : qsTr("Before")
    tools: PressKey {
        objectName: visible ? "later" : ""
        visible: root.asks
        tight: true
        least: Theme.touchFloor
        text: qsTr("Later")
        about: qsTr("what is keyed waits")
        size: Theme.key
        onClicked: root.done()
    }
    pinned: KeyedNumber {
        Layout.fillWidth: true
        objectName: visible ? "keyNumber" : ""
        visible: root.asks
        name: root.guide.heading
        text: root.stands ? root.pad.standing : root.pad.text
        unit: root.pad.unit
        refusal: root.pad.refusal
        size: Math.round(Theme.keyNumber * Theme.tailShare)
        entry: root.stands ? ReadOut.State.Kept : root.pad.text === "" ? ReadOut.State.Planned : ReadOut.State.Entered
    }
    foot: [
        NumberKeys {
            Layout.fillWidth: true
            visible: root.asks && !Theme.wide && !Theme.stacked
            onPressed: key => root.pad.press(key)
        },
        PressKey {
            Layout.fillWidth: true
            objectName: visible ? "mainAction" : ""
            visible: root.asks
            main: true
            text: qsTr("NEXT")
            fact: root.stands ? root.pad.standing + " " + root.pad.unit : root.pad.keepFact
            onClicked: root.goOn()
        },
        ItemFoot {
            Layout.fillWidth: true
            objectName: visible ? "mainAction" : ""
            visible: root.ends
            editor: root.guide.form
            onClicked: root.guide.form.keep()
        }
    ]
    onBackRequested: root.goBack()

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.guide.form.book ? root.guide.form.book.head : ""
        body: root.guide.form.book ? root.guide.form.book.body : ""
    }
    // far from the key that keeps, which stands beside the page where a phone lies on its side
    KeyRow {
        Layout.fillWidth: true
        Layout.leftMargin: Theme.low ? Theme.apart : 0
        Layout.rightMargin: Theme.low ? Theme.apart : 0
        visible: root.ends || root.begins && root.guide.form.drafted
        PressKey {
            objectName: visible ? "later" : ""
            visible: root.ends
            least: Theme.touchFloor
            text: qsTr("Later")
            about: qsTr("what is keyed waits")
            size: Theme.key
            onClicked: root.done()
        }
        ThrowKey {
            objectName: "throw"
            visible: root.guide.form.drafted
            least: Theme.touchFloor
            text: qsTr("Throw away")
            about: root.guide.form.itemId === "" ? "" : qsTr("the last measurement stays")
            size: Theme.key
            onClicked: {
                root.guide.form.throwDraft()
                root.done()
            }
        }
    }
    // the largest text leaves no room for keys and words beside one another: the keys come first, the words further down
    NumberKeys {
        Layout.fillWidth: true
        visible: root.asks && Theme.stacked
        onPressed: key => root.pad.press(key)
    }
    Pair {
        id: pair
        Layout.fillWidth: true
        visible: root.asks
        second: NumberKeys {
            Layout.fillWidth: true
            visible: Theme.wide
            onPressed: key => root.pad.press(key)
        }
    }
    Connections {
        target: root.guide.form
        function onKept() {
            root.done()
        }
    }

    function goOn() {
        if (root.stands || root.pad.keep())
            root.guide.next()
    }
    function goBack() {
        if (!root.guide.back())
            root.done()
    }
}
