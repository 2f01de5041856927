// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/band.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

/// One standard uncertainty of a twin's rest length, as a share of it: rest lengths within one size differ by
/// 3.5–5.2 % (McMaster, Cronin & McGuigan, J Strength Cond Res 24:2056–2064, 2010).
constexpr double twinRestShare = 0.03;

}

Result<HungBand> HungBand::of(const Band& band, const BandHang& hang)
{
    if (!std::isfinite(hang.anchorHeight.si()) || hang.anchorHeight.si() < 0)
        return Error{Refusal::OutOfRange, "anchor height"};
    if (!std::isfinite(hang.offset.si()))
        return Error{Refusal::NotFinite, "offset"};
    if (!std::isfinite(hang.wrap.si()) || hang.wrap.si() < 0)
        return Error{Refusal::OutOfRange, "wrap"};
    return HungBand(band, hang);
}

Length HungBand::span(Height bar) const
{
    const Length z = bar - m_hang.anchorHeight;
    return metres(std::sqrt((z * z + m_hang.offset * m_hang.offset).si()));
}

Length HungBand::bandLength(Height bar) const
{
    return m_hang.doubled ? 2 * span(bar) + m_hang.wrap : span(bar);
}

HungState HungBand::stateAt(Height bar) const
{
    const Length z = bar - m_hang.anchorHeight, l = span(bar), whole = m_hang.doubled ? 2 * l + m_hang.wrap : l;
    HungState state;
    state.known = m_band.fit.knows(whole);
    if (l.si() <= 0)
        return state;
    const BandPull one = m_band.fit.at(whole);
    const double c = z / l, n = strands();
    state.pull = n * c * one.pull;
    state.alongFloor = n * (m_hang.offset / l) * one.pull;
    // d/dh of n·T(nℓ + w)·z/ℓ with dℓ/dh = z/ℓ
    state.slope = n * (n * c * c * one.slope + (1 - c * c) * (one.pull / l));
    state.effect = finished(n * c * one.effects[0], n * c * one.effects[1], state.pull);
    if (m_band.twin)
        state.own = ageFactor() * twinRestShare * n * std::abs(c) * (one.slope * whole);
    return state;
}

Force HungBand::verticalPull(Height bar) const { return stateAt(bar).pull; }
Stiffness HungBand::verticalSlope(Height bar) const { return stateAt(bar).slope; }
Force HungBand::pullAlongFloor(Height bar) const { return stateAt(bar).alongFloor; }

Force HungBand::meanPull(Height from, Height to) const
{
    if (to <= from)
        return verticalPull(from);
    return (m_band.fit.work(bandLength(to)) - m_band.fit.work(bandLength(from))) / (to - from);
}

std::optional<Length> HungBand::reach(Length whole) const
{
    const double l = (m_hang.doubled ? (whole - m_hang.wrap) / 2 : whole).si(), x = m_hang.offset.si();
    if (l < std::abs(x))
        return std::nullopt;
    return metres(std::sqrt(l * l - x * x));
}

std::optional<Length> HungBand::reachAtRest() const { return reach(m_band.fit.rest()); }
std::optional<Length> HungBand::reachKnown() const { return reach(m_band.fit.knownUpTo()); }

std::array<Force, Effect::components> HungBand::finished(Force first, Force second, Force pull) const
{
    const double least = m_band.fit.leastShareOfPull() * std::abs(pull.si());
    const double missing = least * least - first.si() * first.si() - second.si() * second.si();
    const double floor = missing > 0 ? std::copysign(std::sqrt(missing), pull.si()) : 0;
    return {ageFactor() * first, ageFactor() * second, ageFactor() * newtons(floor)};
}

Effect HungBand::effectOf(const std::array<Force, Effect::components>& effect) const
{
    const double freedom = static_cast<double>(m_band.fit.degreesOfFreedom());
    return {m_band.measurement, {effect[0].si(), effect[1].si(), effect[2].si()}, freedom > 0 ? freedom : knownExactly};
}

Effect HungBand::effectAt(Height bar) const { return effectOf(stateAt(bar).effect); }
Force HungBand::twinUncertaintyAt(Height bar) const { return stateAt(bar).own; }

Effect HungBand::meanEffect(Height from, Height to) const
{
    if (to <= from)
        return effectAt(from);
    const auto high = m_band.fit.workEffects(bandLength(to)), low = m_band.fit.workEffects(bandLength(from));
    const Length path = to - from;
    return effectOf(finished((high[0] - low[0]) / path, (high[1] - low[1]) / path, meanPull(from, to)));
}

Force HungBand::meanTwinUncertainty(Height from, Height to) const
{
    if (!m_band.twin)
        return Force{};
    if (to <= from)
        return twinUncertaintyAt(from);
    // ∫ℓT′dℓ = ℓT − ∫T dℓ
    const auto part = [&](Height bar) {
        const Length whole = bandLength(bar);
        return m_band.fit.pull(whole) * std::max(whole, m_band.fit.rest()) - m_band.fit.work(whole);
    };
    const double mean = ((part(to) - part(from)) / (to - from)).si();
    return newtons(ageFactor() * twinRestShare * std::abs(mean));
}

}
