// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

/** One thing of the kit: tap it to hang it; the key beside it measures it again. */
GridLayout {
    id: root

    required property string what
    required property string how
    required property string leftPiece
    required property bool usable
    required property bool outOfUse
    signal hangRequested
    signal measureRequested
    signal inspectRequested

    columns: Theme.stacked ? 1 : 2
    columnSpacing: Theme.apart
    rowSpacing: Theme.apart

    FactRow {
        Layout.fillWidth: true
        objectName: "thing"
        label: root.what
        hint: root.how
        value: root.leftPiece
        onOpened: root.outOfUse ? root.inspectRequested() : root.usable ? root.hangRequested() : root.measureRequested()
    }
    PressKey {
        Layout.fillWidth: Theme.stacked
        objectName: "measure"
        tight: true
        text: qsTr("Measure")
        size: Theme.key
        Accessible.name: qsTr("Measure %1").arg(root.what)
        onClicked: root.measureRequested()
    }
}
