// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Drawings
import Steelyard.Model

/** An elastic bench aid measured in short steps: what rests on it, and how high over the chest it holds the bar. */
ReadingSteps {
    id: root

    required property AidGuide steps

    reading: root.steps
    atFirst: root.steps.part === "mass"
    drawn: AidMeasured {
        anchors.fill: parent
        objectName: "drawing"
        part: root.steps.part
        sentence: root.steps.heading
        bare: root.pad.text !== "" && root.steps.part === "mass" ? Number(root.pad.text) === 0 : root.steps.bare
    }
    beginText: qsTr("Looked over: begin")
    beginning: CautionCard {
        Layout.fillWidth: true
        objectName: "caution"
        head: qsTr("She lies under a bar that only rubber carries")
        points: [qsTr("Look it over, stretched by hand: a cut, a thin place or a loose seam, and it is not measured but thrown away."),
            qsTr("Safeties in, just under the lowest height you mean to read, tried with the empty bar. A spotter at each end."),
            qsTr("Her hands stay closed round the bar. Two helpers let it down and lift it off at once after each reading."),
            qsTr("Begin with nothing on it and go down in small steps. It holds for her and this way of wearing it.")]
        accept: ""
    }
    onBeginRequested: root.steps.next()
}
