// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/ironload.h"

#include <array>
#include <cstddef>
#include <vector>

namespace steelyard {

/// Shares of the working pull that a ramp goes through unless the coach says others (our choice; common practice, no source).
inline constexpr std::array usualRampShares{0.4, 0.55, 0.7, 0.85};

/// A ramp up to a working set: what hangs stays, the iron rises.
struct RampQuestion {
    std::vector<IronLoad> loads; ///< lightest first
    Mass collars;
    std::vector<HungItem> left, right; ///< the chains, bands and aids of the working set
    TargetPlace place = TargetPlace::Mean;
    Force working;               ///< the working set's pull at that place
    std::vector<double> shares;  ///< of it, rising, above 0 and not above 1
};

/// One step of a ramp.
struct RampStep {
    double share = 0;
    Force wanted;
    std::size_t loadIndex = 0;
    Reading reading;            ///< the pull at the place
    bool isLeast = false;       ///< the iron is at its least and what hangs pulls more than wanted: this step cannot be lighter
    bool isAsBefore = false;    ///< the same load as the step before
};

/// A ramp, and the least that can be hung.
struct WarmUpRamp {
    Reading least;           ///< with the lightest load
    std::size_t leastLoadIndex = 0;
    std::vector<RampStep> steps;
};

/// For each share the load whose pull at the place is nearest to it, on a tie the lighter, never lighter than the step before. Loads are
/// left out with which the pull is not known all along the path. Refuses a working pull not above 0, shares that do not rise or lie outside, a place that a path has not, and where no load is left.
[[nodiscard]] Result<WarmUpRamp> warmUpRamp(const RampQuestion& question);

}
