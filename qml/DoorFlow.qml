// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Model
import Steelyard.Pages.Door

/** The pages before the vault is open, by how the vault stands; nothing else of the app is loaded for them. */
FocusScope {
    id: root

    readonly property VaultService vault: TheVault
    property Component page: null
    property Item currentItem: null
    property bool making: false

    Component.onCompleted: root.look()

    VaultMaker {
        id: theMaker
        vault: root.vault
        onStepChanged: root.look()
    }
    Connections {
        target: root.vault
        function onChanged() {
            root.look()
        }
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

    /** The page that the state asks for. */
    function asked(): Component {
        if (root.vault.state === VaultService.Stopped)
            return stoppedPage
        if (root.vault.state === VaultService.Looking || root.vault.state === VaultService.Open)
            return null
        return root.making ? [welcomePage, passphrasePage, codePage, retypePage][theMaker.step] : unlockPage
    }
    function look() {
        // while a key is being made the page stays that it is made on
        if (root.vault.state !== VaultService.Working)
            root.making = root.vault.state === VaultService.NoVault
        const next = root.asked()
        if (next === root.page)
            return
        root.page = next
        root.turn()
    }
    /** One page at a time, so that no secret stays in a field out of sight. */
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
