// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Model
import Steelyard.Pages.Kit

/** What was measured on one thing of the kit, by day; a tap puts one right. */
Sheet {
    id: root

    required property MeasurementsView view
    signal measurementRequested(string measurementId)

    heading: root.view.name
    under: qsTr("measured; tap one to put it right")
    back: qsTr("Leave")

    UndoKey {
        Layout.fillWidth: true
        book: root.view.book
    }
    DatedRows {
        Layout.fillWidth: true
        rows: root.view.measurements
        onOpened: measurementId => root.measurementRequested(measurementId)
    }
}
