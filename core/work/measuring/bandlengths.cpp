// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/bandlengths.h"

#include "core/work/measuredkit.h"

#include <algorithm>

namespace steelyard {

namespace {

/// Whether a length was read within a twentieth of the way from rest to the furthest.
bool readNear(std::span<const BandPoint> points, Length length, Length way)
{
    return std::any_of(points.begin(), points.end(), [&](const BandPoint& point) {
        const Length apart = point.length > length ? point.length - length : length - point.length;
        return apart < 0.05 * way;
    });
}

std::pair<Length, Length> span(std::span<const BandPoint> points)
{
    const auto [least, most] = std::minmax_element(points.begin(), points.end(), [](const BandPoint& a, const BandPoint& b) { return a.length < b.length; });
    return {least->length, most->length};
}

}

std::optional<LengthAdvice> nextLength(const BandMeasurement& measurement, Length furthest, double goodShare)
{
    if (!measurement.rest || measurement.rest->si() <= 0 || !(furthest > *measurement.rest))
        return std::nullopt;
    const Length rest = *measurement.rest, way = furthest - rest;
    const auto points = pointsOnFit(measurement);
    if (points.size() < fewestLengthCount) {
        for (const double part : {0.25, 0.5, 1.0})
            if (const Length length = rest + part * way; !readNear(points, length, way))
                return LengthAdvice{length, LengthReason::Spread};
    }
    if (points.size() >= mostLengthCount)
        return std::nullopt;
    const auto fit = bandFitFrom(measurement);
    if (!fit)
        return std::nullopt;
    if (!fit->knows(furthest))
        return LengthAdvice{furthest, LengthReason::Further};
    constexpr int places = 40;
    Force widest = goodShare * fit->pull(furthest);
    std::optional<LengthAdvice> advice;
    for (int i = 1; i <= places; ++i) {
        const Length length = rest + static_cast<double>(i) / places * way;
        const Force give = bandGiveOrTake(*fit, length);
        if (give > widest && !readNear(points, length, way)) {
            widest = give;
            advice = LengthAdvice{length, LengthReason::Weakest};
        }
    }
    return advice;
}

std::optional<WayBack> wayBack(const BandMeasurement& measurement)
{
    const auto on = pointsOnFit(measurement), off = pointsOnTheWayBack(measurement);
    if (!measurement.rest || on.empty() || off.empty())
        return std::nullopt;
    const auto loading = bandFitFrom(measurement);
    const auto unloading = measurement.model ? BandFit::with(*measurement.model, *measurement.rest, off) : BandFit::best(*measurement.rest, off);
    if (!loading || !unloading)
        return std::nullopt;
    const auto [onLeast, onMost] = span(on);
    const auto [offLeast, offMost] = span(off);
    const Length from = std::max(onLeast, offLeast), to = std::min(onMost, offMost);
    if (from > to)
        return std::nullopt;
    const Length middle = from + (to - from) / 2;
    return WayBack{middle, loading->pull(middle), unloading->pull(middle)};
}

}
