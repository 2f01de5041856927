// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/evidence.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

struct Said {
    std::size_t index;
    OneRepMax max;
};

bool betterThan(const OneRepMax& a, const OneRepMax& b)
{
    if (a.isTested != b.isTested)
        return a.isTested;
    if (a.lowest.value != b.lowest.value)
        return a.lowest.value > b.lowest.value;
    return a.middle.u < b.middle.u;
}

WhyBest whyBest(std::span<const Said> all, bool isTested)
{
    const auto alike = std::count_if(all.begin(), all.end(), [&](const Said& s) { return s.max.isTested == isTested; });
    if (all.size() == 1)
        return WhyBest::OnlyOne;
    if (isTested)
        return alike == 1 ? WhyBest::Tested : WhyBest::HeaviestTested;
    return WhyBest::HighestLowest;
}

}

Result<OneRepMax> oneRepMaxFrom(const StrengthEvidence& evidence)
{
    return std::visit([](const auto& one) { return oneRepMaxFrom(one); }, evidence);
}

DayEvidence bestOfDay(std::span<const StrengthEvidence> evidence)
{
    DayEvidence day;
    std::vector<Said> all;
    for (std::size_t i = 0; i < evidence.size(); ++i) {
        const auto max = oneRepMaxFrom(evidence[i]);
        if (max)
            all.push_back({i, *max});
        else
            day.refused.push_back({i, max.error()});
    }
    if (all.empty())
        return day;
    const auto best = std::min_element(all.begin(), all.end(), [](const Said& a, const Said& b) { return betterThan(a.max, b.max); });
    const bool isTested = best->max.isTested;
    const bool setsShowMore = isTested && std::any_of(all.begin(), all.end(), [&](const Said& s) {
        return !s.max.isTested && s.max.lowest.value > best->max.highest.value;
    });
    day.best = DayMax{best->max, best->index, whyBest(all, isTested), setsShowMore};
    return day;
}

MaxDifference testedAgainst(const OneRepMax& tested, const OneRepMax& estimated)
{
    const Uncertain<Mass> difference{tested.middle.value - estimated.middle.value, inSquares(tested.middle.u, estimated.middle.u)};
    return {difference, std::abs(difference.value.si()) > difference.giveOrTake().si()};
}

}
