// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/hung.h"
#include "core/resistance/setup.h"
#include "core/season/limits.h"

#include <optional>
#include <string>

namespace steelyard {

/// An anchor that is held down by weight must be held by this many times the band's pull, where the coach has no limit of their own (our
/// choice).
inline constexpr double leastHoldFactor = ours::holdPercent / 100.0;

/// A band whose anchor might lift: what pulls it up at the most, at the unfavourable end, and what holds it.
struct WeakAnchor {
    std::string item;
    Mass pull;
    Mass heldBy;
    double holdFactor = leastHoldFactor; ///< that it should be held by
    bool operator==(const WeakAnchor&) const = default;
};

/// Holds the greatest upward pull on one band's anchor over the path, with its give-or-take, against what holds it down.
/// None when it is held well enough by that factor, or is not held by weight. Only what is known of the band is looked at.
[[nodiscard]] std::optional<WeakAnchor> weakAnchor(const std::string& item, const HungBand& band, std::optional<Mass> heldBy, const LiftPath& path,
                                                   double holdFactor = leastHoldFactor);

}
