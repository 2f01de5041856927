// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/eccentricload.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <functional>
#include <random>
#include <tuple>

/// Stocks of plates for a bar and two hooks, invented or out of a fixed row of numbers; tests and benches share them.
namespace steelyard::stocks {

inline PlateType plate(double kg) { return {kilograms(kg), metres(0.15 + 0.012 * kg), metres(0.01 + 0.001 * kg)}; }

inline std::vector<PlateStock> pairs(std::initializer_list<std::pair<double, int>> given)
{
    std::vector<PlateStock> stock;
    for (const auto& [kg, count] : given)
        stock.push_back({plate(kg), 2 * count});
    return stock;
}

/// A bar with collars of 25 kg, hooks of 3.2 kg, exact.
inline EccentricKit kit(std::vector<PlateStock> stock)
{
    EccentricKit made;
    made.stock = std::move(stock);
    made.base = {kilograms(25), {}};
    made.frame = {kilograms(3.2), {}};
    return made;
}

/// Forty plates as a gym has them.
inline std::vector<PlateStock> gym() { return pairs({{25, 3}, {20, 3}, {15, 2}, {10, 3}, {5, 3}, {2.5, 2}, {1.25, 2}, {0.5, 1}, {0.25, 1}}); }

/// Forty plates of which no two pairs weigh the same, as weighed ones do.
inline std::vector<PlateStock> weighed(unsigned seed)
{
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> off(-0.03, 0.03);
    std::vector<PlateStock> stock;
    for (const double kg : {25, 25, 25, 20, 20, 20, 15, 15, 10, 10, 10, 5, 5, 5, 5})
        stock.push_back({plate(std::round(kg * (1 + off(random)) * 1000) / 1000), 2});
    for (const double kg : {2.5, 2.5, 1.25, 1.25, 1.25})
        stock.push_back({plate(std::round(kg * (1 + off(random)) * 1000) / 1000), 2});
    return stock;
}

/// What an answer is judged by: both misses, plates, then the lighter bar and hooks; in millionths of a gram.
using Judged = std::tuple<long long, long long, int, long long, long long>;

/// Masses here are whole tenths of that, and a third of one keeps them off the halves, which are rounded either way.
inline long long small(Mass mass)
{
    const long long size = std::llround(std::abs(mass.si()) * 1e9 + 0.35);
    return mass < Mass{} ? -size : size;
}

inline Judged judged(const EccentricKit& kit, const EccentricLoad& load)
{
    return {std::abs(small(load.concentricMiss)), std::abs(small(load.eccentricMiss)), load.plateCount, small(load.bar.total), small(load.eachHook.value - kit.frame.value)};
}

}
