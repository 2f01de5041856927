// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/athlete.h"

#include <chrono>
#include <optional>

namespace steelyard {

/// Limits that hold where the coach has none of their own. All are ours, chosen on the careful side; local rules, a maker's word and a
/// federation's go before them.
namespace ours {

/// Share of the lowest estimate of the deadlift that a tyre may weigh, its give-or-take included. Common practice, no source.
inline constexpr int tyrePercent = 70;
/// Share of the lowest estimate of the maximum that may be on the way down: the greatest of the published loads that we know of
/// (Merrigan & Jones 2021, 120 % down and 65 or 80 % up).
inline constexpr int eccentricPercent = 120;
/// A maximum that is older says little. Common practice, no source.
inline constexpr std::chrono::days maximumAge{90};
/// A band measured longer ago is uncertain by half as much again. Common practice, no source.
inline constexpr std::chrono::days bandAge{182};
/// What holds an anchor down, in percent of the greatest upward pull on it.
inline constexpr int holdPercent = 150;
/// From which age on maximal lifts, eccentric overload and tyres need no approval by name.
inline constexpr std::chrono::years ofAge = usuallyOfAge;

}

/// The coach's own limits, for the whole vault; what is absent is as `ours`.
struct CoachLimits {
    std::optional<int> tyrePercent;               ///< 1 to 100: above the whole deadlift nothing is a limit any more
    std::optional<int> eccentricPercent;          ///< 100 to 130 (our choice)
    std::optional<std::chrono::days> maximumAge;  ///< 1 to 365
    std::optional<std::chrono::days> bandAge;     ///< 1 to 730
    std::optional<int> holdPercent;               ///< 100 to 1000: below 100 the anchor lifts
    std::optional<std::chrono::years> ofAge;      ///< 16 to 25
    bool operator==(const CoachLimits&) const = default;

    [[nodiscard]] constexpr int tyreCapPercent() const { return tyrePercent.value_or(ours::tyrePercent); }
    [[nodiscard]] constexpr int eccentricCapPercent() const { return eccentricPercent.value_or(ours::eccentricPercent); }
    [[nodiscard]] constexpr std::chrono::days maximumGoodFor() const { return maximumAge.value_or(ours::maximumAge); }
    [[nodiscard]] constexpr std::chrono::days bandGoodFor() const { return bandAge.value_or(ours::bandAge); }
    [[nodiscard]] constexpr double holdFactor() const { return holdPercent.value_or(ours::holdPercent) / 100.0; }
    [[nodiscard]] constexpr std::chrono::years adultFrom() const { return ofAge.value_or(ours::ofAge); }
};

/// Whether a limit lies where one can lie; an absent one does.
[[nodiscard]] constexpr bool isLimitBetween(const std::optional<int>& percent, int leastPercent, int mostPercent)
{
    return !percent || (*percent >= leastPercent && *percent <= mostPercent);
}
/// The same of a limit that is a time.
template <typename Duration>
[[nodiscard]] constexpr bool isLimitBetween(const std::optional<Duration>& limit, Duration least, Duration most)
{
    return !limit || (*limit >= least && *limit <= most);
}

/// Whether each limit lies within what stands beside it above.
[[nodiscard]] constexpr bool canBeLimits(const CoachLimits& limits)
{
    using std::chrono::days, std::chrono::years;
    return isLimitBetween(limits.tyrePercent, 1, 100) && isLimitBetween(limits.eccentricPercent, 100, 130)
        && isLimitBetween(limits.maximumAge, days(1), days(365)) && isLimitBetween(limits.bandAge, days(1), days(730))
        && isLimitBetween(limits.holdPercent, 100, 1000) && isLimitBetween(limits.ofAge, years(16), years(25));
}

}
