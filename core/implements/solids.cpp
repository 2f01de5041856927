// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/implements/solids.h"

#include "core/implements/fillings.h"
#include "core/measure/conditions.h"

#include <numbers>

namespace steelyard {

namespace {

constexpr double pi = std::numbers::pi;
/// The water that specific gravity is told by.
constexpr double water = 1000;
constexpr double cellWallGravity = 1.55, wettestPercent = 300;

}

Estimate<Length> diameterFromGirth(const Estimate<Length>& girth)
{
    return times(girth, 1 / pi);
}

Result<Estimate<Volume>> volumeOf(const TaperedRound& round)
{
    if (const auto wrong = broken({{isPositive(round.length), "length"}, {isPositive(round.firstDiameter), "first diameter"},
                                   {isPositive(round.secondDiameter), "second diameter"}}))
        return *wrong;
    const double l = round.length.number(), a = round.firstDiameter.number(), b = round.secondDiameter.number();
    const double section = pi * (a * a + a * b + b * b) / 12;
    return Estimate<Volume>{Volume::fromSi(section * l), propagated({{round.length.uncertainty, section}, {round.firstDiameter.uncertainty, pi * l * (2 * a + b) / 12},
                                                                     {round.secondDiameter.uncertainty, pi * l * (a + 2 * b) / 12}})};
}

Result<Estimate<Volume>> volumeOfBall(const Estimate<Length>& diameter)
{
    if (const auto wrong = broken({{isPositive(diameter), "diameter"}}))
        return *wrong;
    const double d = diameter.number();
    return Estimate<Volume>{Volume::fromSi(pi * d * d * d / 6), propagated({{diameter.uncertainty, pi * d * d / 2}})};
}

Estimate<double> gravityOfSpecies(double gravityRatio)
{
    return within(gravityRatio, specificGravityVariationShare * gravityRatio);
}

Result<Estimate<Density>> densityOf(const Wood& wood)
{
    const double gravity = wood.specificGravity.number(), percent = wood.moisturePercent.number();
    if (const auto wrong = broken({{isPositive(wood.specificGravity) && gravity <= cellWallGravity, "specific gravity"},
                                   {isNotNegative(wood.moisturePercent) && percent <= wettestPercent, "moisture"}}))
        return *wrong;
    const double moist = 1 + percent / 100;
    return Estimate<Density>{Density::fromSi(water * gravity * moist),
                             propagated({{wood.specificGravity.uncertainty, water * moist}, {wood.moisturePercent.uncertainty, water * gravity / 100}})};
}

Result<Estimate<Mass>> logMass(const TaperedRound& log, const Wood& wood)
{
    const auto volume = volumeOf(log);
    if (!volume)
        return volume.error();
    const auto density = densityOf(wood);
    if (!density)
        return density.error();
    return productOf(*density, *volume);
}

Result<Estimate<Mass>> stoneMass(const Estimate<Length>& diameter, const Estimate<Density>& density)
{
    const auto volume = volumeOfBall(diameter);
    if (!volume)
        return volume.error();
    if (const auto wrong = broken({{isPositive(density), "density"}}))
        return *wrong;
    return productOf(density, *volume);
}

Estimate<Density> concreteDensity()
{
    return densityBetween(Density::fromSi(2300), Density::fromSi(2400));
}

}
