// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Model
import Steelyard.Theme

/** The best answer, or the best after it. */
Column {
    id: root

    required property HangAsker asker
    /** Whether the best stands here, or what comes after it. */
    property bool best: true
    signal taken(int index)

    spacing: Theme.block

    Repeater {
        model: root.asker.answers
        AnswerCard {
            id: answer
            required property int index
            width: root.width
            visible: (answer.index === 0) === root.best
            objectName: "answer:" + answer.index
            first: answer.index === 0
            onTaken: root.taken(answer.index)
        }
    }
}
