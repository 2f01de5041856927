// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Charts
import Steelyard.Model
import Steelyard.Theme

/** The readings of a thing with the curve through them. */
FitChart {
    id: root

    required property fitPicture picture

    Layout.preferredHeight: Theme.pictureHeight
    objectName: "fit"
    points: root.picture.points
    fit: root.picture.fit
    low: root.picture.low
    high: root.picture.high
    xTo: root.picture.pullTo
    yFrom: root.picture.lengthFrom
    yTo: root.picture.lengthTo
    xUnit: root.picture.pullUnit
    yUnit: root.picture.lengthUnit
    measuredTo: root.picture.measuredTo
    measuredText: root.picture.measuredText
}
