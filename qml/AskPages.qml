// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Model
import Steelyard.Pages.Asking

/** The pages of what to hang, and where they lead. */
QtObject {
    id: root

    required property PageStack stack
    required property DeskWork work
    readonly property Component whatToHang: Component {
        WhatToHangPage {
            id: asking
            asker: HangAsker { desk: TheDesk }
            onBackRequested: root.stack.back()
            onNumberRequested: key => root.stack.key(asking.asker, key)
            onPullsRequested: root.stack.show(root.pulls)
            onTaken: root.stack.home()
        }
    }
    readonly property Component pulls: Component {
        PullsPage {
            id: pulls
            editor: PullsEditor { desk: TheDesk; work: root.work }
            onBackRequested: root.stack.back()
            onNumberRequested: key => root.stack.key(pulls.editor, key)
        }
    }
}
