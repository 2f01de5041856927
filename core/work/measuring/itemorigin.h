// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/kit.h"

#include <optional>
#include <variant>
#include <vector>

namespace steelyard {

/// What goes into a thing's own number.
enum class ItemInput : std::uint8_t {
    ChainMass, ScaleStep, ScaleError, ChainLength,     ///< a chain on a scale
    Wire, Pitch, InnerWidth, GaugedLength, Method,     ///< a chain by its links; the method's 3 % is for all of it
    BandReadings, FewReadings, BandRest,               ///< a band by known plates; few readings have a floor of 5 % (our choice)
};

/// One of them: how much of the number's u² it makes, or what one step more of the reading would do.
struct ItemInputLine {
    ItemInput input = ItemInput::ChainMass;
    double share = 0;                 ///< of the number's u², 0 to 1; 0 for what is taken as it was read
    std::optional<double> moreByStepRatio; ///< change of the number, as a share of it, for one step more: 1 cm, of a link 0.1 mm
    bool operator==(const ItemInputLine&) const = default;
};

/// Mass by length of a chain.
struct ChainNumber {
    LinearDensity value, giveOrTake;
};
/// Pull of a band at the longest length that it was read at.
struct BandNumber {
    Length at;
    Force pull, giveOrTake;
    std::size_t readingCount = 0;
    BandModel model = BandModel::Line;
};

/// A thing's own number with all that went into it. Give-or-take is for 19 in 20 (JCGM 100:2008).
struct ItemOrigin {
    std::variant<ChainNumber, BandNumber> number;
    std::vector<ItemInputLine> lines;
};

/// Where the number of a chain or band comes from. Chain: `m/L` or `ρ(πd²/4)[2(p−b)+π(b+d)]/p`; band: the curve through its readings.
/// A step more is worked out by reading it so and working the number out again, so it is right for any formula. Nothing where there is
/// no number, or the thing has none of this sort.
[[nodiscard]] std::optional<ItemOrigin> originOf(const Measured& measured);

}
