// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls

/** One thing that is here, its mass, and whether she may use it. */
FactRow {
    id: root

    required property string thing
    required property string mass
    required property string may
    required property string why
    required stop

    label: root.thing
    value: root.mass
    hint: root.why === "" ? root.may : qsTr("%1: %2").arg(root.may).arg(root.why)
}
