// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/pullparts.h"
#include "core/work/weighup.h"

#include <cstdint>
#include <vector>

namespace steelyard {

/// Which of her marks a height is.
enum class HeightMark : std::uint8_t { None, Bottom, ZoneFrom, ZoneTo, Top };

/// What all things of one kind pull at a height, both sides together.
struct PullOfKind {
    PullKind kind = PullKind::Chain;
    Force pull, u;
    bool operator==(const PullOfKind&) const = default;
};

/// One height of the path: the pull there and what it is made of.
struct HeightLine {
    Height height;
    HeightMark mark = HeightMark::None;
    bool known = true;             ///< the rest is nothing where it is not
    Reading total;
    Force iron, uIron;
    std::vector<PullOfKind> hung;  ///< kinds that hang, in the order of their numbers; u of each alone
};

/// The picture as a table: her marks, and every whole multiple of `step` between them, from the top down. Nothing where there is no
/// curve, or the step is nothing.
[[nodiscard]] std::vector<HeightLine> heightTable(const WeighedUp& answer, Length step);

}
