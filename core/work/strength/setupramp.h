// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/warmupramp.h"
#include "core/season/kit.h"
#include "core/season/marks.h"
#include "core/season/setuprecord.h"

#include <cstddef>
#include <span>
#include <vector>

namespace steelyard {

/// What a ramp is to go through: shares of the working pull in whole percent, rising, and where the pull is read.
struct RampWanted {
    TargetPlace place = TargetPlace::Mean;
    std::vector<int> percents;

    /// With `usualRampShares`.
    [[nodiscard]] static RampWanted usual();
    bool operator==(const RampWanted&) const = default;
};

/// A share is stepped by so many percent (our choice), and stays above the one before it, below the one behind it and below the working set.
inline constexpr int rampStepPercent = 5;
[[nodiscard]] bool canStep(const RampWanted& wanted, std::size_t index, bool up);
/// As it was where it cannot be stepped.
[[nodiscard]] RampWanted stepped(RampWanted wanted, std::size_t index, bool up);

/// One load on the way, and what changes on each side from the one before; the first is hung on a bare bar.
struct SetupRampStep {
    RampStep step;
    PlateLoad load;
    PlateChange change;
};

/// The ramp up to what hangs: each step, and at its end the working set.
struct SetupRamp {
    std::vector<SetupRampStep> steps;
    Reading working;             ///< the pull of the working set at the place
    PlateLoad workingLoad;
    PlateChange toWorking;
    Reading least;               ///< the least that can be hung with it
    PlateLoad leastLoad;
};

/// A warm-up ramp to the set-up: the same chains and bands, rising iron. Refuses what the set-up refuses, a working pull that is not
/// known, a place that the path has not, and what `warmUpRamp` refuses.
[[nodiscard]] Result<SetupRamp> setupRamp(const SetupRecord& setup, std::span<const KitItem> kit, const BarMarks& marks, const RampWanted& wanted);

}
