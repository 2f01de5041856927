// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/implements/limbs.h"
#include "core/measure/estimate.h"
#include "core/measure/result.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace steelyard {

enum class CarryKind : std::uint8_t { Farmers, OneHand, HexBar, Yoke, Front, Overhead };

/// What is carried, handles with their own mass included: in each hand (farmer's), in one (one hand), or on no hand in particular.
struct CarryLoad {
    std::optional<Estimate<Mass>> left, right, whole;
};

/// One way down the lane, as far as it really went: a dropped load counts up to where it fell.
struct CarryLap {
    Estimate<Length> covered; ///< laps of one lane share its measurement
    std::optional<Estimate<Seconds>> time;
    int drops = 0;
};

/// Laps of one carry with one load.
struct Carry {
    CarryKind kind = CarryKind::Farmers;
    CarryLoad load;
    std::vector<CarryLap> laps;
    int lapsLeftOut = 0; ///< planned and not gone
};

/// What a carry came to. Its kg·m are no mass, and add to no tonnage: their type keeps them apart.
struct CarryDone {
    Estimate<MassDistance> left, right, whole, all; ///< load × distance by hand, on no hand in particular, and together
    Estimate<Mass> load;                            ///< carried at once
    Estimate<Length> distance;
    std::optional<Estimate<Speed>> speed; ///< over the laps that were timed; none when none was
    int lapsGone = 0, lapsLeftOut = 0;    ///< a lap of no length is not gone
    int drops = 0;
};

/// Works out a carry. Source: load × distance is common practice, no source.
/// Refuses a load that does not go with its kind (farmer's: both hands; one hand: left or right; the others: the whole), masses not above 0,
/// distances below 0, times not above 0, counts below 0 or above 100,000.
[[nodiscard]] Result<CarryDone> carryDone(const Carry& carry);

/// A load as a percentage of something of the athlete's: body mass, or a lift. Refuses a reference that is not above 0 and a load below 0.
[[nodiscard]] Result<Estimate<double>> percentOf(const Estimate<Mass>& load, const Estimate<Mass>& reference);

}
