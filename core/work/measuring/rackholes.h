// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/season/kit.h"
#include "core/season/marks.h"

#include <optional>
#include <span>

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

/// How a bar mark that was read at a hole came to its height.
struct MarkOrigin {
    HoleRead read;
    /// `lowest + (hole − 1)·spacing` as the rack is measured now; nothing where it is not here, or has no such hole.
    std::optional<Height> lowest;
    std::optional<Length> spacing; ///< none of a rack with one hole
    bool still = false;            ///< whether that comes to the height that the mark has
};

/// Of a mark with that height and hole; the rack is looked for in the kit.
[[nodiscard]] MarkOrigin originOf(const HoleRead& read, const Height& height, std::span<const KitItem> kit);

}
