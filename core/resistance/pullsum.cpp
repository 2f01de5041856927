// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/pullsum.h"

#include <algorithm>
#include <array>
#include <boost/container/small_vector.hpp>
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

}

/// All that is asked at one height: the pulls, and u with its degrees of freedom.
struct PullSum::AtHeight {
    CurveSample sample;
    double degreesOfFreedom = knownExactly;
};

PullSum::PullSum(const Setup& setup) : m_setup(setup), m_iron(weight(setup.bar + setup.collars + setup.plates))
{
    each([this](const HungItem& item) { hung::appendKinks(item, m_kinks); });
    std::sort(m_kinks.begin(), m_kinks.end());
    m_kinks.erase(std::unique(m_kinks.begin(), m_kinks.end(), [](Height a, Height b) { return (b - a).si() < hair; }), m_kinks.end());
    numberSources();
}

void PullSum::numberSources()
{
    each([this](const HungItem& item) {
        // what an effect comes from, and how well it is known, is the same at every height
        const Effect effect = hung::effect(item, m_setup.path.top);
        const auto known = effect.source == ownSource ? m_sources.end() : std::find_if(m_sources.begin(), m_sources.end(), [&](const Source& s) { return s.id == effect.source; });
        m_sourceOf.push_back(static_cast<std::size_t>(known - m_sources.begin()));
        if (known == m_sources.end())
            m_sources.push_back({effect.source, effect.degreesOfFreedom});
        else
            known->degreesOfFreedom = std::min(known->degreesOfFreedom, effect.degreesOfFreedom);
    });
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

BothSides PullSum::sides(Height h) const
{
    BothSides sum{m_iron, {}, {}, {}, {}};
    const auto add = [&](const std::vector<HungItem>& items, Force& pull) {
        for (const HungItem& item : items) {
            const HungState state = hung::stateAt(item, h);
            pull += state.pull;
            sum.alongFloor += state.alongFloor;
            sum.slope += state.slope;
        }
    };
    add(m_setup.left, sum.left);
    add(m_setup.right, sum.right);
    return sum;
}

Stiffness PullSum::slope(Height h) const
{
    Stiffness sum;
    each([&](const HungItem& item) { sum += hung::slope(item, h); });
    return sum;
}

bool PullSum::atKink(Height h) const
{
    const auto next = std::lower_bound(m_kinks.begin(), m_kinks.end(), h - metres(hair));
    return next != m_kinks.end() && (*next - h).si() <= hair;
}

Stiffness PullSum::steepest(Height h) const
{
    if (!atKink(h))
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

PullSum::AtHeight PullSum::lookedAt(Height h) const
{
    using Amount = std::array<Force, Effect::components>;
    AtHeight seen;
    CurveSample& s = seen.sample;
    s.height = h;
    s.iron = m_iron;
    s.total = m_iron;
    boost::container::small_vector<Amount, 12> amounts(m_sources.size(), Amount{});
    Stiffness slope;
    double own = 0;
    std::size_t i = 0;
    each([&](const HungItem& item) {
        const HungState state = hung::stateAt(item, h);
        const PullKind kind = hung::kind(item);
        (kind == PullKind::Chain ? s.chain : kind == PullKind::Band ? s.band : s.help) += state.pull;
        s.total += state.pull;
        s.known = s.known && state.known;
        slope += state.slope;
        own += state.own.si() * state.own.si();
        Amount& sum = amounts[m_sourceOf[i++]];
        for (std::size_t c = 0; c < Effect::components; ++c)
            sum[c] += state.effect[c];
    });
    const double iron = weight(m_setup.uIron).si(), mark = ((atKink(h) ? steepest(h) : slope) * m_setup.path.uMark).si();
    double squares = own + iron * iron + mark * mark, weighted = 0;
    for (std::size_t k = 0; k < amounts.size(); ++k) {
        const double first = amounts[k][0].si(), second = amounts[k][1].si(), floor = amounts[k][2].si();
        const double estimated = first * first + second * second;
        squares += estimated + floor * floor;
        weighted += estimated * estimated / m_sources[k].degreesOfFreedom;
    }
    s.u = newtons(std::sqrt(squares));
    seen.degreesOfFreedom = weighted > 0 ? squares * squares / weighted : knownExactly;
    return seen;
}

CurveSample PullSum::sample(Height h) const
{
    AtHeight seen = lookedAt(h);
    if (seen.sample.u.si() > 0)
        seen.sample.giveOrTake = coverageFactor95ForPictures(seen.degreesOfFreedom) * seen.sample.u;
    return seen.sample;
}

Reading PullSum::at(Height h) const
{
    const AtHeight seen = lookedAt(h);
    const Force u = seen.sample.u;
    return {seen.sample.total, u, u.si() > 0 ? coverageFactor95(seen.degreesOfFreedom) * u : Force{}, seen.degreesOfFreedom};
}

Uncertainty PullSum::meanWithoutMarks(Height from, Height to) const
{
    Uncertainty sum;
    each([&](const HungItem& item) {
        sum.add(hung::meanEffect(item, from, to));
        addOwn(sum, hung::meanOwnUncertainty(item, from, to).si());
    });
    addOwn(sum, weight(m_setup.uIron).si());
    return sum;
}

Reading PullSum::meanReading(Height from, Height to) const
{
    Uncertainty sum = meanWithoutMarks(from, to);
    const Force value = mean(from, to);
    const double m = value.si(), path = (to - from).si();
    addOwn(sum, std::hypot(m - total(from).si(), total(to).si() - m) / path * m_setup.path.uMark.si());
    return {value, newtons(sum.standard()), newtons(sum.giveOrTake()), sum.degreesOfFreedom()};
}

Energy PullSum::workGiveOrTake(Height from, Height to) const
{
    Uncertainty sum = meanWithoutMarks(from, to);
    const Length path = to - from;
    addOwn(sum, std::hypot(total(from).si(), total(to).si()) / path.si() * m_setup.path.uMark.si());
    return newtons(sum.giveOrTake()) * path;
}

Force PullSum::endsGiveOrTake(Height from, Height to) const
{
    Uncertainty sum;
    each([&](const HungItem& item) {
        Effect both = hung::effect(item, from);
        const Effect there = hung::effect(item, to);
        for (std::size_t c = 0; c < Effect::components; ++c)
            both.amount[c] = (both.amount[c] + there.amount[c]) / 2;
        sum.add(both);
        // a band that stands in for its twin is out by the same share at both ends
        addOwn(sum, (hung::stateAt(item, from).own.si() + hung::stateAt(item, to).own.si()) / 2);
    });
    addOwn(sum, weight(m_setup.uIron).si());
    addOwn(sum, std::hypot(steepest(from).si(), steepest(to).si()) / 2 * m_setup.path.uMark.si());
    return newtons(sum.giveOrTake());
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
