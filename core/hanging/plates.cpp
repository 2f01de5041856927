// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/plates.h"

#include <algorithm>
#include <boost/container/small_vector.hpp>
#include <cmath>
#include <map>

namespace steelyard {

namespace {

constexpr std::size_t mostLoads = 100'000;
/// Plates of all loads together: keeps a stock of thousands of small plates from filling the memory.
constexpr std::size_t mostPlates = 2'000'000;

/// Two sums within a milligram are the same load; the smallest plates made differ by tens of grams.
long long milligrams(Mass m) { return std::llround(m.si() * 1e6); }
constexpr double halfMilligram = 5e-7;

struct Way {
    Mass mass;
    Length thickness, tall;
    std::vector<PlateType> plates;

    [[nodiscard]] bool betterThan(const Way& other) const
    {
        if (plates.size() != other.plates.size())
            return plates.size() < other.plates.size();
        return tall > other.tall;
    }
};

/// The ways to make one sum that are worth going on from: the best, and on a short sleeve also those that are thinner.
using Ways = boost::container::small_vector<Way, 1>;

/// Whether the way was new to the sum.
bool offer(Ways& ways, const Way& way, bool thicknessCounts)
{
    const auto beats = [&](const Way& a, const Way& b) { return !b.betterThan(a) && (!thicknessCounts || a.thickness <= b.thickness); };
    if (std::any_of(ways.begin(), ways.end(), [&](const Way& known) { return beats(known, way); }))
        return false;
    ways.erase(std::remove_if(ways.begin(), ways.end(), [&](const Way& known) { return beats(way, known); }), ways.end());
    ways.push_back(way);
    return true;
}

}

Mass PlateLoad::plates() const
{
    Mass sum;
    for (const PlateType& p : eachSide)
        sum += 2 * p.mass;
    return sum;
}

Length PlateLoad::thickness() const
{
    Length sum;
    for (const PlateType& p : eachSide)
        sum += p.thickness;
    return sum;
}

Length PlateLoad::largestDiameter() const
{
    Length largest;
    for (const PlateType& p : eachSide)
        largest = std::max(largest, p.diameter);
    return largest;
}

bool isSameTotal(const PlateLoad& a, const PlateLoad& b)
{
    return std::abs((a.total - b.total).si()) < 1e-6;
}

Result<PlateLoads> PlateLoads::of(std::span<const PlateStock> stock, Mass base, std::optional<Length> sleeve)
{
    if (!std::isfinite(base.si()) || base.si() < 0)
        return Error{Refusal::OutOfRange, "bar"};
    std::vector<PlateStock> sorted(stock.begin(), stock.end());
    for (const PlateStock& s : sorted) {
        if (!std::isfinite(s.type.mass.si()) || s.type.mass.si() <= 0)
            return Error{Refusal::OutOfRange, "plate"};
        if (s.count < 0)
            return Error{Refusal::OutOfRange, "count of plates"};
    }
    std::stable_sort(sorted.begin(), sorted.end(), [](const PlateStock& a, const PlateStock& b) {
        return a.type.mass != b.type.mass ? a.type.mass > b.type.mass : a.type.diameter > b.type.diameter;
    });

    std::map<long long, Ways> sums;
    sums[0].emplace_back();
    std::size_t plates = 0;
    for (const PlateStock& s : sorted) {
        auto next = sums;
        for (const auto& [key, ways] : sums) {
            for (Way more : ways) {
                for (int pair = 0; pair < s.count / 2; ++pair) {
                    more.mass += s.type.mass;
                    more.thickness += s.type.thickness;
                    more.tall += s.type.diameter;
                    if (sleeve && more.thickness > *sleeve)
                        break;
                    more.plates.push_back(s.type);
                    if (offer(next[milligrams(more.mass)], more, sleeve.has_value()))
                        plates += more.plates.size();
                    if (next.size() > mostLoads || plates > mostPlates)
                        return Error{Refusal::TooMany, "plates"};
                }
            }
        }
        sums = std::move(next);
    }

    PlateLoads loads;
    for (auto& [key, ways] : sums) {
        Way& best = *std::min_element(ways.begin(), ways.end(), [](const Way& a, const Way& b) { return a.betterThan(b); });
        loads.m_loads.push_back({base + 2 * best.mass, std::move(best.plates)});
    }
    return loads;
}

const PlateLoad& PlateLoads::nearest(Mass target) const
{
    const PlateLoad* below = atOrBelow(target);
    const PlateLoad* above = atOrAbove(target);
    if (!below)
        return *above;
    if (!above)
        return *below;
    return (above->total - target).si() < (target - below->total).si() - halfMilligram ? *above : *below;
}

const PlateLoad* PlateLoads::atOrBelow(Mass target) const
{
    const auto after = std::upper_bound(m_loads.begin(), m_loads.end(), target + kilograms(halfMilligram),
                                        [](Mass t, const PlateLoad& l) { return t < l.total; });
    return after == m_loads.begin() ? nullptr : &*std::prev(after);
}

const PlateLoad* PlateLoads::atOrAbove(Mass target) const
{
    const auto at = std::lower_bound(m_loads.begin(), m_loads.end(), target - kilograms(halfMilligram),
                                     [](const PlateLoad& l, Mass t) { return l.total < t; });
    return at == m_loads.end() ? nullptr : &*at;
}

const PlateLoad* PlateLoads::nextBelow(Mass load) const { return atOrBelow(load - kilograms(2 * halfMilligram)); }
const PlateLoad* PlateLoads::nextAbove(Mass load) const { return atOrAbove(load + kilograms(2 * halfMilligram)); }

PlateChange changeBetween(const PlateLoad& from, const PlateLoad& to)
{
    PlateChange change;
    std::vector<PlateType> left = to.eachSide;
    for (const PlateType& p : from.eachSide) {
        const auto same = std::find(left.begin(), left.end(), p);
        if (same == left.end())
            change.takeOff.push_back(p);
        else
            left.erase(same);
    }
    change.putOn = std::move(left);
    return change;
}

}
