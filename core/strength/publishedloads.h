// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/strength/percent.h"

#include <optional>
#include <span>
#include <string_view>

namespace steelyard {

/// Percentages from one to another; the same where there is one.
struct PercentSpan {
    double leastPercent = 0;
    double mostPercent = 0;
    bool operator==(const PercentSpan&) const = default;
};

/// A load that was used in a study: context beside a coach's own, and no advice.
struct PublishedEccentric {
    PercentSpan eccentric;
    PercentBase eccentricBase = PercentBase::OneRepMax; ///< of the concentric load 140 is what is also said as 40 % more
    std::optional<PercentSpan> concentric; ///< % of the one-repetition maximum; none where the study had loads of a number of reps
    std::string_view lift;                 ///< empty where none is named here
    std::string_view scheme;               ///< sets × reps and rest, empty where none is named here
    std::string_view source;
};

/// The earliest first.
[[nodiscard]] std::span<const PublishedEccentric> publishedEccentrics();

}
