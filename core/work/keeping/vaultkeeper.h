// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vault/access.h"
#include "core/work/keeping/keeper.h"

namespace steelyard {

/// Keeps in the open vault.
class VaultKeeper : public Keeper {
public:
    /// The vault outlives the keeper.
    explicit VaultKeeper(vault::VaultAccess& access) : m_access(access) {}

    void keep(std::vector<journal::Draft> drafts, std::function<void(KeepResult)> told) override;
    void saveDraft(std::string key, std::optional<journal::ByteBuffer> bytes, std::function<void(std::optional<vault::Refusal>)> told) override;

private:
    vault::VaultAccess& m_access;
};

}
