// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/entry.h"
#include "core/vault/refusal.h"

#include <functional>
#include <string>

namespace steelyard {

/// What came of keeping: the entries as they are on the disk, or why there are none.
struct KeepResult {
    std::vector<journal::Held> entries; ///< one for each draft, in their order
    std::optional<vault::Refusal> refusal;
    bool reserveUsed = false; ///< kept, and the disk is full now
};

/// Where use-cases put what is to be kept.
class Keeper {
public:
    Keeper() = default;
    Keeper(const Keeper&) = delete;
    Keeper& operator=(const Keeper&) = delete;
    virtual ~Keeper() = default;

    /// All of them or none; told once they are on the disk, and once only.
    virtual void keep(std::vector<journal::Draft> drafts, std::function<void(KeepResult)> told) = 0;
    /// A form half filled in, outside the journal; nothing in place of bytes takes it away. Told what stood in the way, if anything.
    virtual void saveDraft(std::string key, std::optional<journal::ByteBuffer> bytes,
                           std::function<void(std::optional<vault::Refusal>)> told) = 0;
};

}
