// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/vaultkeeper.h"

namespace steelyard {

void VaultKeeper::keep(std::vector<journal::Draft> drafts, std::function<void(KeepResult)> told)
{
    m_access.keep(std::move(drafts), [told = std::move(told)](vault::Outcome<vault::Kept> kept) {
        if (kept)
            told({std::move(kept->entries), std::nullopt, kept->reserveUsed});
        else
            told({{}, kept.refusal()});
    });
}

void VaultKeeper::saveDraft(std::string key, std::optional<journal::ByteBuffer> bytes, std::function<void(std::optional<vault::Refusal>)> told)
{
    m_access.saveDraft(std::move(key), std::move(bytes), [told = std::move(told)](const vault::Outcome<vault::Done>& saved) {
        if (told)
            told(saved ? std::nullopt : std::optional(saved.refusal()));
    });
}

}
