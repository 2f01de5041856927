// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/trend.h"

#include <cmath>
#include <string>

namespace steelyard {

namespace {

/// 95 % and 80 % of a normal distribution, two-sided.
constexpr double clearFactor = 1.96, probableFactor = 1.28;
constexpr int mostDays = 10'000;

bool isDays(int count) { return count >= 1 && count <= mostDays; }

std::vector<Stretch> stretchesOf(std::span<const Visit> visits)
{
    std::vector<Stretch> stretches;
    for (std::size_t i = 1; i < visits.size(); ++i) {
        if (stretches.empty() || visits[i].methodNumber != visits[i - 1].methodNumber)
            stretches.push_back({i, 0});
        ++stretches.back().visitsCount;
    }
    return stretches;
}

}

Result<std::optional<TrendWord>> trendWord(double differenceScore, double typicalErrorScore, int earlierDaysCount, int laterDaysCount)
{
    if (!std::isfinite(differenceScore))
        return Error{Refusal::NotFinite, "difference"};
    if (!std::isfinite(typicalErrorScore) || typicalErrorScore < 0)
        return Error{Refusal::OutOfRange, "typical error"};
    if (!isDays(earlierDaysCount) || !isDays(laterDaysCount))
        return Error{Refusal::OutOfRange, "days"};
    const double noise = typicalErrorScore * std::sqrt(1.0 / earlierDaysCount + 1.0 / laterDaysCount), size = std::abs(differenceScore);
    if (!(noise > 0))
        return std::optional<TrendWord>{};
    return std::optional(size >= clearFactor * noise ? TrendWord::ClearlyChanged : size >= probableFactor * noise ? TrendWord::ProbablyChanged : TrendWord::NoClearChange);
}

Result<Trend> trendOf(std::span<const Visit> visits, std::optional<double> typicalErrorScore)
{
    for (std::size_t i = 0; i < visits.size(); ++i)
        if (!std::isfinite(visits[i].score))
            return Error{Refusal::NotFinite, "visit " + std::to_string(i + 1)};
    Trend trend;
    if (visits.empty())
        return trend;
    trend.leftOutIndex = 0;
    trend.stretches = stretchesOf(visits);
    if (trend.stretches.empty() || trend.stretches.back().visitsCount < 2)
        return trend;
    const Stretch& last = trend.stretches.back();
    const std::size_t before = last.visitsCount - 1;
    double sum = 0;
    for (std::size_t i = 0; i < before; ++i)
        sum += visits[last.firstIndex + i].score;
    trend.differenceScore = visits.back().score - sum / static_cast<double>(before);
    if (!typicalErrorScore)
        return trend;
    const auto word = trendWord(trend.differenceScore, *typicalErrorScore, static_cast<int>(before), 1);
    if (!word)
        return word.error();
    trend.word = *word;
    return trend;
}

}
