// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/season/kit.h"
#include "core/season/marks.h"

namespace steelyard {

/// More holes than any upright has: a slip of the key.
inline constexpr int mostHoleCount = 99;

/// What a rack gives: heights of the centre line of a bar that lies in its holes, and heights to anchor bands at.
struct RackHeights {
    std::optional<Height> lowest, highest; ///< none where it has no holes
    int holeCount = 0;
    std::vector<Entered<Height>> anchors;  ///< the lowest first
};

/// Refuses a rack with neither holes nor anchors, holes without the height of the lowest or, of several, without their distance, counts
/// that are below 0 or above `mostHoleCount`, and heights that are not finite or below the floor.
[[nodiscard]] Result<RackHeights> checked(const RackMeasurement& rack);

/// The centre line of a bar in a hole, `lowest + (hole − 1)·distance`, to the whole µm as it is kept; nothing where the rack has no such
/// hole.
[[nodiscard]] std::optional<Height> heightOfHole(const RackMeasurement& rack, int hole);

}
