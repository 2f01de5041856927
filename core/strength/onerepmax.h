// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/measure/uncertain.h"

#include <array>
#include <cstdint>

namespace steelyard {

/// The published ways from a load that was lifted so many times to the load that can be lifted once; w the load, r the repetitions.
enum class OneRmFormula : std::uint8_t {
    Epley,    ///< w(1 + r/30) (1985)
    Brzycki,  ///< 36w/(37 − r) (1993)
    Lombardi, ///< w·r^0.10 (1989)
    Mayhew,   ///< 100w/(52.2 + 41.9·e^(−0.055r)) (1992)
    OConner,  ///< w(1 + 0.025r) (1989)
    Wathan,   ///< 100w/(48.8 + 53.8·e^(−0.075r)) (1994)
    Lander,   ///< 100w/(101.3 − 2.67123r) (1985)
};

/// All seven, in the order of their names above.
inline constexpr std::array allOneRmFormulas{OneRmFormula::Epley, OneRmFormula::Brzycki, OneRmFormula::Lombardi, OneRmFormula::Mayhew,
                                             OneRmFormula::OConner, OneRmFormula::Wathan, OneRmFormula::Lander};

/// Past so many repetitions a formula says nothing: Mayhew's was made on up to 15, the others part company above 10 (common practice).
[[nodiscard]] constexpr int mostReps(OneRmFormula formula) { return formula == OneRmFormula::Mayhew ? 15 : 10; }

/// One-repetition maximum by one formula, from repetitions to failure; one repetition returns the load, whatever the formula makes of it.
/// Formulas as quoted on secondary pages. They differ by 0 to 7 % among each other, and none knows the athlete: of trained lifters some
/// made 6 and some 26 repetitions at 70 % of the maximum (cited in Zourdos et al. 2021). Refuses a load not above 0, fewer repetitions
/// than 1, and more than the formula reaches.
[[nodiscard]] Result<Mass> oneRepMaxBy(OneRmFormula formula, Mass load, int reps);

/// A set that was lifted, as evidence of a maximum. Where the body is the load, the load is that of the system.
struct RepsSet {
    Uncertain<Mass> load;
    int reps = 0;             ///< that were made
    double repsInReserve = 0; ///< how many more she could have made, as told; 0 to failure
    int missedReps = 0;       ///< that were tried and not made alone
};

/// A maximum that was worked up to: the heaviest load lifted, and the smallest jump between loads that was tried on the way.
struct TestedMax {
    Uncertain<Mass> load;
    Mass smallestJump;
};

/// A maximum as a range. It is never a single number: caps take the lowest, percentages the middle.
struct OneRepMax {
    Uncertain<Mass> lowest;  ///< u: of the load alone
    Uncertain<Mass> middle;  ///< u: of the range and of the load
    Uncertain<Mass> highest; ///< u: of the load alone
    bool isTested = false;

    /// The lowest estimate at its unfavourable end, for limits that must not be passed: lowest − 1.959964·u.
    [[nodiscard]] Mass forCaps() const { return lowest.value - lowest.giveOrTake(); }
};

/// What a set says: lowest of the seven formulas at one repetition in reserve less than told (never fewer than were made), highest at
/// one more, the middle one of the seven as told. Its u is the range's as of an even distribution between its ends, (highest −
/// lowest)/√12, which JCGM 100:2008, 4.3.8, gives also for ends that lie unevenly about the value (that the formulas mark the ends is our
/// choice), and the load's in squares. How athletes differ from the formulas is not in it. The upper end may stand one repetition past
/// what the formulas reach: that makes it wider, never narrower. Refuses a load not above 0, fewer repetitions than 1, missed ones among
/// them, more than 10 with those in reserve (past that one formula is left, and one is no range), and a reserve below 0 or above 5:
/// there it is told 1 repetition off, at 7 to 10 more than 2 (Hackett et al. 2017, J Strength Cond Res 31:2162–2168).
[[nodiscard]] Result<OneRepMax> oneRepMaxFrom(const RepsSet& set);

/// What a test says: the load is the lowest and the middle; the next jump was not made, so that the highest is a jump above. u is the
/// smallest jump tried, and the load's in squares (our choice). Refuses a load and a jump not above 0, and a jump above the load.
[[nodiscard]] Result<OneRepMax> oneRepMaxFrom(const TestedMax& test);

}
