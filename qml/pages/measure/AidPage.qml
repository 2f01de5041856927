// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Model

/** Measure an elastic bench aid: what rests on it, and how high over the chest it holds the bar. */
ReadingsSheet {
    id: root

    required property AidEditor editor

    form: root.editor
    what: qsTr("Measure a bench aid")
    how: qsTr("rest plates on it, read the height")
    firstAbout: qsTr("Reading %1, mass: %2")
    secondAbout: qsTr("Reading %1, height: %2")
}
