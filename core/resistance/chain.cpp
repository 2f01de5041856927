// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/chain.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace steelyard {

namespace {

bool positive(double v) { return std::isfinite(v) && v > 0; }
bool notNegative(double v) { return std::isfinite(v) && v >= 0; }

/// Antiderivative of clamp(x, 0, top).
double areaUnderClamp(double x, double top)
{
    if (x <= 0)
        return 0;
    return x < top ? x * x / 2 : top * top / 2 + top * (x - top);
}

double meanClamp(double from, double to, double top)
{
    return to > from ? (areaUnderClamp(to, top) - areaUnderClamp(from, top)) / (to - from) : std::clamp(from, 0.0, top);
}

}

Result<MeasuredDensity> gaugedChain(Length wire, Length pitch, Length innerWidth, Density density)
{
    const double d = wire.si(), p = pitch.si(), b = innerWidth.si();
    if (!positive(d))
        return Error{Refusal::OutOfRange, "wire"};
    if (!positive(b))
        return Error{Refusal::OutOfRange, "inner width"};
    if (!positive(p) || p < b || p <= d)
        return Error{Refusal::OutOfRange, "pitch"};
    if (!positive(density.si()))
        return Error{Refusal::OutOfRange, "density"};
    constexpr double pi = std::numbers::pi, relativeU = 0.03;
    const double value = density.si() * (pi * d * d / 4) * (2 * (p - b) + pi * (b + d)) / p;
    return MeasuredDensity{kilogramsPerMetre(value), kilogramsPerMetre(relativeU * value)};
}

Result<MeasuredDensity> weighedChain(Mass mass, Length length, Mass scaleStep, Mass scaleAccuracy)
{
    if (!positive(mass.si()))
        return Error{Refusal::OutOfRange, "mass"};
    if (!positive(length.si()))
        return Error{Refusal::OutOfRange, "length"};
    if (!positive(scaleStep.si()) || scaleStep > mass)
        return Error{Refusal::OutOfRange, "scale step"};
    if (!notNegative(scaleAccuracy.si()))
        return Error{Refusal::OutOfRange, "scale accuracy"};
    const Mass u = Mass::fromSi(scaleReadingUncertainty(scaleStep.si(), scaleAccuracy.si()));
    return MeasuredDensity{mass / length, u / length};
}

Result<HungChain> HungChain::of(const Chain& chain, const ChainHang& hang)
{
    if (!positive(chain.perLength.value.si()))
        return Error{Refusal::OutOfRange, "mass per metre"};
    if (!notNegative(chain.perLength.u.si()))
        return Error{Refusal::OutOfRange, "uncertainty of the mass per metre"};
    if (!positive(chain.length.si()))
        return Error{Refusal::OutOfRange, "length"};
    if (!notNegative(hang.lead.si()))
        return Error{Refusal::OutOfRange, "lead"};
    if (!notNegative(hang.leadMass.si()))
        return Error{Refusal::OutOfRange, "lead mass"};
    if (hang.how == ChainHanging::Bunched && !positive(hang.bunch.si()))
        return Error{Refusal::OutOfRange, "bunch"};
    if (chain.pitch && !positive(chain.pitch->si()))
        return Error{Refusal::OutOfRange, "pitch"};
    return HungChain(chain, hang);
}

HungChain::HungChain(const Chain& chain, const ChainHang& hang) : m_chain(chain), m_hang(hang)
{
    switch (hang.how) {
    case ChainHanging::Straight:
        m_strands = 1;
        m_moving = chain.length;
        break;
    case ChainHanging::Doubled:
        m_strands = 2;
        m_moving = chain.length / 2;
        break;
    case ChainHanging::Bunched:
        m_strands = chain.length / hang.bunch;
        m_moving = hang.bunch;
        break;
    }
}

Length HungChain::lengthOffFloor(Height bar) const
{
    return m_strands * std::clamp(bar - m_hang.lead, Length{}, m_moving);
}

Length HungChain::meanLengthOffFloor(Height from, Height to) const
{
    return metres(m_strands * meanClamp((from - m_hang.lead).si(), (to - m_hang.lead).si(), m_moving.si()));
}

Mass HungChain::leadMassAt(Height bar) const
{
    const double s = m_hang.lead.si(), h = bar.si();
    return (h <= 0 ? 0 : s > 0 ? std::min(h / s, 1.0) : 1) * m_hang.leadMass;
}

HungState HungChain::stateAt(Height bar) const
{
    const Length up = lengthOffFloor(bar);
    HungState state;
    state.pull = weight(m_chain.perLength.value * up + leadMassAt(bar));
    state.slope = massSlopeAt(bar) * standardGravity;
    state.effect[0] = weight(m_chain.perLength.u * up);
    return state;
}

Mass HungChain::massAt(Height bar) const
{
    return m_chain.perLength.value * lengthOffFloor(bar) + leadMassAt(bar);
}

LinearDensity HungChain::massSlopeAt(Height bar) const
{
    LinearDensity slope;
    if (bar > firstLinkUp() && bar < lastLinkOff())
        slope += m_strands * m_chain.perLength.value;
    if (bar > Height{} && bar < m_hang.lead)
        slope += m_hang.leadMass / m_hang.lead;
    return slope;
}

Mass HungChain::meanMass(Height from, Height to) const
{
    const double s = m_hang.lead.si();
    const double leadShare = s > 0 ? meanClamp(from.si() / s, to.si() / s, 1)
                                   : to.si() <= 0 ? 0 : std::min(1.0, to > from ? to.si() / (to - from).si() : 1);
    return m_chain.perLength.value * meanLengthOffFloor(from, to) + leadShare * m_hang.leadMass;
}

std::optional<Mass> HungChain::linkStep() const
{
    if (!m_chain.pitch)
        return std::nullopt;
    return m_chain.perLength.value * *m_chain.pitch;
}

Mass HungChain::uncertaintyAt(Height bar) const
{
    return m_chain.perLength.u * lengthOffFloor(bar);
}

Mass HungChain::meanUncertainty(Height from, Height to) const
{
    return m_chain.perLength.u * meanLengthOffFloor(from, to);
}

}
