// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/releasehook.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <numbers>

namespace steelyard {

namespace {

constexpr Length nearestBelow = metres(0.02), furthestBelow = metres(0.05);

bool isAbove(Length least, const Uncertain<Length>& length) { return length.isSound() && length.value > least; }
bool isNotBelow(Length least, const Uncertain<Length>& length) { return length.isSound() && length.value >= least; }

std::optional<Error> fitFault(const HookFit& fit)
{
    if (!isAbove(Length{}, fit.sleeveRadius))
        return Error{Refusal::OutOfRange, "sleeve radius"};
    if (!isNotBelow(Length{}, fit.lipDrop))
        return Error{Refusal::OutOfRange, "lip drop"};
    return std::nullopt;
}

double normalBelow(double z) { return std::erfc(-z / std::numbers::sqrt2) / 2; }

/// A spread not worth the name is known well enough: past so many degrees of freedom the two distributions are one.
double studentBelow(double t, double degreesOfFreedom)
{
    constexpr double most = 1e12;
    if (degreesOfFreedom > most)
        return normalBelow(t);
    return boost::math::cdf(boost::math::students_t_distribution<double>(degreesOfFreedom), t);
}

}

Result<DepthSpread> depthSpread(std::span<const Height> lowestOfEach, Length uReading)
{
    constexpr std::size_t fewest = 3;
    if (lowestOfEach.size() < fewest)
        return Error{Refusal::TooFewPoints, "reps"};
    if (!std::all_of(lowestOfEach.begin(), lowestOfEach.end(), [](Height h) { return std::isfinite(h.si()) && h >= Height{}; }))
        return Error{Refusal::OutOfRange, "depth"};
    if (!std::isfinite(uReading.si()) || uReading < Length{})
        return Error{Refusal::OutOfRange, "uncertainty"};
    const auto n = static_cast<double>(lowestOfEach.size());
    Height sum;
    for (const Height h : lowestOfEach)
        sum += h;
    const Height mean = sum / n;
    double squares = 0;
    for (const Height h : lowestOfEach)
        squares += (h - mean).si() * (h - mean).si();
    return DepthSpread{mean, uReading, metres(std::sqrt(squares / (n - 1))), static_cast<int>(lowestOfEach.size())};
}

DepthSpread depthOnBox(const Uncertain<Height>& lowest) { return {lowest.value, lowest.u, {}, 0}; }

Length depthMargin(const DepthSpread& depth) { return 2 * depth.sd; }

double fractionBelow(const Uncertain<Height>& height, const DepthSpread& depth)
{
    Uncertainty spread;
    Effect effect;
    effect.amount[0] = depth.sd.si();
    effect.amount[2] = inSquares(height.u, depth.uReading).si();
    if (depth.repsCount > 1) {
        effect.amount[1] = depth.sd.si() / std::sqrt(depth.repsCount);
        effect.degreesOfFreedom = depth.repsCount - 1;
    }
    spread.add(effect);
    const double clear = (height.value - depth.lowest).si(), scale = spread.standard();
    if (scale > 0)
        return studentBelow(clear / scale, spread.degreesOfFreedom());
    return clear > 0 ? 1 : 0;
}

Result<Uncertain<Length>> hookLength(const Uncertain<Height>& bottom, const Uncertain<Length>& margin, const HookFit& fit)
{
    if (!isAbove(Length{}, bottom))
        return Error{Refusal::OutOfRange, "bottom"};
    if (!isNotBelow(Length{}, margin))
        return Error{Refusal::OutOfRange, "margin"};
    if (const auto wrong = fitFault(fit))
        return *wrong;
    return Uncertain<Length>{bottom.value + margin.value + fit.sleeveRadius.value + fit.lipDrop.value,
                             inSquares(bottom.u, margin.u, fit.sleeveRadius.u, fit.lipDrop.u)};
}

Result<Length> hookSetting(Length wanted, std::span<const Length> settings)
{
    std::optional<Length> shortest;
    // a hair of slack, so that a length worked out to be a setting is one
    constexpr Length hair = metres(1e-9);
    for (const Length setting : settings)
        if (setting >= wanted - hair && (!shortest || setting < *shortest))
            shortest = setting;
    if (!shortest)
        return Error{Refusal::NotThere, "hook length"};
    return *shortest;
}

Result<HookHeights> hookHeights(const Uncertain<Length>& length, const HookFit& fit)
{
    if (const auto wrong = fitFault(fit))
        return *wrong;
    const Height touch = length.value - fit.sleeveRadius.value, free = touch - fit.lipDrop.value;
    if (!length.isSound() || free <= Height{})
        return Error{Refusal::OutOfRange, "hook length"};
    return HookHeights{{touch, inSquares(length.u, fit.sleeveRadius.u)}, {free, inSquares(length.u, fit.sleeveRadius.u, fit.lipDrop.u)}};
}

Length endDrop(Length spacing, Angle tilt) { return std::abs(std::sin(tilt.radians)) * spacing; }

Result<TiltedRelease> tiltedRelease(const HookHeights& heights, Length spacing, Angle tilt)
{
    constexpr double mostDegrees = 30;
    if (!isAbove(Length{}, {spacing}))
        return Error{Refusal::OutOfRange, "hook spacing"};
    if (!(std::abs(tilt.radians) <= mostDegrees * oneDegree.radians))
        return Error{Refusal::OutOfRange, "tilt"};
    const Length half = endDrop(spacing, tilt) / 2;
    return TiltedRelease{{heights.free.value + half, heights.free.u}, {heights.free.value - half, heights.free.u}};
}

Result<OneSideOn> oneSideStaysOn(const Uncertain<Mass>& bar, const Uncertain<Mass>& hook, Length spacing, std::optional<Length> grip)
{
    const auto isMass = [](const Uncertain<Mass>& mass) { return mass.isSound() && mass.value > Mass{}; };
    if (!isMass(bar))
        return Error{Refusal::OutOfRange, "bar"};
    if (!isMass(hook))
        return Error{Refusal::OutOfRange, "hook"};
    if (!isAbove(Length{}, {spacing}))
        return Error{Refusal::OutOfRange, "hook spacing"};
    if (grip && !isAbove(Length{}, {*grip}))
        return Error{Refusal::OutOfRange, "grip"};
    const auto tipping = [&](Mass mass) { return Torque{weight(mass).si() * spacing.si() / 2}; };
    OneSideOn on{hook, {bar.value + hook.value, inSquares(bar.u, hook.u)}, tipping(hook.value), tipping(hook.u), {}, {}};
    if (grip) {
        const auto hand = [&](double share) { return Uncertain<Mass>{bar.value / 2 + share * hook.value, inSquares(bar.u / 2, share * hook.u)}; };
        const double lever = spacing / *grip / 2;
        on.nearHand = hand(0.5 + lever);
        on.farHand = hand(0.5 - lever);
    }
    return on;
}

Result<SafetyHeights> squatSafeties(const Uncertain<Height>& bottom)
{
    if (!isAbove(furthestBelow, bottom))
        return Error{Refusal::OutOfRange, "bottom"};
    return SafetyHeights{{bottom.value - furthestBelow, bottom.u}, {bottom.value - nearestBelow, bottom.u}};
}

Result<SafetyHeights> benchSafeties(const Uncertain<Height>& archedChest, const Uncertain<Height>& throat, Length shaftRadius)
{
    if (!isAbove(Length{}, archedChest))
        return Error{Refusal::OutOfRange, "chest"};
    if (!isAbove(Length{}, throat))
        return Error{Refusal::OutOfRange, "throat"};
    if (!isAbove(Length{}, {shaftRadius}))
        return Error{Refusal::OutOfRange, "shaft"};
    const SafetyHeights heights{{throat.value + shaftRadius + throat.giveOrTake(), throat.u},
                                {archedChest.value + shaftRadius - archedChest.giveOrTake(), archedChest.u}};
    if (heights.lowest.value > heights.highest.value)
        return Error{Refusal::HeightsOutOfOrder, "throat"};
    return heights;
}

}
