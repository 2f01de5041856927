// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/ironload.h"
#include "core/strength/percent.h"
#include "core/work/strength/maxima.h"
#include "core/work/weighup.h"

#include <vector>

namespace steelyard {

/// Why a set-up's pull is not said in per cent of a maximum.
enum class NoPercent : std::uint8_t {
    NotTested,       ///< there is no maximum
    OtherConditions, ///< it was lifted with something hung, and its number is that of the iron alone
    BodyInIt,        ///< it is that of body and load together, which no set-up of a bar is
};

/// Why none is said of this maximum; nothing where it is.
[[nodiscard]] std::optional<NoPercent> whyNoPercent(const std::optional<DayMaximum>& maximum);

/// A place of the path with what the pull there is of the maximum.
struct PercentAt {
    TargetPlace place = TargetPlace::Mean;
    PercentReached reached;
};

/// What the pull of a set-up is of a maximum with plain iron, at each place where it is known, as mass by mass: a plain bar pulls its mass
/// at every height. Bottom, zone, top, mean. u as percentReached says, which takes the two for independent. Empty where `whyNoPercent` has
/// a reason, or nothing was worked out.
[[nodiscard]] std::vector<PercentAt> percentsOf(const WeighedUp& weighed, const std::optional<DayMaximum>& maximum);

}
