// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/asking/herstrength.h"

#include "core/measure/uncertainty.h"

#include <algorithm>

namespace steelyard {

std::vector<IsometricPull> pullsThatCount(std::span<const IsometricPull> pulls, const LiftId& lift)
{
    std::vector<IsometricPull> own;
    std::copy_if(pulls.begin(), pulls.end(), std::back_inserter(own), [&](const IsometricPull& pull) { return pull.lift == lift; });
    std::stable_sort(own.begin(), own.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    if (!own.empty())
        std::erase_if(own, [last = own.back().day](const IsometricPull& pull) { return pull.day < last - pullsTogether; });
    return own;
}

Result<StrengthCurve> strengthOf(std::span<const IsometricPull> pulls)
{
    std::vector<IsometricReading> readings;
    for (const IsometricPull& pull : pulls) {
        const double step = pull.scaleStep ? weight(pull.scaleStep->quantity()).si() : 0;
        readings.push_back({pull.height, weight(pull.pull), newtons(scaleReadingUncertainty(step, 0))});
    }
    return StrengthCurve::of(readings);
}

}
