// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/platesplit.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

namespace steelyard {

namespace {

constexpr double unitsPerKilogram = 1e10, unitsPerMetre = 1e9;
/// More sums of one half are not worked through: no gym has plates for them.
constexpr std::size_t mostSums = 500'000;

PlateUnits lengthUnits(Length length) { return std::llround(length.si() * unitsPerMetre); }

/// How many ways there are to put of so many pairs some on the side and some on the hook, as a logarithm.
double choicesOf(int pairs) { return std::log((pairs + 1.0) * (pairs + 2.0) / 2); }

}

PlateUnits unitsOf(Mass mass) { return std::llround(mass.si() * unitsPerKilogram); }
Mass massOf(PlateUnits units) { return kilograms(static_cast<double>(units) / unitsPerKilogram); }

PlateHalves::PlateHalves(std::span<const PlateStock> stock, const SplitRoom& room)
{
    Half all;
    double choices = 0;
    for (const PlateStock& s : stock)
        if (s.count >= 2) {
            all.push_back({s.type, unitsOf(s.type.mass), lengthUnits(s.type.thickness), lengthUnits(s.type.diameter), s.count / 2});
            choices += choicesOf(all.back().count);
        }
    std::stable_sort(all.begin(), all.end(), [](const Pairs& a, const Pairs& b) { return a.type.mass > b.type.mass; });
    double taken = 0;
    for (const Pairs& pairs : all) {
        // a type goes where more than half of it comes to lie
        taken += choicesOf(pairs.count) / 2;
        m_halves[taken > choices / 2 ? 1 : 0].push_back(pairs);
        taken += choicesOf(pairs.count) / 2;
    }
    if (room.sleeve)
        m_sleeve = lengthUnits(*room.sleeve);
    if (room.hook)
        m_hookRoom = lengthUnits(*room.hook);
}

PlateUnits PlateHalves::heaviest() const
{
    PlateUnits most = 0;
    for (const Half& half : m_halves)
        for (const Pairs& pairs : half)
            most = std::max(most, pairs.mass);
    return most;
}

bool PlateHalves::hasRoom(PlateUnits sideThick, PlateUnits hookThick) const
{
    return (!m_sleeve || sideThick <= *m_sleeve) && (!m_hookRoom || hookThick <= *m_hookRoom);
}

std::optional<std::vector<PlateHalves::Sum>> PlateHalves::sumsOf(const Half& half) const
{
    std::vector<Sum> sums(1);
    for (const Pairs& pairs : half) {
        std::vector<Sum> next;
        for (const Sum& sum : sums)
            for (int n = 0; n <= pairs.count; ++n) {
                const Sum more{sum.mass + n * pairs.mass, sum.thick + n * pairs.thick};
                if (!hasRoom(more.thick, 0))
                    break;
                next.push_back(more);
                if (next.size() > mostSums)
                    return std::nullopt;
            }
        std::sort(next.begin(), next.end(), [](const Sum& a, const Sum& b) { return std::tie(a.mass, a.thick) < std::tie(b.mass, b.thick); });
        next.erase(std::unique(next.begin(), next.end(), [](const Sum& a, const Sum& b) { return a.mass == b.mass; }), next.end());
        sums = std::move(next);
    }
    return sums;
}

Result<std::vector<PlateUnits>> PlateHalves::nearestSides(PlateUnits wantedOnBoth) const
{
    const auto first = sumsOf(m_halves[0]), second = sumsOf(m_halves[1]);
    if (!first || !second)
        return Error{Refusal::TooMany, "plates"};
    PlateUnits least = std::numeric_limits<PlateUnits>::max();
    std::optional<PlateUnits> below, above;
    const auto tryOut = [&](const Sum& a, const Sum& b) {
        if (!hasRoom(a.thick + b.thick, 0))
            return false;
        const PlateUnits side = a.mass + b.mass, miss = std::abs(2 * side - wantedOnBoth);
        if (miss < least) {
            least = miss;
            below = above = std::nullopt;
        }
        (2 * side < wantedOnBoth ? below : above) = side;
        return true;
    };
    for (const Sum& a : *first) {
        const auto start = std::lower_bound(second->begin(), second->end(), wantedOnBoth, [&](const Sum& b, PlateUnits wanted) { return 2 * (a.mass + b.mass) < wanted; });
        for (auto b = start; b != second->end() && 2 * (a.mass + b->mass) - wantedOnBoth <= least; ++b)
            if (tryOut(a, *b))
                break;
        for (auto b = start; b != second->begin() && wantedOnBoth - 2 * (a.mass + std::prev(b)->mass) <= least; --b)
            if (tryOut(a, *std::prev(b)))
                break;
    }
    std::vector<PlateUnits> sides;
    for (const auto& side : {below, above})
        if (side)
            sides.push_back(*side);
    return sides;
}

std::vector<PlateHalves::State> PlateHalves::bestOf(std::vector<State> states) const
{
    std::sort(states.begin(), states.end(), [](const State& a, const State& b) {
        return std::tie(a.side, a.hook, a.count, b.tall, a.sideThick, a.hookThick) < std::tie(b.side, b.hook, b.count, a.tall, b.sideThick, b.hookThick);
    });
    std::vector<State> kept;
    std::size_t same = 0;
    for (const State& state : states) {
        if (kept.empty() || kept.back().side != state.side || kept.back().hook != state.hook)
            same = kept.size();
        // those before have no more plates; one that is also thinner wherever room is short leaves nothing to this one
        bool isBeaten = false;
        for (std::size_t i = same; i < kept.size() && !isBeaten; ++i)
            isBeaten = (!m_sleeve || kept[i].sideThick <= state.sideThick) && (!m_hookRoom || kept[i].hookThick <= state.hookThick);
        if (!isBeaten)
            kept.push_back(state);
    }
    return kept;
}

std::optional<PlateHalves::Levels> PlateHalves::levelsOf(const Half& half, const std::vector<PlateUnits>& sides, PlateUnits most) const
{
    // from which loads of the side the types that are still to come lead to one of those that are asked for
    std::vector<std::vector<PlateUnits>> leads{sides};
    for (std::size_t t = half.size(); t-- > 0;) {
        const Pairs& pairs = half[t];
        std::vector<PlateUnits> before;
        for (const PlateUnits side : leads.back())
            for (int n = 0; n <= pairs.count && side - n * pairs.mass >= 0; ++n)
                before.push_back(side - n * pairs.mass);
        std::sort(before.begin(), before.end());
        before.erase(std::unique(before.begin(), before.end()), before.end());
        if (before.size() > mostSums)
            return std::nullopt;
        leads.push_back(std::move(before));
    }

    Levels levels{{State{}}};
    if (sides.empty())
        return Levels{{}};
    for (std::size_t t = 0; t < half.size(); ++t) {
        const Pairs& pairs = half[t];
        const auto& leading = leads[half.size() - 1 - t];
        std::vector<State> next;
        for (std::uint32_t i = 0; i < levels.back().size(); ++i)
            for (int n = 0; n <= pairs.count; ++n) {
                State state = levels.back()[i];
                state.beforeIndex = i;
                state.sidePairs = static_cast<std::uint16_t>(n);
                state.side += n * pairs.mass;
                state.sideThick += n * pairs.thick;
                state.tall += n * pairs.tall;
                state.count += n;
                if (state.side > leading.back())
                    break;
                if (!std::binary_search(leading.begin(), leading.end(), state.side))
                    continue;
                for (int k = 0; k <= pairs.count - n && state.hook <= most && hasRoom(state.sideThick, state.hookThick); ++k) {
                    state.hookPairs = static_cast<std::uint16_t>(k);
                    next.push_back(state);
                    state.hook += pairs.mass;
                    state.hookThick += pairs.thick;
                    ++state.count;
                }
                if (next.size() > mostSums)
                    return std::nullopt;
            }
        levels.push_back(bestOf(std::move(next)));
    }
    return levels;
}

Result<HooksBeside> PlateHalves::hooksBeside(PlateUnits side, PlateUnits most) const
{
    const auto first = sumsOf(m_halves[0]), second = sumsOf(m_halves[1]);
    if (!first || !second)
        return Error{Refusal::TooMany, "plates"};
    std::vector<PlateUnits> ofFirst, ofSecond;
    auto b = second->rbegin();
    for (const Sum& a : *first) {
        while (b != second->rend() && a.mass + b->mass > side)
            ++b;
        if (b != second->rend() && a.mass + b->mass == side) {
            ofFirst.push_back(a.mass);
            ofSecond.push_back(b->mass);
        }
    }
    std::reverse(ofSecond.begin(), ofSecond.end());
    auto ways = levelsOf(m_halves[0], ofFirst, most), others = levelsOf(m_halves[1], ofSecond, most);
    if (!ways || !others)
        return Error{Refusal::TooMany, "plates"};
    HooksBeside beside(*this, side);
    beside.m_halves = {std::move(*ways), std::move(*others)};
    return beside;
}

std::optional<PlateSplit> HooksBeside::nearest(PlateUnits twice, PlateUnits least, PlateUnits most) const
{
    const auto &first = m_halves[0].back(), &second = m_halves[1].back();
    using Key = std::tuple<PlateUnits, int, PlateUnits, PlateUnits>;
    std::optional<Key> best;
    std::size_t bestFirst = 0, bestSecond = 0;
    /// False where it and all further from the middle are worse than the best.
    const auto tryOut = [&](std::size_t i, std::size_t j) {
        const State &a = first[i], &b = second[j];
        const PlateUnits hook = a.hook + b.hook, miss = std::abs(2 * hook - twice);
        if (hook < least || hook > most || (best && miss > std::get<0>(*best)))
            return false;
        const Key key{miss, a.count + b.count, hook, -(a.tall + b.tall)};
        if (m_plates.hasRoom(a.sideThick + b.sideThick, a.hookThick + b.hookThick) && (!best || key < *best)) {
            best = key;
            bestFirst = i;
            bestSecond = j;
        }
        return true;
    };
    const PlateUnits middle = std::clamp(twice, 2 * least, std::max(2 * least, 2 * most));
    for (std::size_t i = 0; i < first.size(); ++i) {
        const auto with = [](PlateUnits side, PlateUnits hook) { State s; s.side = side; s.hook = hook; return s; };
        const auto bySide = [](const State& a, const State& b) { return a.side < b.side; };
        const auto [from, to] = std::equal_range(second.begin(), second.end(), with(m_side - first[i].side, 0), bySide);
        const auto start = std::partition_point(from, to, [&](const State& b) { return 2 * (first[i].hook + b.hook) < middle; });
        for (auto b = start; b != to && tryOut(i, static_cast<std::size_t>(b - second.begin())); ++b) {}
        for (auto b = start; b != from && tryOut(i, static_cast<std::size_t>(std::prev(b) - second.begin())); --b) {}
    }
    if (!best)
        return std::nullopt;
    PlateSplit split{m_side, std::get<2>(*best), {}, {}};
    collect(split, 0, bestFirst);
    collect(split, 1, bestSecond);
    const auto heavierFirst = [](const PlateType& a, const PlateType& b) { return a.mass > b.mass; };
    std::stable_sort(split.onSide.begin(), split.onSide.end(), heavierFirst);
    std::stable_sort(split.onHook.begin(), split.onHook.end(), heavierFirst);
    return split;
}

void HooksBeside::collect(PlateSplit& split, std::size_t halfIndex, std::size_t state) const
{
    const auto& types = m_plates.m_halves[halfIndex];
    for (std::size_t t = types.size(); t > 0; --t) {
        const State& s = m_halves[halfIndex][t][state];
        split.onSide.insert(split.onSide.end(), s.sidePairs, types[t - 1].type);
        split.onHook.insert(split.onHook.end(), s.hookPairs, types[t - 1].type);
        state = s.beforeIndex;
    }
}

}
