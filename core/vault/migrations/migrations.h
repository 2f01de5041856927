// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vault/database.h"

#include <functional>
#include <span>

namespace steelyard::vault {

/// One change of the layout of what is kept for ever; the tables made from the journal are not in it, they are made anew.
/// The layout's number is the engine's `user_version`. What has been written down here is never edited, only added to.
struct Migration {
    std::int64_t versionNumber = 0; ///< of the layout that it leads to, from the one before
    std::function<void(Database&)> apply;
};

/// All there are, by rising number, from an empty database on.
[[nodiscard]] std::span<const Migration> migrations();

/// Brings the layout up to the newest of `steps`, all in one transaction. Newer than that is refused untouched; where a step does
/// not go through, the vault stands as it was.
[[nodiscard]] Outcome<Done> migrate(Database& database, std::span<const Migration> steps);

/// The first layout.
void layout1(Database& database);

}
