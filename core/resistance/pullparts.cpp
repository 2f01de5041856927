// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/pullparts.h"

#include "core/resistance/pullsum.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

/// One item's share of a reading.
struct Share {
    Force pull;
    Effect effect;
    Force own;
};

/// Adds up shares by the measurement that they stem from.
class Sorter {
public:
    void add(PullKind kind, const Share& share)
    {
        const SourceId source = share.effect.source;
        auto at = source == ownSource ? m_sums.end() : std::find_if(m_sums.begin(), m_sums.end(), [&](const Sum& s) { return s.source == source; });
        if (at == m_sums.end())
            at = m_sums.insert(m_sums.end(), {source, kind, {}, {}, 0});
        at->pull += share.pull;
        at->own += share.own.si() * share.own.si();
        for (std::size_t c = 0; c < Effect::components; ++c)
            at->amount[c] += share.effect.amount[c];
    }
    [[nodiscard]] std::vector<PullPart> parts() const
    {
        std::vector<PullPart> parts;
        for (const Sum& s : m_sums) {
            double squares = s.own;
            for (const double amount : s.amount)
                squares += amount * amount;
            parts.push_back({s.source, s.kind, s.pull, newtons(std::sqrt(squares))});
        }
        std::stable_sort(parts.begin(), parts.end(), [](const PullPart& a, const PullPart& b) { return a.source < b.source; });
        return parts;
    }

private:
    struct Sum {
        SourceId source;
        PullKind kind;
        Force pull;
        std::array<double, Effect::components> amount{};
        double own = 0;
    };
    std::vector<Sum> m_sums;
};

template <typename ShareOf>
PullParts sorted(const Setup& setup, const ShareOf& shareOf)
{
    PullParts out;
    out.iron = weight(setup.bar + setup.collars + setup.plates);
    out.uIron = weight(setup.uIron);
    Sorter sorter;
    for (const auto* side : {&setup.left, &setup.right})
        for (const HungItem& item : *side)
            sorter.add(hung::kind(item), shareOf(item));
    out.parts = sorter.parts();
    return out;
}

Force sizeOf(double newton) { return newtons(std::abs(newton)); }

}

Force PullParts::total() const
{
    Force sum = iron;
    for (const PullPart& part : parts)
        sum += part.pull;
    return sum;
}

Force PullParts::u() const
{
    double squares = uIron.si() * uIron.si() + uMarks.si() * uMarks.si();
    for (const PullPart& part : parts)
        squares += part.u.si() * part.u.si();
    return newtons(std::sqrt(squares));
}

Result<PullParts> pullPartsAt(const Setup& setup, Height height)
{
    if (auto wrong = setupFault(setup))
        return *wrong;
    const PullSum sum(setup);
    if (!std::isfinite(height.si()) || height < Height{} || !sum.knows(height))
        return Error{Refusal::OutOfRange, "height"};
    PullParts out = sorted(setup, [height](const HungItem& item) {
        return Share{hung::pull(item, height), hung::effect(item, height), hung::stateAt(item, height).own};
    });
    out.uMarks = sizeOf((sum.steepest(height) * setup.path.uMark).si());
    return out;
}

Result<PullParts> pullPartsOfMean(const Setup& setup, Height from, Height to)
{
    if (auto wrong = setupFault(setup))
        return *wrong;
    const PullSum sum(setup);
    if (!(from < to) || from < Height{} || !std::isfinite(to.si()) || !sum.knowsAll(from, to))
        return Error{Refusal::OutOfRange, "height"};
    PullParts out = sorted(setup, [from, to](const HungItem& item) {
        return Share{hung::meanPull(item, from, to), hung::meanEffect(item, from, to), hung::meanOwnUncertainty(item, from, to)};
    });
    const double mean = sum.mean(from, to).si(), path = (to - from).si();
    out.uMarks = sizeOf(std::hypot(mean - sum.total(from).si(), sum.total(to).si() - mean) / path * setup.path.uMark.si());
    return out;
}

}
