// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/implements/carry.h"
#include "core/implements/kettlebell.h"
#include "core/implements/tyre.h"
#include "core/season/athlete.h"
#include "core/season/kit.h"
#include "core/work/gates/mayuse.h"

namespace steelyard {

/// What a flip takes of one athlete.
struct FlipFigures {
    TyreFlip flip;
    FlipPoint start;                    ///< flat on the ground, where it takes most
    std::optional<double> startPercent; ///< that force at its unfavourable end, of the lowest estimate of her deadlift
    std::optional<double> massPercent;  ///< the tyre's mass likewise, which the coach's limit goes by
};
/// Diameter and width read by tape. Refuses a tyre whose mass nobody knows or whose size was not read (NotThere), and as `TyreFlip::of`.
[[nodiscard]] Result<FlipFigures> flipFigures(const TyreMeasurement& tyre, const std::optional<KnownMaximum>& deadlift);

/// Whether a keg may be lifted: its pressure has been let off by whoever may. A bag holds none.
[[nodiscard]] constexpr bool mayBeLifted(const KegMeasurement& keg) { return keg.sort == KegSort::Sandbag || mayBeLifted(keg.pressure); }

/// How something is carried.
[[nodiscard]] CarryKind carryKindOf(CarrySort sort);

/// What is carried with it: its own mass, and plates by their mark on each handle or on the whole. One handle goes into the hand that is
/// named. Refuses what nobody has weighed (NotThere), and plates below 0.
[[nodiscard]] Result<CarryLoad> carryLoad(const CarryMeasurement& carry, Mass added, Limbs hand = Limbs::Both);

/// What a carry came to, of one athlete.
struct CarryFigures {
    CarryDone done;
    std::optional<Estimate<double>> bodyPercent;     ///< what was carried at once, of her body mass
    std::optional<Estimate<double>> deadliftPercent; ///< of the lowest estimate of her deadlift
};
/// Body mass as of the day, up to `uOfBodyMass` off; absent where nobody has weighed her. Refuses as `carryDone` does.
[[nodiscard]] Result<CarryFigures> carryFigures(const Carry& carry, const Athlete& athlete, std::chrono::sys_days day, const std::optional<KnownMaximum>& deadlift);

/// How a lift holds a bell: a swing with both hands, all others with one.
[[nodiscard]] BellGrip gripOf(const LiftId& lift);
/// Whether it sits in the hand as it was tried.
[[nodiscard]] constexpr HandFit fitOf(const BellMeasurement& bell, BellGrip grip) { return grip == BellGrip::OneHand ? bell.oneHand : bell.twoHands; }

}
