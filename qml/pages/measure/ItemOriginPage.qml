// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** Where the number of a thing of the kit comes from: its formula, and what was read, each with what it does to the number. */
Sheet {
    id: root

    required property ItemOriginView view

    heading: qsTr("Where it comes from")
    under: root.view.measured === "" ? root.view.name : qsTr("%1 · %2").arg(root.view.name).arg(root.view.measured)
    back: qsTr("Leave")

    Words {
        Layout.fillWidth: true
        objectName: "number"
        text: root.view.number === "" ? qsTr("There is no number yet: measure it first.") : root.view.number
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Words {
        Layout.fillWidth: true
        objectName: "formula"
        visible: text !== ""
        text: root.view.formula
        size: Theme.body
    }
    Words {
        Layout.fillWidth: true
        objectName: "advice"
        visible: text !== ""
        text: root.view.advice
        size: Theme.body
    }
    Repeater {
        model: root.view.lines
        OriginLine {
            required property int index
            Layout.fillWidth: true
            objectName: "line:" + index
        }
    }
    Words {
        Layout.fillWidth: true
        objectName: "sources"
        visible: root.view.number !== ""
        text: root.given(root.view.sources)
        size: Theme.note
        quiet: true
    }

    function given(sources: string): string {
        const rule = qsTr("± is for 19 times in 20; parts that have nothing to do with each other add in squares: JCGM 100:2008.")
        return sources === "" ? rule : qsTr("%1 %2").arg(rule).arg(sources)
    }
}
