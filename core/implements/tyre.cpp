// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/implements/tyre.h"

#include "core/measure/conditions.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace steelyard {

namespace {

constexpr std::size_t mostPoints = 200;
constexpr double g = standardGravity.si();

}

Result<Estimate<Mass>> tyreMassFromEdge(const TyreEdge& edge)
{
    if (const auto wrong = broken({{isPositive(edge.shown), "edge"}, {isPositive(edge.liftPoint), "lift point"}, {isPositive(edge.farContact), "far contact"}}))
        return *wrong;
    const double r = edge.shown.number(), a = edge.liftPoint.number(), b = edge.farContact.number();
    const double lever = (a + b) / b;
    return Estimate<Mass>{kilograms(r * lever), propagated({{edge.shown.uncertainty, lever}, {edge.liftPoint.uncertainty, r / b},
                                                            {edge.farContact.uncertainty, -r * a / (b * b)}})};
}

Result<TyreFlip> TyreFlip::of(const TyreSize& size)
{
    if (const auto wrong = broken({{isPositive(size.mass), "mass"}, {isPositive(size.diameter), "diameter"}, {isPositive(size.width), "width"}}))
        return *wrong;
    return TyreFlip(size);
}

Estimate<Angle> TyreFlip::balance() const
{
    const double d = m_size.diameter.number(), w = m_size.width.number(), across = d * d + w * w;
    return {Angle{std::atan2(d, w)}, propagated({{m_size.diameter.uncertainty, w / across}, {m_size.width.uncertainty, -d / across}})};
}

Estimate<Energy> TyreFlip::workToBalance() const
{
    const double d = m_size.diameter.number(), w = m_size.width.number(), mg = m_size.mass.number() * g;
    const double across = std::hypot(d, w), rise = (across - w) / 2;
    return {joules(mg * rise), propagated({{m_size.mass.uncertainty, g * rise}, {m_size.diameter.uncertainty, mg * d / (2 * across)},
                                           {m_size.width.uncertainty, mg * (w / across - 1) / 2}})};
}

std::optional<FlipPoint> TyreFlip::at(Angle angle) const
{
    if (!(angle.radians >= 0 && angle.radians < std::numbers::pi / 2))
        return std::nullopt;
    const double d = m_size.diameter.number(), w = m_size.width.number(), mg = m_size.mass.number() * g;
    const double sine = std::sin(angle.radians), cosine = std::cos(angle.radians), tangent = sine / cosine;
    const auto force = [&](double along, double across) {
        const double share = (along - w / d * across) / 2;
        return Estimate<Force>{newtons(mg * share), propagated({{m_size.mass.uncertainty, g * share}, {m_size.diameter.uncertainty, mg * w * across / (2 * d * d)},
                                                                {m_size.width.uncertainty, -mg * across / (2 * d)}})};
    };
    return FlipPoint{angle, metres(d * sine), force(1, tangent), force(cosine, sine)};
}

std::vector<FlipPoint> TyreFlip::curve(std::size_t points) const
{
    const std::size_t last = std::clamp(points, std::size_t{2}, mostPoints) - 1;
    const double end = balance().number();
    std::vector<FlipPoint> curve;
    for (std::size_t i = 0; i <= last; ++i)
        if (auto point = at(Angle{end * static_cast<double>(i) / static_cast<double>(last)}))
            curve.push_back(std::move(*point));
    return curve;
}

}
