// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sample/keepseason.h"

#include <filesystem>
#include <string_view>

namespace steelyard::sample {

/// Opens every sample vault; it is no secret, and stands on the page that asks for it.
inline constexpr std::string_view passphrase = "marrow hill is an example";

/// Where a vault lies, and where this install remembers which vaults it wrote.
struct Site {
    std::filesystem::path vault, install;
};

/// What came of making one: nothing, or the first thing in the way.
struct NotMade {
    std::optional<vault::Refusal> refusal;
    std::optional<NotKept> notKept;
};

/// Makes the vault of a season, marked as a sample for ever, and locks it. It is built beside its place and put there whole, so that a
/// sample is there or is not. `today` is the day that the season was laid out for. Waits for the disk: not for a thread that shows
/// pages. A few seconds at the most; what is there already is left as it is, and is a refusal.
[[nodiscard]] std::optional<NotMade> makeSampleVault(const Site& site, const Season& season, std::chrono::sys_days today);

}
