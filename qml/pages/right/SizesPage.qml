// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit

/** One person's body masses and heights by day; a tap puts one right. */
Sheet {
    id: root

    required property SizesView view
    signal sizeRequested(string sizeId)

    heading: root.view.name
    under: root.view.empty ? "" : qsTr("body mass and height; tap one to put it right")
    back: qsTr("Athlete")

    UndoKey {
        Layout.fillWidth: true
        book: root.view.book
    }
    Words {
        Layout.fillWidth: true
        visible: root.view.empty
        text: qsTr("None is kept yet. Enter body mass or height on the athlete's page, and keep it.")
    }
    DatedRows {
        Layout.fillWidth: true
        rows: root.view.sizes
        onOpened: sizeId => root.sizeRequested(sizeId)
    }
}
