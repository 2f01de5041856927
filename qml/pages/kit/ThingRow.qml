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
    required property string free
    required property bool usable
    required property bool outOfUse
    required property string leads
    signal hangRequested
    signal measureRequested
    signal inspectRequested
    signal loanRequested
    signal alongRequested

    columns: Theme.stacked ? 1 : 2
    columnSpacing: Theme.apart
    rowSpacing: Theme.apart

    FactRow {
        Layout.fillWidth: true
        objectName: "thing"
        label: root.what
        hint: root.how
        value: root.free
        stop: root.outOfUse || root.leads === "loan"
        besideLabel: true
        onOpened: root.open()
    }
    PressKey {
        Layout.fillWidth: Theme.stacked
        objectName: "measure"
        visible: root.leads !== "along" && root.leads !== "look"
        tight: true
        text: qsTr("Measure")
        size: Theme.key
        Accessible.name: qsTr("Measure %1").arg(root.what)
        onClicked: root.measureRequested()
    }

    function open() {
        if (root.leads === "loan")
            root.loanRequested()
        else if (root.leads === "along")
            root.alongRequested()
        else if (root.outOfUse || root.leads === "look")
            root.inspectRequested()
        else if (root.usable)
            root.hangRequested()
        else
            root.measureRequested()
    }
}
