// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/strength/percentof.h"

namespace steelyard {

std::optional<NoPercent> whyNoPercent(const std::optional<DayMaximum>& maximum)
{
    if (!maximum)
        return NoPercent::NotTested;
    if (!maximum->test.conditions.isPlainIron())
        return NoPercent::OtherConditions;
    return maximum->test.conditions.bodyMass ? std::optional(NoPercent::BodyInIt) : std::nullopt;
}

std::vector<PercentAt> percentsOf(const WeighedUp& weighed, const std::optional<DayMaximum>& maximum)
{
    std::vector<PercentAt> all;
    if (!weighed.curve || whyNoPercent(maximum))
        return all;
    const auto add = [&](TargetPlace place, const std::optional<Reading>& reading) {
        if (!reading)
            return;
        const auto reached = percentReached({asMass(reading->value), asMass(reading->u)}, maximum->max.middle);
        if (reached)
            all.push_back({place, *reached});
    };
    add(TargetPlace::Bottom, weighed.curve->bottom);
    add(TargetPlace::Zone, weighed.curve->zone);
    add(TargetPlace::Top, weighed.curve->top);
    add(TargetPlace::Mean, weighed.curve->mean);
    return all;
}

}
