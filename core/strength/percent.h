// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/measure/uncertain.h"

#include <cstdint>

namespace steelyard {

/// What a percentage is of. It is never left unsaid: 40 % more than the concentric load is not 40 % of the maximum more.
enum class PercentBase : std::uint8_t {
    OneRepMax,      ///< of the one-repetition maximum of the lift
    SystemMax,      ///< of the maximum with the body in it: chins, dips, inverted rows
    ConcentricLoad, ///< of what is lifted on the way up
};

/// A percentage as it was reached, with its standard uncertainty in percent.
struct PercentReached {
    double percent = 0;
    double uPercent = 0;
};

/// So many percent of a base, `p/100·base`; its u is that share of the base's. Refuses a base not above 0, and percentages that are not
/// above 0 or above 300.
[[nodiscard]] Result<Uncertain<Mass>> percentOf(double percent, const Uncertain<Mass>& base);

/// What a load is of a base, `100·load/base`; u by relative squares, as if the two shared no error. Where both are plates of one unweighed
/// set it is too large rather than too small. Refuses a base not above 0, and a load that is not finite or below 0.
[[nodiscard]] Result<PercentReached> percentReached(const Uncertain<Mass>& load, const Uncertain<Mass>& base);

}
