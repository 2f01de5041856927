// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/plates.h"
#include "core/measure/uncertain.h"
#include "core/strength/percent.h"

#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// What the way down should weigh: so much, or so many times what is lifted on the way up.
struct EccentricTarget {
    Mass concentric;                       ///< bar, collars and plates
    std::optional<Mass> eccentric;         ///< with both hooks
    std::optional<double> eccentricRatio;  ///< over the concentric load as it comes to hang; one of the two is given
};

/// A target from percentages: of the maximum both, or the eccentric one of the concentric load: 140 for 40 % more than the way up.
/// Refuses a maximum not above 0, percentages not above 0 or above 300, a base that is neither, and a way down that is not heavier.
[[nodiscard]] Result<EccentricTarget> eccentricTarget(Mass oneRepMax, double concentricPercent, double eccentricPercent, PercentBase eccentricBase);

/// The same from loads. Refuses loads not above 0, and a way down that is not heavier than the way up.
[[nodiscard]] Result<EccentricTarget> eccentricTarget(Mass concentric, Mass eccentric);

/// What each of two hooks would weigh with its frame, could anything be hung: `(1RM/200)(ecc% − con%)` and the like.
[[nodiscard]] Mass idealHook(const EccentricTarget& target);

/// What there is to hang, on a bar and on two hooks.
struct EccentricKit {
    std::vector<PlateStock> stock;      ///< for bar and hooks together
    Uncertain<Mass> base;               ///< bar and collars
    Uncertain<Mass> frame;              ///< of one hook; the other is its like, weighed with it
    double platesUShare = 0;            ///< standard uncertainty of the plates as a share of their mass: one set, all off one way
    std::optional<Length> sleeve;       ///< room for plates on one sleeve
    std::optional<Length> hookRoom;     ///< room for plates on one hook
    std::optional<Mass> hookRating;     ///< what one hook may carry, its frame apart
    std::optional<Mass> eccentricCap;   ///< what she may lower, from the lowest estimate
};

/// One way to load bar and hooks: the same plates on both sides, and the same on both hooks, heaviest first.
struct EccentricLoad {
    PlateLoad bar;                      ///< `bar.total` is the concentric load
    std::vector<PlateType> onEachHook;
    Uncertain<Mass> concentric, eachHook, eccentric; ///< each hook with its frame; plates share their error
    Mass concentricMiss, eccentricMiss; ///< what hangs − what was wanted
    int plateCount = 0;                 ///< of both sides and both hooks
};

/// The best way, and with the same load on the bar the next lighter and heavier hooks that can be made.
struct EccentricAnswer {
    EccentricLoad best;
    std::optional<EccentricLoad> lighter, heavier;
};

/// Bar first, then hooks, from one stock of plates in pairs: least concentric miss, then least eccentric miss with what is left (of all
/// ways to load the bar so, and with the hooks weighed anew against what the bar came to), then fewest plates; where all that is alike the
/// lighter bar, then the lighter hooks, then the taller plates on the bar. Exact: sums are whole tenths of a microgram. No answer passes
/// sleeve, hook room, hook rating or cap, the latter two at the unfavourable end (value + 1.959964·u). Splits the plates into two halves
/// and joins their sums, so that plates of no two alike masses take no longer. Refuses what PlateLoads refuses of plates and bar, a frame
/// below 0, uncertainties below 0, a target as eccentricTarget does, hooks that are over a limit without a plate beside the nearest bar (a
/// lighter bar is the coach's to choose), and too many sums to work through.
[[nodiscard]] Result<EccentricAnswer> eccentricLoad(const EccentricKit& kit, const EccentricTarget& target);

}
