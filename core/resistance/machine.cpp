// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/machine.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace steelyard {

namespace {

bool isDoubt(double u) { return std::isfinite(u) && u >= 0; }

}

Result<MeasuredPull> MeasuredPull::of(std::span<const PositionPull> points, const PullDoubt& doubt, SourceId measurement)
{
    if (!isDoubt(doubt.scale.si()) || !isDoubt(doubt.massShare) || !isDoubt(doubt.place.si()))
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
    pull.m_doubt = doubt;
    pull.m_measurement = measurement;
    return pull;
}

MeasuredPull MeasuredPull::slackPast(Length stretch) const
{
    MeasuredPull slack = *this;
    slack.m_slack = stretch;
    return slack;
}

std::vector<Length> MeasuredPull::knots() const
{
    std::vector<Length> knots;
    for (const double knot : m_curve.knots())
        knots.push_back(metres(knot));
    if (m_slack > Length{})
        knots.push_back(last());
    return knots;
}

std::optional<Force> MeasuredPull::at(Length position) const
{
    if (position.si() > m_curve.last() && position <= last())
        return Force{};
    const auto pull = m_curve.at(position.si());
    return pull ? std::optional(newtons(*pull)) : std::nullopt;
}

std::optional<Stiffness> MeasuredPull::slopeAt(Length position) const
{
    if (position.si() > m_curve.last() && position <= last())
        return Stiffness{};
    const auto slope = m_curve.slopeAt(position.si());
    return slope ? std::optional(Stiffness::fromSi(*slope)) : std::nullopt;
}

std::optional<Force> MeasuredPull::uncertaintyAt(Length position) const
{
    const auto pull = at(position);
    const auto slope = slopeAt(position);
    if (!pull || !slope)
        return std::nullopt;
    return newtons(std::hypot(m_doubt.scale.si(), m_doubt.massShare * pull->si(), (*slope * m_doubt.place).si()));
}

std::optional<Force> MeasuredPull::mean(Length from, Length to) const
{
    const auto within = [this](Length position) { return position <= last() ? std::min(position.si(), m_curve.last()) : position.si(); };
    const auto area = m_curve.integral(within(from), within(to));
    return area && from < to ? std::optional(newtons(*area / (to - from).si())) : std::nullopt;
}

Result<CamProfile> CamProfile::of(std::span<const Point> points, const Doubt& doubt)
{
    if (!isDoubt(doubt.radius.si()) || !isDoubt(doubt.angle.radians))
        return Error{Refusal::OutOfRange, "uncertainty"};
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
    CamProfile cam(std::move(*curve));
    cam.m_doubt = doubt;
    return cam;
}

std::optional<Length> CamProfile::radius(Angle at) const
{
    const auto radius = m_radius.at(at.radians);
    return radius ? std::optional(metres(*radius)) : std::nullopt;
}

std::optional<Length> CamProfile::uncertaintyAt(Angle at) const
{
    const auto slope = m_radius.slopeAt(at.radians);
    return slope ? std::optional(metres(std::hypot(m_doubt.radius.si(), m_doubt.angle.radians * *slope))) : std::nullopt;
}

std::optional<Torque> CamProfile::torque(Mass stack, Angle at) const
{
    const auto arm = radius(at);
    return arm ? std::optional(camTorque(stack, *arm)) : std::nullopt;
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
