// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Model
import Steelyard.Pages.Door

/** The pages before the vault is open, by how the vault stands; nothing else of the app is loaded for them. */
FocusScope {
    id: root

    readonly property VaultService vault: TheVault
    property string page: ""
    property DoorSheet currentItem: null
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

    /** The page that the state asks for. */
    function asked(): string {
        if (root.vault.state === VaultService.Stopped)
            return "StoppedPage"
        if (root.vault.state === VaultService.Looking || root.vault.state === VaultService.Open)
            return ""
        return root.making ? ["WelcomePage", "PassphrasePage", "CodePage", "RetypePage"][theMaker.step] : "UnlockPage"
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
        root.currentItem = null
        if (root.page === "")
            return
        // by its address, so that the first picture waits for one page and not for all of them
        const component = Qt.createComponent("../Pages/Door/" + root.page + ".qml")
        const ofMaking = root.page !== "UnlockPage" && root.page !== "StoppedPage"
        const size = {width: root.width, height: root.height}
        root.currentItem = component.createObject(root, Object.assign(size, ofMaking ? {maker: theMaker} : {vault: root.vault}))
        if (!root.currentItem)
            return
        if (ofMaking)
            root.currentItem.backRequested.connect(root.back)
        root.currentItem.anchors.fill = root
        root.currentItem.forceActiveFocus()
    }
    function back() {
        theMaker.back()
    }
}
