// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/implements/cap.h"

#include "core/measure/conditions.h"

#include <algorithm>

namespace steelyard {

Result<LoadCap> LoadCap::of(std::span<const Estimate<Mass>> liftEstimates, double shareOfLift)
{
    if (liftEstimates.empty())
        return Error{Refusal::TooFewPoints, "lift"};
    Mass lowest = kilograms(std::numeric_limits<double>::infinity());
    for (const Estimate<Mass>& estimate : liftEstimates) {
        const Mass end = estimate.lowest();
        // also where a give-or-take is wider than the estimate: then nothing is known of the lift
        if (!isPositive(estimate) || !(end.si() > 0))
            return Error{Refusal::OutOfRange, "lift"};
        lowest = std::min(lowest, end);
    }
    if (!(shareOfLift > 0 && shareOfLift <= greatestShareOfLift))
        return Error{Refusal::OutOfRange, "share"};
    return LoadCap(shareOfLift * lowest);
}

CapAnswer heldAgainst(const std::optional<LoadCap>& cap, const std::optional<Estimate<Mass>>& load)
{
    if (!load || !isPositive(*load))
        return {};
    CapAnswer answer;
    answer.unfavourable = load->highest();
    if (!cap) {
        answer.verdict = CapVerdict::CapUnknown;
        return answer;
    }
    answer.room = cap->mass() - *answer.unfavourable;
    if (answer.room->si() >= 0)
        answer.verdict = CapVerdict::Under;
    else
        answer.verdict = load->value <= cap->mass() ? CapVerdict::MayBeOver : CapVerdict::Over;
    return answer;
}

}
