// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/strength/setupramp.h"

#include "core/work/asking/ironloads.h"
#include "core/work/weighup.h"

#include <cmath>

namespace steelyard {

namespace {

std::optional<Reading> readingAt(const PullCurve& curve, TargetPlace place)
{
    switch (place) {
    case TargetPlace::Bottom: return curve.bottom;
    case TargetPlace::Zone: return curve.zone;
    case TargetPlace::Top: return curve.top;
    case TargetPlace::Mean: break;
    }
    return curve.mean;
}

}

RampWanted RampWanted::usual()
{
    RampWanted wanted;
    for (const double share : usualRampShares)
        wanted.percents.push_back(static_cast<int>(std::lround(100 * share)));
    return wanted;
}

bool canStep(const RampWanted& wanted, std::size_t index, bool up)
{
    const auto& all = wanted.percents;
    if (index >= all.size())
        return false;
    const int next = all[index] + (up ? rampStepPercent : -rampStepPercent);
    const int above = index + 1 < all.size() ? all[index + 1] : 100, below = index > 0 ? all[index - 1] : 0;
    return next > below && next < above;
}

RampWanted stepped(RampWanted wanted, std::size_t index, bool up)
{
    if (canStep(wanted, index, up))
        wanted.percents[index] += up ? rampStepPercent : -rampStepPercent;
    return wanted;
}

Result<SetupRamp> setupRamp(const SetupRecord& setup, std::span<const KitItem> kit, const BarMarks& marks, const RampWanted& wanted)
{
    const WeighedUp weighed = weighUp(setup, kit, marks, {}, 0);
    if (!weighed.setup || !weighed.curve || !weighed.load || weighed.error)
        return weighed.error.value_or(Error{Refusal::NotThere, "pull"});
    const auto working = readingAt(*weighed.curve, wanted.place);
    if (!working)
        return Error{wanted.place == TargetPlace::Zone && !weighed.path->zoneFrom ? Refusal::HeightsOutOfOrder : Refusal::NotThere, wanted.place == TargetPlace::Zone ? "sticking zone" : "pull"};
    auto loads = ironLoads(setup.bar, marks);
    if (!loads)
        return loads.error();
    RampQuestion question;
    question.loads = std::move(*loads);
    // the way up ends at what hangs
    std::erase_if(question.loads, [&](const IronLoad& iron) { return iron.load.total > weighed.load->total; });
    question.collars = setup.bar.collars;
    question.left = weighed.setup->left;
    question.right = weighed.setup->right;
    question.place = wanted.place;
    question.working = working->value;
    for (const int percent : wanted.percents)
        question.shares.push_back(percent / 100.0);
    auto ramp = warmUpRamp(question);
    if (!ramp)
        return ramp.error();
    SetupRamp out;
    const auto loadOf = [&](std::size_t index) -> const PlateLoad& { return question.loads[index].load; };
    PlateLoad before;
    for (const RampStep& step : ramp->steps) {
        const PlateLoad& load = loadOf(step.loadIndex);
        out.steps.push_back({step, load, changeBetween(before, load)});
        before = load;
    }
    out.working = *working;
    out.workingLoad = *weighed.load;
    out.toWorking = changeBetween(before, *weighed.load);
    out.least = ramp->least;
    out.leastLoad = loadOf(ramp->leastLoadIndex);
    return out;
}

}
