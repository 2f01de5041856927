// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Model
import Steelyard.Pages.Door

/** The pages before the vault is open, by how the vault stands; nothing else of the app is loaded for them. */
FocusScope {
    id: root

    readonly property VaultService vault: TheVault
    readonly property Component page: root.pageFor(root.vault.state, theMaker.step)
    property Item currentItem: null
    property bool making: false

    onPageChanged: root.turn()
    Component.onCompleted: root.turn()

    VaultMaker {
        id: theMaker
        vault: root.vault
    }
    Component {
        id: welcomePage
        WelcomePage { maker: theMaker; onBackRequested: root.back() }
    }
    Component {
        id: passphrasePage
        PassphrasePage { maker: theMaker; onBackRequested: root.back() }
    }
    Component {
        id: codePage
        CodePage { maker: theMaker; onBackRequested: root.back() }
    }
    Component {
        id: retypePage
        RetypePage { maker: theMaker; onBackRequested: root.back() }
    }
    Component {
        id: unlockPage
        UnlockPage { vault: root.vault }
    }
    Component {
        id: stoppedPage
        StoppedPage { vault: root.vault }
    }

    function pageFor(state: int, step: int): Component {
        if (state !== VaultService.Working)
            root.making = state === VaultService.NoVault
        if (state === VaultService.Stopped)
            return stoppedPage
        if (state === VaultService.Looking || state === VaultService.Open)
            return null
        return root.making ? [welcomePage, passphrasePage, codePage, retypePage][step] : unlockPage
    }
    /** Shows the page that the state asks for; one at a time, so that no secret stays in a field out of sight. */
    function turn() {
        if (root.currentItem)
            root.currentItem.destroy()
        // made here and not by a loader, which may not make bound components
        root.currentItem = root.page ? root.page.createObject(root, {width: root.width, height: root.height}) : null
        if (!root.currentItem)
            return
        root.currentItem.anchors.fill = root
        root.currentItem.forceActiveFocus()
    }
    function back() {
        theMaker.back()
    }
}
