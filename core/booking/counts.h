// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/implements/carry.h"
#include "core/implements/limbs.h"

#include <span>

namespace steelyard {

/// A set of what is counted and not weighed: ground contacts of jumps, or throws.
struct CountedSet {
    int count = 0;
    Limbs limbs = Limbs::Both; ///< the legs that landed, or the arms that threw
};

/// Counts by side; a contact on both feet is one contact.
struct Counts {
    int countBoth = 0, countLeft = 0, countRight = 0;
    [[nodiscard]] int countOfAll() const { return countBoth + countLeft + countRight; }
};

/// Adds up counted sets. Refuses a count below 0 or above 100,000.
[[nodiscard]] Result<Counts> countsOf(std::span<const CountedSet> sets);

/// kg·m of carries by hand, on no hand in particular, and together. Not a mass: it is never added to a tonnage.
struct Carried {
    Estimate<MassDistance> left, right, whole, all;
    int drops = 0;
};

/// Adds up carries; loads and lanes that share a measurement add straight. Of no carries it is 0.
[[nodiscard]] Carried carriedIn(std::span<const CarryDone> carries);

}
