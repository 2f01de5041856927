// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** The tests of one lift by day: what each day comes to and why, and what nothing follows from. */
Sheet {
    id: root

    required property LiftStrengthView view
    signal addRequested
    signal testRequested(string testId)

    heading: root.view.liftName
    under: root.view.counts.length > 0 ? qsTr("%1 · what counts today").arg(root.view.name) : root.view.name
    back: qsTr("Strength")
    foot: PressKey {
        Layout.fillWidth: true
        objectName: "mainAction"
        main: true
        text: qsTr("ADD A TEST")
        onClicked: root.addRequested()
    }

    Words {
        Layout.fillWidth: true
        objectName: "counts"
        visible: text !== ""
        text: root.view.counts[0] ?? ""
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Words {
        Layout.fillWidth: true
        objectName: "how"
        visible: text !== ""
        text: root.view.counts[1] ?? ""
        size: Theme.body
    }
    Words {
        Layout.fillWidth: true
        objectName: "scaled"
        visible: text !== ""
        text: root.view.counts[2] ?? ""
        size: Theme.body
    }
    UndoKey {
        Layout.fillWidth: true
        book: root.view.book
    }
    Pair {
        Layout.fillWidth: true
        first: [
            StrengthRanges {
                Layout.fillWidth: true
                objectName: "ranges"
                visible: root.view.days.length > 0
                days: root.view.days
                unit: root.view.unit
                sentence: root.view.sentence
            },
            Words {
                Layout.fillWidth: true
                visible: root.view.days.length > 0
                text: qsTr("A bar is the range of a day, its tick the middle, a disc a maximum that was tried out. A dashed line: other conditions.")
                size: Theme.note
                quiet: true
            }
        ]
        second: [
            Words {
                Layout.fillWidth: true
                objectName: "none"
                visible: !root.view.any
                text: qsTr("No test of this lift is kept yet.")
                size: Theme.body
            },
            TestRows {
                Layout.fillWidth: true
                tests: root.view.tests
                onOpened: testId => root.testRequested(testId)
            }
        ]
    }
}
