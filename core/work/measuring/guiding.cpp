// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/guiding.h"

#include "core/work/measuredkit.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace steelyard {

ChainGain chainGain(const ChainMeasurement& measurement)
{
    if (!chainFrom(measurement))
        return ChainGain::Nothing;
    if (measurement.by == ChainMeasuring::Gauged)
        return ChainGain::Weigh;
    constexpr double coarseShare = 0.01;
    const Mass mass = *measurement.mass, step = *measurement.scaleStep;
    return step > coarseShare * mass ? ChainGain::FinerScale : ChainGain::Nothing;
}

bool isLongLink(const ChainMeasurement& measurement)
{
    constexpr double shortest = 3.25;
    if (!measurement.wire || !measurement.pitch)
        return false;
    const Length wire = *measurement.wire, pitch = *measurement.pitch;
    return pitch > shortest * wire;
}

std::optional<Length> longestUse(const SetupRecord& setup, const std::optional<LiftPath>& path, const RecordId& band)
{
    if (!path || band.isNone())
        return std::nullopt;
    std::optional<Length> longest;
    for (const HungRecord& hung : setup.hung) {
        const auto* placing = std::get_if<BandPlacing>(&hung.placing);
        if (hung.item != band || !placing)
            continue;
        for (const Height bar : {path->bottom, path->top}) {
            const Length rise = bar - placing->anchorHeight;
            Length whole = metres(std::hypot(rise.si(), placing->offset.si()));
            if (placing->doubled)
                whole = 2 * whole + std::numbers::pi / 2 * placing->handle;
            longest = std::max(longest.value_or(Length{}), whole);
        }
    }
    return longest;
}

std::vector<LiftId> similarLifts(LiftId lift)
{
    static const std::vector<std::vector<LiftId>> groups{{{1}, {2}}, {{3}, {4}}, {{8}, {9}, {19}}, {{14}, {15}}, {{21}, {22}}};
    for (std::vector<LiftId> group : groups)
        if (std::erase(group, lift) > 0)
            return group;
    return {};
}

std::optional<Length> measureUpTo(const BandMeasurement& measurement, const std::optional<Length>& longestUse)
{
    if (!measurement.rest)
        return std::nullopt;
    const Length rest = *measurement.rest;
    // a set-up in which it hangs slack says nothing of how far it will be used
    return longestUse && *longestUse > 1.1 * rest ? *longestUse : 2 * rest;
}

std::optional<Mass> massFor(const BandMeasurement& measurement, Length length)
{
    if (!measurement.rest)
        return std::nullopt;
    const Length rest = *measurement.rest;
    const auto points = pointsOnFit(measurement);
    if (points.empty() || length <= rest)
        return std::nullopt;
    if (const auto fit = bandFitFrom(measurement); fit && fit->rises() && points.size() >= 2)
        return asMass(fit->pull(length));
    const auto longest = std::max_element(points.begin(), points.end(), [](const BandPoint& a, const BandPoint& b) { return a.length < b.length; });
    if (longest->length <= rest)
        return std::nullopt;
    return asMass(((length - rest) / (longest->length - rest)) * longest->pull);
}

}
