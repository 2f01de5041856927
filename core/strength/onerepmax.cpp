// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/onerepmax.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace steelyard {

namespace {

constexpr int mostRepsOfAll = 10;
constexpr double mostToldReserve = 5;

/// Times the load; repetitions may be a fraction where those in reserve are.
double factorOf(OneRmFormula formula, double reps)
{
    if (reps <= 1)
        return 1;
    switch (formula) {
    case OneRmFormula::Epley: return 1 + reps / 30;
    case OneRmFormula::Brzycki: return 36 / (37 - reps);
    case OneRmFormula::Lombardi: return std::pow(reps, 0.10);
    case OneRmFormula::Mayhew: return 100 / (52.2 + 41.9 * std::exp(-0.055 * reps));
    case OneRmFormula::OConner: return 1 + 0.025 * reps;
    case OneRmFormula::Wathan: return 100 / (48.8 + 53.8 * std::exp(-0.075 * reps));
    case OneRmFormula::Lander: return 100 / (101.3 - 2.67123 * reps);
    }
    return 1;
}

/// Of the seven, the smallest first.
std::array<double, allOneRmFormulas.size()> factorsAt(double reps)
{
    std::array<double, allOneRmFormulas.size()> factors{};
    std::transform(allOneRmFormulas.begin(), allOneRmFormulas.end(), factors.begin(), [reps](OneRmFormula f) { return factorOf(f, reps); });
    std::sort(factors.begin(), factors.end());
    return factors;
}

bool isLoad(const Uncertain<Mass>& load) { return load.isSound() && load.value > Mass{}; }

}

Result<Mass> oneRepMaxBy(OneRmFormula formula, Mass load, int reps)
{
    if (!isLoad({load}))
        return Error{Refusal::OutOfRange, "load"};
    if (reps < 1 || reps > mostReps(formula))
        return Error{Refusal::OutOfRange, "reps"};
    return factorOf(formula, reps) * load;
}

Result<OneRepMax> oneRepMaxFrom(const RepsSet& set)
{
    if (!isLoad(set.load))
        return Error{Refusal::OutOfRange, "load"};
    if (set.reps < 1)
        return Error{Refusal::OutOfRange, "reps"};
    if (set.missedReps != 0)
        return Error{Refusal::OutOfRange, "missed reps"};
    if (!(set.repsInReserve >= 0 && set.repsInReserve <= mostToldReserve))
        return Error{Refusal::OutOfRange, "reps in reserve"};
    const double told = set.reps + set.repsInReserve;
    if (told > mostRepsOfAll)
        return Error{Refusal::OutOfRange, "reps"};

    const double least = factorsAt(std::max<double>(set.reps, told - 1)).front(), most = factorsAt(told + 1).back();
    const auto asTold = factorsAt(told);
    const double middle = asTold[asTold.size() / 2];
    const auto timesLoad = [&](double factor) { return Uncertain<Mass>{factor * set.load.value, factor * set.load.u}; };
    OneRepMax max{timesLoad(least), timesLoad(middle), timesLoad(most), false};
    const Mass range = (max.highest.value - max.lowest.value) / (2 * std::numbers::sqrt3);
    max.middle.u = inSquares(range, max.middle.u);
    return max;
}

Result<OneRepMax> oneRepMaxFrom(const TestedMax& test)
{
    if (!isLoad(test.load))
        return Error{Refusal::OutOfRange, "load"};
    if (!(test.smallestJump > Mass{} && test.smallestJump <= test.load.value))
        return Error{Refusal::OutOfRange, "jump"};
    const Mass next = test.load.value + test.smallestJump;
    return OneRepMax{test.load, {test.load.value, inSquares(test.smallestJump, test.load.u)}, {next, test.load.u}, true};
}

}
