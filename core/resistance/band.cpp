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
    return metres(std::hypot((bar - m_hang.anchorHeight).si(), m_hang.offset.si()));
}

double HungBand::upright(Height bar) const
{
    const Length l = span(bar);
    return l.si() > 0 ? (bar - m_hang.anchorHeight) / l : 0;
}

Length HungBand::bandLength(Height bar) const
{
    return m_hang.doubled ? 2 * span(bar) + m_hang.wrap : span(bar);
}

Force HungBand::verticalPull(Height bar) const
{
    return strands() * upright(bar) * m_band.fit.pull(bandLength(bar));
}

Stiffness HungBand::verticalSlope(Height bar) const
{
    const Length l = span(bar), whole = bandLength(bar);
    if (l.si() <= 0 || whole < m_band.fit.rest())
        return Stiffness{};
    const double c = upright(bar), n = strands();
    // d/dh of n·T(nℓ + w)·z/ℓ with dℓ/dh = z/ℓ
    return n * (n * c * c * m_band.fit.slope(whole) + (1 - c * c) * (m_band.fit.pull(whole) / l));
}

Force HungBand::pullAlongFloor(Height bar) const
{
    const Length l = span(bar);
    return l.si() > 0 ? strands() * (m_hang.offset / l) * m_band.fit.pull(bandLength(bar)) : Force{};
}

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

Effect HungBand::finished(Force first, Force second, Force pull) const
{
    Effect effect;
    effect.source = m_band.measurement;
    const double freedom = static_cast<double>(m_band.fit.degreesOfFreedom());
    effect.degreesOfFreedom = freedom > 0 ? freedom : knownExactly;
    const double least = m_band.fit.leastShareOfPull() * std::abs(pull.si()), u = std::hypot(first.si(), second.si());
    const double floor = u < least ? std::copysign(std::sqrt(least * least - u * u), pull.si()) : 0;
    effect.amount = {ageFactor() * first.si(), ageFactor() * second.si(), ageFactor() * floor};
    return effect;
}

Effect HungBand::effectAt(Height bar) const
{
    const double k = strands() * upright(bar);
    const auto e = m_band.fit.pullEffects(bandLength(bar));
    return finished(k * e[0], k * e[1], verticalPull(bar));
}

Effect HungBand::meanEffect(Height from, Height to) const
{
    if (to <= from)
        return effectAt(from);
    const auto high = m_band.fit.workEffects(bandLength(to)), low = m_band.fit.workEffects(bandLength(from));
    const Length path = to - from;
    return finished((high[0] - low[0]) / path, (high[1] - low[1]) / path, meanPull(from, to));
}

Force HungBand::twinUncertaintyAt(Height bar) const
{
    if (!m_band.twin)
        return Force{};
    const Length whole = bandLength(bar);
    if (whole <= m_band.fit.rest())
        return Force{};
    return ageFactor() * twinRestShare * strands() * std::abs(upright(bar)) * (m_band.fit.slope(whole) * whole);
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
