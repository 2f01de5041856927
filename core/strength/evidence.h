// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/strength/onerepmax.h"

#include <cstddef>
#include <optional>
#include <span>
#include <variant>
#include <vector>

namespace steelyard {

/// Something that says how strong she was in one lift.
using StrengthEvidence = std::variant<RepsSet, TestedMax>;

/// What it says, or why it says nothing: see the same of a set and of a test.
[[nodiscard]] Result<OneRepMax> oneRepMaxFrom(const StrengthEvidence& evidence);

/// A piece of evidence that says nothing, and why.
struct RefusedEvidence {
    std::size_t index = 0;
    Error why;
};

/// Why a piece of evidence was taken before the others of its day.
enum class WhyBest : std::uint8_t {
    OnlyOne,
    Tested,          ///< the only test among sets
    HeaviestTested,  ///< of several tests the heaviest
    HighestLowest,   ///< of several sets the one that shows most even at its lowest
};

/// The maximum of a day, from all evidence of one lift.
struct DayMax {
    OneRepMax max;
    std::size_t index = 0;      ///< of the evidence that it comes from
    WhyBest why = WhyBest::OnlyOne;
    bool setsShowMore = false;  ///< a set's lowest lies above the test's highest: what was tested was no maximum
};

/// All that one day's evidence comes to.
struct DayEvidence {
    std::optional<DayMax> best; ///< nothing where all is refused
    std::vector<RefusedEvidence> refused;
};

/// The day's best evidence of one lift. A test is taken before any set, since a set needs a formula; of several tests the heaviest, which
/// was lifted. Of several sets it is the one whose lowest estimate is highest: tiredness makes a set show less than there is and never
/// more, so each is a floor under the day's maximum, and the highest floor says most (our choice); on a tie the narrower range.
[[nodiscard]] DayEvidence bestOfDay(std::span<const StrengthEvidence> evidence);

/// A test held against an estimate.
struct MaxDifference {
    Uncertain<Mass> difference; ///< tested − estimated, each in its middle
    bool isBeyondNoise = false; ///< |difference| above 1.959964·u
};

/// How far a tested maximum lies from an estimated one. Their u are added in squares; where both loads are plates of one unweighed set
/// they share an error, and the u is too large rather than too small.
[[nodiscard]] MaxDifference testedAgainst(const OneRepMax& tested, const OneRepMax& estimated);

}
