// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** One step of measuring: the question, a drawing of where to hold the tape, and the keys on the same page. */
AskSheet {
    id: root

    required property MeasureGuide guide
    readonly property bool begins: root.guide.page === MeasureGuide.Page.Begin
    readonly property bool ends: root.guide.page === MeasureGuide.Page.Result
    /** The key that leaves the first page; empty where something has to be chosen there. */
    property string beginText: ""
    /** The result is a caution rather than an answer. */
    property bool warns: false
    /** Two alike may be one thing of the kit. */
    property alias pairs: end.pairs
    /** Of a number's page, beside or over the keys. */
    property alias notes: notes.data
    /** Of the first page and of the last one. */
    property alias found: pair.first

    /** Later, or back past the first step: what was keyed waits. */
    signal done
    signal beginRequested
    signal formRequested
    signal inspectRequested
    signal loanRequested

    pad: NumberPad { editor: root.guide.form; key: root.guide.key }
    asks: root.guide.page === MeasureGuide.Page.Number
    heading: root.guide.heading
    under: root.asks && Theme.stacked ? "" : root.guide.progress
    back: root.begins ? qsTr("Kit") : qsTr("Before")
    // in the head, as far as can be from the key that keeps
    tools: [
        ThrowKey {
            objectName: "throw"
            visible: !root.asks && root.guide.form.drafted
            tight: true
            least: Theme.touchFloor
            text: qsTr("Throw away")
            about: root.guide.form.itemId === "" ? "" : qsTr("the last measurement stays")
            size: Theme.key
            onClicked: {
                root.guide.form.throwDraft()
                root.done()
            }
        },
        PressKey {
            objectName: visible ? "later" : ""
            visible: root.asks || root.ends
            tight: true
            least: Theme.touchFloor
            text: qsTr("Later")
            about: qsTr("what is keyed waits")
            size: Theme.key
            onClicked: root.done()
        }
    ]
    foot: [
        PressKey {
            Layout.fillWidth: true
            objectName: visible ? "mainAction" : ""
            visible: root.begins && root.beginText !== ""
            main: true
            text: root.beginText
            onClicked: root.beginRequested()
        },
        ItemFoot {
            Layout.fillWidth: true
            objectName: visible ? "mainAction" : ""
            visible: root.ends
            editor: root.guide.form
            onClicked: root.guide.form.keep()
        }
    ]
    onAnswered: root.guide.next()
    onBackRequested: root.goBack()

    Notice {
        Layout.fillWidth: true
        objectName: "notKept"
        visible: head !== ""
        head: root.guide.form.book ? root.guide.form.book.head : ""
        body: root.guide.form.book ? root.guide.form.book.body : ""
    }
    // a plain item between, because a layout within a layout keeps heights from before its words wrapped
    Item {
        Layout.fillWidth: true
        Layout.fillHeight: root.stretch
        implicitHeight: notes.implicitHeight
        visible: root.asks
        ColumnLayout {
            id: notes
            width: parent.width
            height: root.stretch ? Math.max(implicitHeight, parent.height) : implicitHeight
            spacing: Theme.block
        }
    }
    Pair {
        id: pair
        Layout.fillWidth: true
        visible: !root.asks
        first: Words {
            Layout.fillWidth: true
            objectName: "answer"
            visible: root.ends && !root.warns
            text: root.guide.form.answer
            size: Theme.title
            strong: true
            lineHeight: Theme.snug
            Accessible.role: Accessible.Heading
        }
        second: ItemEnd {
            id: end
            Layout.fillWidth: true
            guide: root.guide
            brief: root.begins
            told: root.warns
            onFormRequested: root.formRequested()
            onInspectRequested: root.inspectRequested()
            onLoanRequested: root.loanRequested()
        }
    }
    Connections {
        target: root.guide.form
        function onKept() {
            root.done()
        }
    }

    function goBack() {
        if (!root.guide.back())
            root.done()
    }
}
