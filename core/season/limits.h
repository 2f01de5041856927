// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/athlete.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdint>
#include <optional>
#include <type_traits>

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

/// Which of the limits.
enum class LimitKind : std::uint8_t { TyrePercent, EccentricPercent, MaximumAge, BandAge, HoldPercent, OfAge };
inline constexpr std::array allLimits{LimitKind::TyrePercent, LimitKind::EccentricPercent, LimitKind::MaximumAge, LimitKind::BandAge, LimitKind::HoldPercent, LimitKind::OfAge};

/// What one limit is, as a whole number of percent, days or years: the least and the most that it can be, and the step it is set by.
struct LimitRange {
    int leastCount = 0, mostCount = 0, stepCount = 1;
};
/// Of a limit; ours where no source is named beside it.
[[nodiscard]] constexpr LimitRange rangeOf(LimitKind kind)
{
    switch (kind) {
    case LimitKind::TyrePercent: return {1, 100, 5};
    case LimitKind::EccentricPercent: return {100, 130, 5};
    case LimitKind::MaximumAge: return {1, 365, 5};
    case LimitKind::BandAge: return {1, 730, 7};
    case LimitKind::HoldPercent: return {100, 1000, 10};
    case LimitKind::OfAge: break;
    }
    return {16, 25, 1};
}

/// The coach's own, as that number; none where it is as ours.
[[nodiscard]] constexpr std::optional<int> ownLimitCount(const CoachLimits& limits, LimitKind kind)
{
    const auto counted = [](const auto& limit) { return limit ? std::optional(static_cast<int>(limit->count())) : std::nullopt; };
    switch (kind) {
    case LimitKind::TyrePercent: return limits.tyrePercent;
    case LimitKind::EccentricPercent: return limits.eccentricPercent;
    case LimitKind::MaximumAge: return counted(limits.maximumAge);
    case LimitKind::BandAge: return counted(limits.bandAge);
    case LimitKind::HoldPercent: return limits.holdPercent;
    case LimitKind::OfAge: break;
    }
    return counted(limits.ofAge);
}

/// As it was shipped.
[[nodiscard]] constexpr int ourLimitCount(LimitKind kind)
{
    switch (kind) {
    case LimitKind::TyrePercent: return ours::tyrePercent;
    case LimitKind::EccentricPercent: return ours::eccentricPercent;
    case LimitKind::MaximumAge: return static_cast<int>(ours::maximumAge.count());
    case LimitKind::BandAge: return static_cast<int>(ours::bandAge.count());
    case LimitKind::HoldPercent: return ours::holdPercent;
    case LimitKind::OfAge: break;
    }
    return static_cast<int>(ours::ofAge.count());
}

/// The limits with one of them set to that number, or to ours.
[[nodiscard]] constexpr CoachLimits withLimit(CoachLimits limits, LimitKind kind, std::optional<int> count)
{
    const auto set = [&count](auto& limit) {
        using Duration = typename std::remove_reference_t<decltype(limit)>::value_type;
        limit = count ? std::optional(Duration(*count)) : std::nullopt;
    };
    switch (kind) {
    case LimitKind::TyrePercent: limits.tyrePercent = count; break;
    case LimitKind::EccentricPercent: limits.eccentricPercent = count; break;
    case LimitKind::MaximumAge: set(limits.maximumAge); break;
    case LimitKind::BandAge: set(limits.bandAge); break;
    case LimitKind::HoldPercent: limits.holdPercent = count; break;
    case LimitKind::OfAge: set(limits.ofAge); break;
    }
    return limits;
}

/// The next whole step up or down from where a limit is, no further than it can be; the same where it is at its end.
[[nodiscard]] constexpr int steppedLimitCount(const CoachLimits& limits, LimitKind kind, bool up)
{
    const LimitRange range = rangeOf(kind);
    const int now = ownLimitCount(limits, kind).value_or(ourLimitCount(kind)), steps = now / range.stepCount;
    const int next = up ? steps + 1 : now % range.stepCount == 0 ? steps - 1 : steps;
    return std::clamp(next * range.stepCount, range.leastCount, range.mostCount);
}

/// Whether each limit lies within what stands beside it above.
[[nodiscard]] constexpr bool canBeLimits(const CoachLimits& limits)
{
    return std::all_of(allLimits.begin(), allLimits.end(), [&limits](LimitKind kind) {
        const auto own = ownLimitCount(limits, kind);
        return !own || (*own >= rangeOf(kind).leastCount && *own <= rangeOf(kind).mostCount);
    });
}

}
