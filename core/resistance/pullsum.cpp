// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/pullsum.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

/// Heights closer than this are one height; a tape reads a million times coarser.
constexpr double hair = 1e-9;

void addOwn(Uncertainty& sum, double amount)
{
    if (amount == 0)
        return;
    Effect e;
    e.amount[0] = amount;
    sum.add(e);
}

Reading reading(Force value, const Uncertainty& uncertainty)
{
    return {value, newtons(uncertainty.standard()), newtons(uncertainty.giveOrTake()), uncertainty.degreesOfFreedom()};
}

}

PullSum::PullSum(const Setup& setup) : m_setup(setup), m_iron(weight(setup.bar + setup.collars + setup.plates))
{
    each([this](const HungItem& item) { hung::appendKinks(item, m_kinks); });
    std::sort(m_kinks.begin(), m_kinks.end());
    m_kinks.erase(std::unique(m_kinks.begin(), m_kinks.end(), [](Height a, Height b) { return (b - a).si() < hair; }), m_kinks.end());
}

bool PullSum::knows(Height h) const
{
    bool known = true;
    each([&](const HungItem& item) { known = known && hung::knows(item, h); });
    return known;
}

bool PullSum::knowsAll(Height from, Height to) const
{
    // knowledge ends at corners only, so ends, corners and the middles between them decide
    Height before = from;
    auto stops = kinksBetween(from, to);
    stops.push_back(to);
    bool known = knows(from);
    for (const Height stop : stops) {
        known = known && knows(before + (stop - before) / 2) && knows(stop);
        before = stop;
    }
    return known;
}

Force PullSum::total(Height h) const
{
    Force sum = m_iron;
    each([&](const HungItem& item) { sum += hung::pull(item, h); });
    return sum;
}

Force PullSum::ofSide(Side side, Height h) const
{
    Force sum;
    for (const HungItem& item : side == Side::Left ? m_setup.left : m_setup.right)
        sum += hung::pull(item, h);
    return sum;
}

Stiffness PullSum::slope(Height h) const
{
    Stiffness sum;
    each([&](const HungItem& item) { sum += hung::slope(item, h); });
    return sum;
}

Stiffness PullSum::steepest(Height h) const
{
    const bool atKink = std::any_of(m_kinks.begin(), m_kinks.end(), [&](Height k) { return std::abs((k - h).si()) <= hair; });
    if (!atKink)
        return slope(h);
    const Stiffness below = slope(h - metres(2 * hair)), above = slope(h + metres(2 * hair));
    return std::abs(below.si()) > std::abs(above.si()) ? below : above;
}

Force PullSum::mean(Height from, Height to) const
{
    Force sum = m_iron;
    each([&](const HungItem& item) { sum += hung::meanPull(item, from, to); });
    return sum;
}

Mass PullSum::movingMass(Height h) const
{
    Mass sum = m_setup.bar + m_setup.collars + m_setup.plates;
    each([&](const HungItem& item) { sum += hung::movingMass(item, h); });
    return sum;
}

Force PullSum::alongFloor(Height h) const
{
    Force sum;
    each([&](const HungItem& item) { sum += hung::pullAlongFloor(item, h); });
    return sum;
}

CurveSample PullSum::sample(Height h) const
{
    CurveSample s;
    s.height = h;
    s.iron = m_iron;
    s.total = m_iron;
    each([&](const HungItem& item) {
        const Force pull = hung::pull(item, h);
        (hung::kind(item) == PullKind::Chain ? s.chain : hung::kind(item) == PullKind::Band ? s.band : s.help) += pull;
        s.total += pull;
        s.known = s.known && hung::knows(item, h);
    });
    const Uncertainty uncertainty = uncertaintyAt(h);
    s.u = newtons(uncertainty.standard());
    s.giveOrTake = s.u.si() > 0 ? coverageFactor95ForPictures(uncertainty.degreesOfFreedom()) * s.u : Force{};
    return s;
}

Uncertainty PullSum::uncertaintyAt(Height h) const
{
    Uncertainty sum;
    each([&](const HungItem& item) {
        sum.add(hung::effect(item, h));
        addOwn(sum, hung::ownUncertainty(item, h).si());
    });
    addOwn(sum, weight(m_setup.uIron).si());
    addOwn(sum, (steepest(h) * m_setup.path.uMark).si());
    return sum;
}

Uncertainty PullSum::meanUncertainty(Height from, Height to) const
{
    Uncertainty sum;
    each([&](const HungItem& item) {
        sum.add(hung::meanEffect(item, from, to));
        addOwn(sum, hung::meanOwnUncertainty(item, from, to).si());
    });
    addOwn(sum, weight(m_setup.uIron).si());
    const double m = mean(from, to).si(), path = (to - from).si();
    addOwn(sum, std::hypot(m - total(from).si(), total(to).si() - m) / path * m_setup.path.uMark.si());
    return sum;
}

Reading PullSum::at(Height h) const
{
    return reading(total(h), uncertaintyAt(h));
}

Reading PullSum::meanReading(Height from, Height to) const
{
    return reading(mean(from, to), meanUncertainty(from, to));
}

std::vector<Height> PullSum::kinksBetween(Height from, Height to) const
{
    std::vector<Height> out;
    for (const Height k : m_kinks)
        if ((k - from).si() > hair && (to - k).si() > hair)
            out.push_back(k);
    return out;
}

}
