// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Keys
import Steelyard.Theme

/** Our own keypad: ten digits, one decimal key, one rub-out. A keyboard's digits, point or comma, and Backspace do the same. */
FocusScope {
    id: root

    property string decimalPoint: root.pointOf(qsTr("decimal point"))
    // names that stand still: a key made anew would not know of the finger that is on it
    readonly property var upright: ["1", "2", "3", "4", "5", "6", "7", "8", "9", "point", "0", "rub"]
    readonly property var sideways: ["1", "2", "3", "rub", "4", "5", "6", "point", "7", "8", "9", "0"]

    signal pressed(string key)
    /** A keyboard's keys for pasting were pressed. */
    signal pasted

    implicitWidth: grid.implicitWidth
    implicitHeight: grid.implicitHeight
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Keys.onPressed: event => root.typed(event)

    GridLayout {
        id: grid
        anchors.fill: parent
        columns: Theme.low ? 4 : 3
        columnSpacing: Theme.apart
        rowSpacing: Theme.apart

        Repeater {
            model: Theme.low ? root.sideways : root.upright
            PressKey {
                id: key
                required property string modelData
                required property int index
                readonly property bool point: key.modelData === "point"
                readonly property string sign: key.point ? root.decimalPoint : key.modelData
                readonly property bool rub: key.modelData === "rub"
                objectName: "key " + key.modelData
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: Theme.touchStep
                focus: key.index === 0
                least: Theme.touchPad
                // a whole number has no decimal key; its place stays empty
                opacity: key.sign === "" ? 0 : 1
                enabled: key.sign !== ""
                repeats: true
                tight: true
                padding: Theme.line
                text: key.rub ? "⌫" : key.sign
                name: key.point ? qsTr("decimal point") : key.rub ? qsTr("rub out") : key.text
                size: Theme.figure
                onClicked: root.pressed(key.sign)
            }
        }
    }

    /** Looked up anew whenever words are said in another language: the locale alone tells nobody. */
    function pointOf(said: string): string {
        return said === "" ? "." : Qt.locale().decimalPoint
    }
    function typed(event: var) {
        if (event.key === Qt.Key_V && (event.modifiers & Qt.ControlModifier) || event.key === Qt.Key_Insert && (event.modifiers & Qt.ShiftModifier)) {
            event.accepted = true
            root.pasted()
            return
        }
        const digit = "0123456789".indexOf(event.text)
        const point = event.text === "." || event.text === "," || event.text === root.decimalPoint
        const key = event.text === "" ? "" : digit >= 0 ? event.text : point ? root.decimalPoint : ""
        event.accepted = key !== "" || event.key === Qt.Key_Backspace
        if (event.key === Qt.Key_Backspace)
            root.pressed("rub")
        else if (key !== "")
            root.pressed(key)
    }
}
