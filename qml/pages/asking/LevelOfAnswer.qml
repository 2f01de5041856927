// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Charts
import Steelyard.Model

/** The level picture of the best answer. */
LevelPicture {
    id: root

    required property HangAsker asker

    objectName: "levelPicture"
    pull: root.asker.picture.pull
    strength: root.asker.picture.strength
    strengthLow: root.asker.picture.strengthLow
    strengthHigh: root.asker.picture.strengthHigh
    share: root.asker.picture.share
    shareLow: root.asker.picture.shareLow
    shareHigh: root.asker.picture.shareHigh
    plain: root.asker.picture.plain
    pullUnit: root.asker.picture.pullUnit
    heightUnit: root.asker.picture.heightUnit
    sentence: root.asker.picture.sentence
}
