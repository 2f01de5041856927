// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Charts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The answer as a title, the pull by height under it. */
Column {
    id: root

    required property SetupView view
    property real tall: -1
    property real reading: NaN

    spacing: Theme.apart

    Words {
        width: root.width
        objectName: "answer"
        // a value and its give-or-take stay on one line
        text: root.view.answer.title.split(" ± ").join("\u00a0±\u00a0")
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    HeightPicture {
        width: root.width
        height: root.tall > 0 ? root.tall : implicitHeight
        objectName: "picture"
        visible: root.view.answer.known
        curve: root.view.picture
        bandName: root.view.answer.bandName
        unitText: root.view.answer.unit
        readStep: root.view.readStep
        marks: root.view.marks
        plates: root.view.plates
        items: root.view.elevation
        sentence: qsTr("Pull by height: %1").arg(root.view.answer.title)
        readHeight: root.reading
        readingText: Number.isFinite(root.reading) ? root.view.readingAt(root.reading) : ""
        onReadAt: metres => root.reading = metres
    }
    Connections {
        target: root.view
        function onChanged() {
            // a reading belongs to the path that was on the page
            if (root.view.readingAt(root.reading) === "")
                root.reading = NaN
        }
    }
}
