// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/whattohang.h"
#include "tests/core/resistance/kit.h"

#include <algorithm>
#include <random>

/// Kits to hang from, invented or out of a fixed row of numbers; tests and benches share them.
namespace steelyard::kits {

inline std::vector<IronLoad> loadsOf(std::span<const PlateStock> stock, const LiftPath& path, double uShare, bool fromTheFloor = false)
{
    const auto all = PlateLoads::of(stock, kilograms(20));
    std::vector<IronLoad> loads;
    for (const PlateLoad& load : all->all()) {
        if (fromTheFloor && load.eachSide.empty())
            continue;
        LiftPath own = path;
        if (fromTheFloor)
            own.bottom = load.largestDiameter() / 2;
        loads.push_back({load, uShare * load.plates(), own});
    }
    return loads;
}

inline PlateType plate(double kg) { return {kilograms(kg), metres(0.15 + 0.012 * kg), metres(0.01 + 0.001 * kg)}; }

inline LiftPath path(double bottom = 0.77, double top = 1.27)
{
    LiftPath made;
    made.bottom = metres(bottom);
    made.top = metres(top);
    made.zoneFrom = metres(bottom + 0.1);
    made.zoneTo = metres(bottom + 0.25);
    made.uMark = metres(0.005);
    return made;
}

inline WayToHang both(std::size_t thing, const HungItem& left, const HungItem& right, std::uint64_t takes = 0) { return {thing, takes, {left}, {right}, 2, false}; }

inline WayToHang chainPair(std::size_t thing, ChainHanging how, double length, double lead, double kgPerMetre = 5.7, double u = 0.05, std::uint64_t takes = 0)
{
    const HungChain chain = tests::hungChain(how, length, lead, kgPerMetre, u, thing + 1);
    return both(thing, chain, chain, takes);
}

inline WayToHang bandPair(std::size_t thing, double anchor, bool above = false)
{
    const Band first = tests::rubberBand(thing + 1), second = tests::rubberBand(thing + 1, true);
    return above ? both(thing, tests::hungAbove(first, anchor), tests::hungAbove(second, anchor)) : both(thing, tests::hungBelow(first, anchor), tests::hungBelow(second, anchor));
}

inline HangTarget target(TargetPlace place, double kg, double tolerance = 1) { return {place, weight(kilograms(kg)), weight(kilograms(tolerance))}; }

/// A kit out of a fixed row of numbers.
class Kits {
public:
    explicit Kits(unsigned seed) : m_random(seed) {}

    /// Little enough that every choice can be tried.
    HangQuestion make(std::size_t things, std::size_t waysEach, std::size_t targets)
    {
        HangQuestion q;
        std::vector<PlateStock> stock;
        for (const double kg : {20.0, 10.0, 5.0, 2.5, 1.25})
            if (number(0, 1) < 0.7)
                stock.push_back({plate(kg), 2 * whole(1, 2)});
        const bool floor = number(0, 1) < 0.25;
        q.loads = loadsOf(stock, path(number(0.5, 0.9), number(1.2, 1.5)), number(0, 0.02), floor);
        if (q.loads.empty())
            q.loads = loadsOf(stock, path(), 0.01);
        for (std::size_t thing = 0; thing < things; ++thing)
            for (int way = whole(1, static_cast<int>(waysEach)); way > 0; --way)
                q.ways.push_back(oneWay(thing));
        if (!q.ways.empty() && number(0, 1) < 0.5)
            q.ways[static_cast<std::size_t>(whole(0, static_cast<int>(q.ways.size()) - 1))].hangsNow = true;
        if (number(0, 1) < 0.5)
            q.loadNowIndex = static_cast<std::size_t>(whole(0, static_cast<int>(q.loads.size()) - 1));
        constexpr TargetPlace places[] = {TargetPlace::Bottom, TargetPlace::Zone, TargetPlace::Top, TargetPlace::Mean};
        const int first = whole(0, 3);
        for (std::size_t t = 0; t < targets; ++t)
            q.targets.push_back(target(places[(static_cast<std::size_t>(first) + t) % 4], number(20, 130), number(0.5, 4)));
        if (floor)
            std::erase_if(q.targets, [](const HangTarget& t) { return t.place == TargetPlace::Zone; });
        if (q.targets.empty())
            q.targets.push_back(target(TargetPlace::Top, 80));
        if (number(0, 1) < 0.3)
            q.limits.cap = kilograms(number(40, 140));
        if (number(0, 1) < 0.3)
            q.limits.sleeve = metres(number(0.03, 0.12));
        q.mostThingsCount = static_cast<std::size_t>(whole(1, 3));
        if (floor)
            for (IronLoad& iron : q.loads)
                iron.path.zoneFrom = iron.path.zoneTo = std::nullopt;
        return q;
    }

    /// Of somebody who was pulled at three to five heights, from far below every path to far above.
    StrengthCurve strength()
    {
        std::vector<IsometricReading> readings;
        const int count = whole(3, 5);
        for (int i = 0; i < count; ++i)
            readings.push_back({metres(0.05 + 1.6 * i / (count - 1)), newtons(number(600, 2500)), newtons(number(0, 30))});
        return *StrengthCurve::of(readings);
    }

    /// A store room: so many pairs of chains and bands, each with the ways that straps and pegs give it, and a gym's plates.
    HangQuestion large(std::size_t pairs)
    {
        HangQuestion q;
        std::vector<PlateStock> stock;
        for (const double kg : {25.0, 20.0, 15.0, 10.0, 5.0, 2.5, 1.25})
            stock.push_back({plate(kg), 4});
        q.loads = loadsOf(stock, path(number(0.5, 0.9), number(1.2, 1.5)), 0.01);
        for (std::size_t thing = 0; thing < pairs; ++thing)
            for (int way = whole(2, 6); way > 0; --way)
                q.ways.push_back(oneWay(thing));
        const double bottom = number(40, 120);
        q.targets = {target(TargetPlace::Bottom, bottom), target(TargetPlace::Top, bottom * number(1.05, 1.5))};
        if (number(0, 1) < 0.5)
            q.targets.push_back(target(TargetPlace::Zone, bottom * number(1.02, 1.3)));
        q.loadNowIndex = 0;
        return q;
    }

private:
    WayToHang oneWay(std::size_t thing)
    {
        const std::uint64_t strap = number(0, 1) < 0.3 ? std::uint64_t(1) << whole(0, 2) : 0;
        if (number(0, 1) < 0.6)
            return chainPair(thing, number(0, 1) < 0.5 ? ChainHanging::Straight : ChainHanging::Doubled, number(0.8, 2.5), number(0, 0.8), number(1.5, 8), number(0, 0.2), strap);
        return number(0, 1) < 0.6 ? bandPair(thing, number(0, 0.4)) : bandPair(thing, number(1.6, 2.4), true);
    }
    double number(double from, double to) { return from + (to - from) * std::uniform_real_distribution<double>()(m_random); }
    int whole(int from, int to) { return std::uniform_int_distribution<int>(from, to)(m_random); }

    std::mt19937 m_random;
};

}
