// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/season/kit.h"
#include "core/work/implements/implementmass.h"

namespace steelyard {

/// What the check says of the scale.
struct ScaleCheck {
    Mass zero;      ///< shown with nothing on it
    Mass worst;     ///< greatest error against a known mass, with its sign, the zero taken off
    Mass worstAt;   ///< under which mass
    /// Half-width to reckon with: the greatest error, or half a step where that is more. It goes into `√(d²/12 + a²/3)`.
    Mass accuracy;
    Mass knownUpTo; ///< heaviest mass it was checked with
    bool good = false; ///< within a step, or half a per cent of the load where that is more (our choice)
};

/// Refuses a missing step, zero or number of a reading, steps and masses that are not above 0, no reading at all, and readings that are not finite.
[[nodiscard]] Result<ScaleCheck> checked(const ScaleMeasurement& scale);

/// What both ends of a bar come to; NotMeasured where it was not weighed by them.
[[nodiscard]] ImplementMass massByEnds(const IronMeasurement& iron);

/// What weighing says of the mark.
struct IronCheck {
    Mass each, u;       ///< mass of one, standard uncertainty
    Mass offMark;       ///< weighed minus marked
    double offShare = 0;
    bool clear = false; ///< further off than the scale can be wrong (95 %)
};

/// The mass of one of `count`, `u = √(d²/12 + a²/3)/count` for all read at once; of a bar by both ends as `massByEnds`, its hooks
/// read by tape, and without a mark nothing is off it. Refuses what is missing or not above 0, and plates by their ends.
[[nodiscard]] Result<IronCheck> checked(const IronMeasurement& iron);

}
