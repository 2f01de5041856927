// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/implements/sled.h"

#include "core/measure/conditions.h"
#include "core/measure/leastsquares.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace steelyard {

namespace {

constexpr double g = standardGravity.si();

bool isSlope(const Estimate<Angle>& angle)
{
    return isNotNegative(angle) && angle.number() < std::numbers::pi / 2;
}

/// cosα ± μ sinα and its derivatives.
struct Grip {
    double value, byFriction, byAngle;

    Grip(const Haul& haul, double friction)
    {
        const double sign = haul.way == SledWay::Tow ? 1 : -1, cosine = std::cos(haul.angle.number()), sine = std::sin(haul.angle.number());
        value = cosine + sign * friction * sine;
        byFriction = sign * sine;
        byAngle = -sine + sign * friction * cosine;
    }
    explicit Grip(const Haul& haul) : Grip(haul, haul.friction.number()) {}
};

std::optional<Error> wrongHaul(const Haul& haul)
{
    if (auto wrong = broken({{isNotNegative(haul.friction), "friction"}, {isSlope(haul.angle), "angle"}}))
        return wrong;
    return broken({{!locks(haul), "push angle"}});
}

/// What the ground carries, what it holds back, and how both change.
struct Contact {
    double normal, along, sine, cosine, pull;

    Contact(const TowReading& reading, double angle) : sine(std::sin(angle)), cosine(std::cos(angle)), pull(reading.pull.number())
    {
        normal = reading.total.number() * g - pull * sine;
        along = pull * cosine;
    }
};

std::optional<Error> wrongReading(const TowReading& reading, const Estimate<Angle>& angle)
{
    if (auto wrong = broken({{isPositive(reading.total), "mass"}, {isNotNegative(reading.pull), "pull"}, {isSlope(angle), "angle"}}))
        return wrong;
    return broken({{Contact(reading, angle.number()).normal > 0, "pull"}});
}

/// μ = Σxy/Σx², x what the ground carries and y what it holds back, with what readings, masses and angle bring to its doubt.
Estimate<double> frictionOf(std::span<const TowReading> readings, const Estimate<Angle>& angle)
{
    double products = 0, squares = 0;
    for (const TowReading& reading : readings) {
        const Contact c(reading, angle.number());
        products += c.normal * c.along;
        squares += c.normal * c.normal;
    }
    Estimate<double> friction{products / squares, {}};
    double byAngle = 0;
    for (const TowReading& reading : readings) {
        const Contact c(reading, angle.number());
        // of x and of y, each by what changes them
        const auto change = [&](double dx, double dy) { return (dx * (c.along - 2 * friction.value * c.normal) + dy * c.normal) / squares; };
        friction.uncertainty.addScaled(reading.pull.uncertainty, change(-c.sine, c.cosine));
        friction.uncertainty.addScaled(reading.total.uncertainty, change(g, 0));
        byAngle += change(-c.pull * c.cosine, -c.pull * c.sine);
    }
    friction.uncertainty.addScaled(angle.uncertainty, byAngle);
    return friction;
}

}

bool locks(const Haul& haul)
{
    return haul.way == SledWay::Push && !(Grip(haul, haul.friction.highest()).value > 0);
}

Result<Estimate<Force>> sledPull(const Estimate<Mass>& total, const Haul& haul)
{
    if (const auto wrong = broken({{isPositive(total), "mass"}}))
        return *wrong;
    if (const auto wrong = wrongHaul(haul))
        return *wrong;
    const Grip grip(haul);
    const double mg = total.number() * g, friction = haul.friction.number(), pull = friction * mg / grip.value;
    return Estimate<Force>{newtons(pull), propagated({{total.uncertainty, g * friction / grip.value},
                                                      {haul.friction.uncertainty, (mg - pull * grip.byFriction) / grip.value},
                                                      {haul.angle.uncertainty, -pull * grip.byAngle / grip.value}})};
}

Result<Estimate<Mass>> sledMassFor(const Estimate<Force>& pull, const Haul& haul)
{
    if (const auto wrong = broken({{isPositive(pull), "pull"}, {isPositive(haul.friction), "friction"}}))
        return *wrong;
    if (const auto wrong = wrongHaul(haul))
        return *wrong;
    const Grip grip(haul);
    const double force = pull.number(), friction = haul.friction.number(), mass = force * grip.value / (friction * g);
    return Estimate<Mass>{kilograms(mass), propagated({{pull.uncertainty, grip.value / (friction * g)},
                                                       {haul.friction.uncertainty, (force * grip.byFriction / g - mass) / friction},
                                                       {haul.angle.uncertainty, force * grip.byAngle / (friction * g)}})};
}

Result<Estimate<Mass>> sameElsewhere(const Estimate<Mass>& total, const Haul& here, const Haul& there)
{
    const auto pull = sledPull(total, here);
    if (!pull)
        return pull.error();
    return sledMassFor(*pull, there);
}

Result<Estimate<double>> frictionFromPull(const TowReading& reading, const Estimate<Angle>& angle)
{
    if (const auto wrong = wrongReading(reading, angle))
        return *wrong;
    return frictionOf({&reading, 1}, angle);
}

Result<SurfaceFriction> frictionFromPulls(std::span<const TowReading> readings, const Estimate<Angle>& angle)
{
    if (readings.size() < 2)
        return Error{Refusal::TooFewPoints, "points"};
    std::vector<double> carried, held;
    for (const TowReading& reading : readings) {
        if (const auto wrong = wrongReading(reading, angle))
            return *wrong;
        const Contact c(reading, angle.number());
        carried.push_back(c.normal);
        held.push_back(c.along);
    }
    const auto [least, most] = std::minmax_element(readings.begin(), readings.end(),
        [](const TowReading& a, const TowReading& b) { return a.total.value < b.total.value; });
    if (!(least->total.value < most->total.value))
        return Error{Refusal::PointsNotApart, "points"};
    const auto line = PolynomialFit::of(carried, held, 1, true);
    if (!line)
        return line.error();
    SurfaceFriction surface{frictionOf(readings, angle), least->total.value, most->total.value};
    if (const auto errors = line->fit().standardErrors())
        surface.friction.uncertainty.add({ownSource, {errors->front(), 0, 0}, static_cast<double>(line->fit().degreesOfFreedom())});
    return surface;
}

Result<Estimate<Angle>> towAngle(const Estimate<Length>& strap, const Estimate<Height>& hip, const Estimate<Height>& hitch)
{
    if (const auto wrong = broken({{isPositive(strap), "strap"}, {isNotNegative(hitch), "hitch"}, {isFinite(hip) && hip.value >= hitch.value, "hip"}}))
        return *wrong;
    const double rise = hip.number() - hitch.number(), length = strap.number();
    if (!(rise < length))
        return Error{Refusal::OutOfRange, "strap"};
    const double level = std::sqrt(length * length - rise * rise);
    return Estimate<Angle>{Angle{std::asin(rise / length)}, propagated({{hip.uncertainty, 1 / level}, {hitch.uncertainty, -1 / level},
                                                                        {strap.uncertainty, -rise / (length * level)}})};
}

}
