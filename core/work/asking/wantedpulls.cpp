// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/asking/wantedpulls.h"

#include <algorithm>

namespace steelyard {

std::optional<Mass> WantedPulls::at(TargetPlace place) const
{
    if (!inPercent) {
        const auto mass = masses.find(place);
        return mass == masses.end() ? std::nullopt : std::optional(mass->second.quantity());
    }
    const auto percent = percents.find(place);
    if (percent == percents.end() || !oneRepMax)
        return std::nullopt;
    return percent->second / 100 * oneRepMax->quantity();
}

Force toleranceOf(Force wanted)
{
    return std::max(weight(kilograms(1)), 0.02 * (wanted < Force{} ? -wanted : wanted));
}

std::vector<HangTarget> targetsOf(const WantedPulls& wanted, const BarMarks& marks)
{
    std::vector<HangTarget> targets;
    for (const TargetPlace place : {TargetPlace::Bottom, TargetPlace::Zone, TargetPlace::Top, TargetPlace::Mean}) {
        const auto mass = wanted.at(place);
        if (mass && (place != TargetPlace::Zone || (marks.zoneFrom && marks.zoneTo)))
            targets.push_back({place, weight(*mass), toleranceOf(weight(*mass))});
    }
    return targets;
}

}
