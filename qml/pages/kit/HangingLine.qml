// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** One hanging: its mass and the length it gave, each to tap; the odd one says so and can be left out. */
Column {
    id: root

    required property int number
    required property string mass
    required property string length
    required property string note
    required property bool odd
    required property bool leftOut
    /** What a screen reader says of the two numbers, and of the key that leaves the line out. */
    property string massAbout: qsTr("Hanging %1, mass: %2")
    property string lengthAbout: qsTr("Hanging %1, length: %2")
    property string leaveOutAbout: root.leftOut ? qsTr("Take hanging %1 in again") : qsTr("Leave hanging %1 out")
    signal massRequested
    signal lengthRequested
    signal leftOutChosen(bool leftOut)

    spacing: Theme.apart

    RowLayout {
        width: root.width
        spacing: Theme.apart
        Words {
            Layout.minimumWidth: Theme.indent
            text: root.number
            size: Theme.note
            quiet: true
            Accessible.ignored: true
        }
        PressKey {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            objectName: "mass"
            tight: true
            text: root.mass
            size: Theme.key
            Accessible.name: root.massAbout.arg(root.number).arg(root.mass)
            onClicked: root.massRequested()
        }
        PressKey {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            objectName: "length"
            tight: true
            text: root.length
            size: Theme.key
            Accessible.name: root.lengthAbout.arg(root.number).arg(root.length)
            onClicked: root.lengthRequested()
        }
    }
    Item {
        id: besides
        readonly property bool below: Theme.stacked
        readonly property real keyWidth: leaveOut.visible && !besides.below ? leaveOut.width + Theme.apart : 0
        width: root.width
        height: besides.below && leaveOut.visible ? leaveOut.y + leaveOut.height : Math.max(said.height, leaveOut.visible ? leaveOut.height : 0)
        visible: root.note !== ""
        Words {
            id: said
            width: besides.width - besides.keyWidth
            y: besides.below ? 0 : Math.round((besides.height - height) / 2)
            text: root.note
            size: Theme.note
            strong: true
        }
        PressKey {
            id: leaveOut
            anchors.right: parent.right
            y: besides.below ? said.height + Theme.line : 0
            width: besides.below ? besides.width : implicitWidth
            height: implicitHeight
            objectName: "leaveOut"
            visible: root.odd || root.leftOut
            tight: true
            text: root.leftOut ? qsTr("Take in again") : qsTr("Leave out")
            size: Theme.key
            Accessible.name: root.leaveOutAbout.arg(root.number)
            onClicked: root.leftOutChosen(!root.leftOut)
        }
    }
}
