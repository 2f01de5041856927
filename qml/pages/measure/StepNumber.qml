// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The number of a step as it is keyed, or as it stands, and in one line over it what to go for. */
Item {
    id: root

    required property NumberPad pad
    required property string name
    property string target: ""
    property string hint: ""
    /** Why a key was refused stands here, with room kept for it where keys would move. */
    property bool refuses: true
    readonly property bool stands: root.pad.text === "" && root.pad.standing !== ""

    implicitWidth: Theme.touchMain
    implicitHeight: column.implicitHeight

    ColumnLayout {
        id: column
        width: root.width
        height: implicitHeight
        spacing: Theme.line

        Words {
            Layout.fillWidth: true
            objectName: visible ? "goFor" : ""
            visible: text !== ""
            text: root.target
            strong: true
            // one line, so that it takes no key from the page
            wrapMode: Theme.stacked ? Text.NoWrap : Text.WordWrap
            fontSizeMode: Theme.stacked ? Text.HorizontalFit : Text.FixedSize
            minimumPixelSize: Theme.least
        }
        KeyedNumber {
            Layout.fillWidth: true
            Layout.topMargin: Theme.wide ? Theme.apart : 0
            objectName: visible ? "keyNumber" : ""
            name: root.name
            text: root.stands ? root.pad.standing : root.pad.text
            unit: root.pad.unit
            hint: root.stands ? "" : root.hint
            refusal: root.refuses ? root.pad.refusal : ""
            spare: false
            size: Math.round(Theme.keyNumber * Theme.tailShare)
            entry: root.stands ? ReadOut.State.Kept : root.pad.text === "" ? ReadOut.State.Planned : ReadOut.State.Entered
        }
    }
}
