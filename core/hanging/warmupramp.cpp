// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/warmupramp.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace steelyard {

namespace {

/// Pulls so close are alike: the engine's own rounding.
constexpr Force alike = newtons(1e-9);

std::optional<Error> questionFault(const RampQuestion& question)
{
    if (!(question.working > Force{}) || !std::isfinite(question.working.si()))
        return Error{Refusal::OutOfRange, "working pull"};
    double before = 0;
    for (const double share : question.shares) {
        if (!(share > before && share <= 1))
            return Error{Refusal::OutOfRange, "share"};
        before = share;
    }
    if (question.loads.empty())
        return Error{Refusal::NotThere, "plates"};
    if (!std::all_of(question.loads.begin(), question.loads.end(), [&](const IronLoad& iron) { return stretchOf(iron.path, question.place).has_value(); }))
        return Error{Refusal::HeightsOutOfOrder, "sticking zone"};
    return std::nullopt;
}

/// A load that may be hung, and what pulls with it at the place.
struct Candidate {
    std::size_t loadIndex;
    Force pull;
};

Setup hungOn(const RampQuestion& question, const IronLoad& iron)
{
    Setup setup = setupOf(iron, question.collars, {});
    setup.left = question.left;
    setup.right = question.right;
    return setup;
}

/// What hangs pulls the same with each load that gives the same path, so that it is worked out once for each.
class HungPulls {
public:
    explicit HungPulls(const RampQuestion& question) : m_question(question) {}

    /// Nothing where it is not known all along the path.
    std::optional<Force> of(const IronLoad& iron)
    {
        const auto known = std::find_if(m_pulls.begin(), m_pulls.end(), [&](const auto& p) { return p.first == iron.path.bottom; });
        if (known != m_pulls.end())
            return known->second;
        const Setup setup = hungOn(m_question, iron);
        const PullSum sum(setup);
        const bool isKnown = !setupFault(setup) && sum.knowsAll(iron.path.bottom, iron.path.top);
        const auto pull = isKnown ? std::optional(readingOf(sum, iron.path, m_question.place).value - weight(iron.load.total)) : std::nullopt;
        m_pulls.emplace_back(iron.path.bottom, pull);
        return pull;
    }

private:
    const RampQuestion& m_question;
    std::vector<std::pair<Height, std::optional<Force>>> m_pulls;
};

Reading readingWith(const RampQuestion& question, std::size_t loadIndex)
{
    const IronLoad& iron = question.loads[loadIndex];
    const Setup setup = hungOn(question, iron);
    return readingOf(PullSum(setup), iron.path, question.place);
}

}

Result<WarmUpRamp> warmUpRamp(const RampQuestion& question)
{
    if (const auto wrong = questionFault(question))
        return *wrong;
    HungPulls hung(question);
    std::vector<Candidate> candidates;
    for (std::size_t i = 0; i < question.loads.size(); ++i)
        if (const auto pull = hung.of(question.loads[i]))
            candidates.push_back({i, *pull + weight(question.loads[i].load.total)});
    if (candidates.empty())
        return Error{Refusal::NotThere, "pull"};

    WarmUpRamp ramp;
    ramp.leastLoadIndex = candidates.front().loadIndex;
    ramp.least = readingWith(question, ramp.leastLoadIndex);
    std::size_t from = 0;
    for (const double share : question.shares) {
        RampStep step;
        step.share = share;
        step.wanted = share * question.working;
        std::size_t best = from;
        const auto miss = [&](std::size_t c) { return std::abs((candidates[c].pull - step.wanted).si()); };
        for (std::size_t c = from; c < candidates.size(); ++c)
            if (miss(c) < miss(best) - alike.si())
                best = c;
        step.loadIndex = candidates[best].loadIndex;
        step.reading = readingWith(question, step.loadIndex);
        step.isLeast = best == 0 && step.reading.value > step.wanted + alike;
        step.isAsBefore = !ramp.steps.empty() && ramp.steps.back().loadIndex == step.loadIndex;
        ramp.steps.push_back(step);
        from = best;
    }
    return ramp;
}

}
