// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/vaultkeeper.h"
#include "core/work/waiting/draftkeeper.h"
#include "mobile/bookservice.h"
#include "mobile/deskservice.h"
#include "mobile/door/appvault.h"
#include "mobile/door/vaultservice.h"

/** Vault, book, desk and door, put together as the app has them: what is kept goes into the vault, and so does what is half done. */
class Household {
public:
    explicit Household(AppVault::Folders folders, VaultService::Restart restart, std::optional<steelyard::seal::StretchCost> cost = std::nullopt);

    [[nodiscard]] DeskService& desk() { return m_desk; }
    [[nodiscard]] OneBook& book() { return m_book; }
    [[nodiscard]] OneVault& door() { return m_door; }

private:
    void receive(const steelyard::vault::Opened& opened);
    /// Every entry, once a week, behind everything else.
    void checkWhenQuiet();

    AppVault m_vault;
    steelyard::VaultKeeper m_keeper;
    DeskService m_desk;
    OneBook m_book;
    steelyard::DraftKeeper m_drafts;
    OneVault m_door;
    steelyard::Subscription m_onTrouble;
};
