// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** A machine with a cam measured in short steps, by its radius or by its pull. */
ReadingSteps {
    id: root

    required property MachineGuide steps

    reading: root.steps
    atFirst: root.steps.part === "angle" || root.steps.part === "travel"
    drawn: CamMeasured {
        anchors.fill: parent
        objectName: "drawing"
        part: root.steps.part
        sentence: root.steps.heading
    }
    beginning: [
        Words {
            Layout.fillWidth: true
            text: qsTr("A cam changes what the stack feels like along the way. Fingers out of cam, cable and stack; the pin is in to the stop before anybody lets go.")
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "byRadius"
            least: Theme.touchMain
            outlined: true
            text: qsTr("By its radius")
            fact: qsTr("ruler and level: turning moment by angle")
            factSize: Theme.note
            onClicked: root.steps.choose(false)
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "byPull"
            least: Theme.touchMain
            outlined: true
            text: qsTr("By its pull")
            fact: qsTr("hanging scale and tape: pull by travel")
            factSize: Theme.note
            onClicked: root.steps.choose(true)
        }
    ]
}
