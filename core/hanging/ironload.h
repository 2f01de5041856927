// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/plates.h"
#include "core/resistance/pullsum.h"
#include "core/resistance/setup.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace steelyard {

/// One of a set-up's numbers.
enum class TargetPlace : std::uint8_t { Bottom, Zone, Top, Mean };

/// One load of iron that the plates here make, with the path that it gives: in a floor lift the plates make the bottom.
struct IronLoad {
    PlateLoad load;
    Mass uIron; ///< standard uncertainty of bar, collars and plates together
    LiftPath path;
};

/// The set-up of a load with nothing hung yet; the bar is what the load weighs besides its plates and the collars.
[[nodiscard]] Setup setupOf(const IronLoad& iron, Mass collars, const Limits& limits);

/// From where to where a place's pull is a mean; one height twice where it is read at one.
struct PlaceStretch {
    Height from, to;
};

/// Zone and mean are means over a stretch, bottom and top are read at one height.
[[nodiscard]] bool isMean(TargetPlace place);
/// The height of a place, or the stretch that its mean is over; nothing where the path has none.
[[nodiscard]] std::optional<PlaceStretch> stretchOf(const LiftPath& path, TargetPlace place);
/// The pull at a place of a path that has it.
[[nodiscard]] Reading readingOf(const PullSum& sum, const LiftPath& path, TargetPlace place);

}
