// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/whattohang.h"
#include "core/measure/entered.h"
#include "core/season/marks.h"

#include <map>
#include <optional>
#include <vector>

namespace steelyard {

/// What the pull should be, for whom the desk is laid out. What was said in kg and what was said in per cent stand beside each other; one
/// of the two counts.
struct WantedPulls {
    std::map<TargetPlace, Entered<Mass>> masses;
    std::map<TargetPlace, double> percents;    ///< of the one-repetition maximum, at that place
    std::optional<Entered<Mass>> oneRepMax;    ///< as somebody typed it, for now: nothing here has tested it
    bool inPercent = false;
    bool isLevel = false;                      ///< the same share of her own strength at every height

    /// Whether something is said of a place, in what counts.
    [[nodiscard]] bool wants(TargetPlace place) const { return inPercent ? percents.contains(place) : masses.contains(place); }
    /// As a mass; nothing where nothing is wanted there, or in per cent of a maximum that nobody typed.
    [[nodiscard]] std::optional<Mass> at(TargetPlace place) const;
    bool operator==(const WantedPulls&) const = default;
};

/// How far off an answer may be: 2 % of what is wanted, a kilogram at least (our choice).
[[nodiscard]] Force toleranceOf(Force wanted);

/// As targets, in the order of their places; what is wanted in a sticking zone that these marks do not have is left out.
[[nodiscard]] std::vector<HangTarget> targetsOf(const WantedPulls& wanted, const BarMarks& marks);

}
