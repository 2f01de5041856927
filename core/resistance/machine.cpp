// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/machine.h"

#include <cmath>
#include <vector>

namespace steelyard {

Result<MeasuredPull> MeasuredPull::of(std::span<const PositionPull> points, Force readingU, SourceId measurement)
{
    if (!std::isfinite(readingU.si()) || readingU.si() < 0)
        return Error{Refusal::OutOfRange, "uncertainty"};
    std::vector<double> x, y;
    for (const PositionPull& p : points) {
        x.push_back(p.position.si());
        y.push_back(p.pull.si());
    }
    auto curve = MonotoneCurve::through(x, y);
    if (!curve)
        return curve.error();
    MeasuredPull pull(std::move(*curve));
    pull.m_readingU = readingU;
    pull.m_measurement = measurement;
    return pull;
}

std::optional<Force> MeasuredPull::at(Length position) const
{
    const auto pull = m_curve.at(position.si());
    return pull ? std::optional(newtons(*pull)) : std::nullopt;
}

Result<CamProfile> CamProfile::of(std::span<const Point> points)
{
    std::vector<double> x, y;
    for (const Point& p : points) {
        if (p.radius.si() < 0)
            return Error{Refusal::OutOfRange, "radius"};
        x.push_back(p.angle.radians);
        y.push_back(p.radius.si());
    }
    auto curve = MonotoneCurve::through(x, y);
    if (!curve)
        return curve.error();
    return CamProfile(std::move(*curve));
}

std::optional<Torque> CamProfile::torque(Mass stack, Angle at) const
{
    const auto radius = m_radius.at(at.radians);
    return radius ? std::optional(camTorque(stack, metres(*radius))) : std::nullopt;
}

std::optional<Length> CamProfile::rise(Angle from, Angle to) const
{
    const auto rise = m_radius.integral(from.radians, to.radians);
    return rise ? std::optional(metres(*rise)) : std::nullopt;
}

std::optional<Energy> CamProfile::work(Mass stack, Angle from, Angle to) const
{
    const auto up = rise(from, to);
    return up ? std::optional(weight(stack) * *up) : std::nullopt;
}

std::optional<Torque> CamProfile::meanTorque(Mass stack, Angle from, Angle to) const
{
    const auto done = work(stack, from, to);
    const double turned = to.radians - from.radians;
    if (!done)
        return std::nullopt;
    if (turned == 0)
        return torque(stack, from);
    return Torque{done->si() / turned};
}

}
