// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** What is typed into stands where a keyboard on the glass does not cover it, however far down the page it is. */
Item {
    id: root

    width: 1280
    height: 1000

    Sheet {
        id: sheet
        width: Theme.pageWidth
        height: Theme.pageHeight
        heading: "Ana Moreau"
        back: "Squad"
        foot: PressKey { objectName: "keep"; Layout.fillWidth: true; main: true; text: "KEEP" }

        Repeater {
            id: rows
            model: 20
            PressKey {
                required property int index
                Layout.fillWidth: true
                text: "row " + index
            }
        }
        NameField {
            id: field
            Layout.fillWidth: true
            label: "Notes"
        }
    }
    ControlCase {
        name: "TypedInto"

        function test_standsInTheUpperThird_data() {
            return [{tag: "far down a phone", rows: 20, width: 360, height: 720}, {tag: "on a short page", rows: 3, width: 360, height: 720},
                {tag: "far down a tablet", rows: 20, width: 1280, height: 800}]
        }
        function test_standsInTheUpperThird(row) {
            rows.model = row.rows
            Theme.fit(row.width, row.height)
            waitForRendering(sheet, 100)
            field.field.forceActiveFocus()
            wait(1)
            const at = field.field.mapToItem(sheet, 0, 0)
            verify(at.y >= 0 && at.y + field.field.height <= sheet.height / 3 + 1, "it stands at " + at.y)
            focusByKey(findChild(sheet, "keep"))
            wait(1)
            verify(!sheet.bodyView.typing && sheet.contentY <= Math.max(0, sheet.bodyView.contentHeight - sheet.bodyView.height) + 1, "and the page goes back")
        }
    }
}
