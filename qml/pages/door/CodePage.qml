// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The recovery code, shown once. */
DoorSheet {
    id: root

    required property VaultMaker maker
    signal written

    heading: qsTr("Recovery code")
    under: qsTr("shown this once, and kept nowhere")
    back: qsTr("Before")
    foot: PressKey {
        width: parent.width
        objectName: "mainAction"
        main: true
        text: qsTr("IT IS ON PAPER")
        onClicked: {
            root.maker.codeWritten()
            root.written()
        }
    }

    SecretLetters {
        width: parent.width
        objectName: "code"
        note: root.maker.code
        lines: Theme.stacked ? 5 : 3
        color: Theme.role.ink
        font { family: Theme.face; pixelSize: Theme.figure; weight: Theme.strong }
        Accessible.role: Accessible.StaticText
        Accessible.name: qsTr("The recovery code, to be read by eye")
    }
    Words {
        width: parent.width
        text: qsTr("Write its five groups on paper now. The last sign of each group finds mistakes, so nothing is lost by writing badly.")
    }
    Words {
        width: parent.width
        text: qsTr("Keep the paper where your squad's papers are locked away, and not with this device.")
    }
}
