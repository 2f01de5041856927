// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Model
import Steelyard.Pages.Asking

/** The page of what to hang, and where it leads. */
QtObject {
    id: root

    required property PageStack stack
    readonly property HangAsker asker: HangAsker { desk: TheDesk }
    readonly property Component whatToHang: Component {
        WhatToHangPage {
            asker: root.asker
            onBackRequested: root.stack.back()
            onNumberRequested: key => root.stack.key(root.asker, key)
            onTaken: root.stack.home()
        }
    }
}
