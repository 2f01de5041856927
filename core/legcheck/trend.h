// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// What is said of a change, and no more.
enum class TrendWord : std::uint8_t { ClearlyChanged, ProbablyChanged, NoClearChange };

/// By `|Δ|/(TE·√(1/n₁ + 1/n₂))`, Δ between the means of n₁ and n₂ days and TE the typical error of one day's score, in its unit: at least
/// 1.96 clearly, at least 1.28 probably. Nothing where the typical error is 0. Refuses numbers that are not finite, a typical error below 0
/// and fewer days than one.
[[nodiscard]] Result<std::optional<TrendWord>> trendWord(double differenceScore, double typicalErrorScore, int earlierDaysCount, int laterDaysCount);

/// One day's score of one athlete in one test.
struct Visit {
    double score = 0;
    std::uint32_t methodNumber = 0; ///< the same while kit, surface and way of measuring are
};

/// Days that may be held against each other: measured in one way, the first visit of all left out.
struct Stretch {
    std::size_t firstIndex = 0, visitsCount = 0; ///< in the visits, oldest first
};

/// An athlete's own history in one test.
struct Trend {
    std::vector<Stretch> stretches;                ///< oldest first; between two the method changed
    std::optional<std::size_t> leftOutIndex{};     ///< the first visit: a test is learned on it, and most do better on the next
    double differenceScore = 0;                    ///< the latest day less the mean of the earlier ones of its stretch
    std::optional<TrendWord> word{};               ///< none while the last stretch has fewer than two days, and without a typical error
};

/// Splits visits where the method changes, leaves the first of all out, and says of the latest day how it is to the mean of those before it
/// in its stretch (n₁ of them, n₂ = 1). Refuses scores that are not finite and what trendWord refuses.
[[nodiscard]] Result<Trend> trendOf(std::span<const Visit> visits, std::optional<double> typicalErrorScore);

}
