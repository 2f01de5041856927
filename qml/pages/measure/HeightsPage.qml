// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The pull by height as a table: each height with its pull and what that is made of, from the top down. */
Sheet {
    id: root

    required property HeightsView view

    heading: qsTr("At each height")
    back: qsTr("Set-up")

    Words {
        Layout.fillWidth: true
        objectName: "answer"
        text: root.view.title
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Repeater {
        model: root.view.lines
        Item {
            id: line

            required property string at
            required property string pull
            required property string made
            required property bool mark
            required property int index
            // wide, three columns beside each other; else the parts below, and the pull too where it must
            readonly property bool columns: Theme.wide && line.width >= Theme.pairWidth
            readonly property real column: Math.round(0.3 * line.width)
            readonly property bool below: !line.columns && high.implicitWidth + pulls.implicitWidth + Theme.indent > line.width

            implicitWidth: Theme.touchMain
            implicitHeight: Math.max(high.height, pulls.y + pulls.height, parts.y + parts.height) + Theme.apart
            Layout.fillWidth: true
            objectName: "line:" + line.index
            Accessible.role: Accessible.StaticText
            Accessible.name: line.made === "" ? qsTr("%1: %2").arg(line.at).arg(line.pull) : qsTr("%1: %2. %3").arg(line.at).arg(line.pull).arg(line.made)

            Words {
                id: high
                anchors.left: parent.left
                width: line.columns ? line.column - Theme.indent : line.below ? line.width : implicitWidth
                text: line.at
                size: Theme.act
                strong: line.mark
            }
            Words {
                id: pulls
                anchors { left: parent.left; leftMargin: line.columns ? line.column : line.below ? 0 : line.width - width }
                y: line.below ? high.height : 0
                width: line.columns ? line.column - Theme.indent : line.below ? line.width : implicitWidth
                objectName: "pull"
                text: line.pull
                size: Theme.act
                strong: true
            }
            Words {
                id: parts
                anchors { left: parent.left; leftMargin: line.columns ? 2 * line.column : 0 }
                y: line.columns ? Math.round((pulls.height - height) / 2) : pulls.y + pulls.height
                width: line.columns ? line.width - 2 * line.column : line.width
                objectName: "made"
                text: line.made
                size: Theme.note
                quiet: true
            }
            Rule { anchors { left: parent.left; right: parent.right; bottom: parent.bottom } visible: line.mark }
        }
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Heights are from the floor to the bar's middle. ± is for 19 times in 20; each part's is its own, and they do not simply add up: JCGM 100:2008.")
        size: Theme.note
        quiet: true
    }
}
