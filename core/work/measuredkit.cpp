// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuredkit.h"

#include <cmath>

namespace steelyard {

namespace {

Error missing(const char* what) { return {Refusal::NotThere, what}; }

bool counts(const BandHanging& h, bool unloading) { return h.mass && h.length && !h.leftOut && h.unloading == unloading; }
bool onFit(const BandHanging& h) { return counts(h, false); }

std::vector<BandPoint> pointsOf(const BandMeasurement& measurement, bool unloading)
{
    std::vector<BandPoint> points;
    for (const BandHanging& h : measurement.hangings)
        if (counts(h, unloading))
            points.push_back({*h.length, weight(*h.mass)});
    return points;
}

}

Result<Chain> chainFrom(const ChainMeasurement& m, SourceId source)
{
    if (!m.length)
        return missing("length");
    if (!std::isfinite(m.length->si()) || m.length->si() <= 0)
        return Error{Refusal::OutOfRange, "length"};
    Chain chain;
    chain.length = *m.length;
    chain.measurement = source;
    chain.pitch = m.pitch;
    if (m.by == ChainMeasuring::Weighed) {
        if (!m.mass)
            return missing("mass");
        if (!m.scaleStep)
            return missing("scale step");
        const auto density = weighedChain(*m.mass, *m.length, *m.scaleStep);
        if (!density)
            return density.error();
        chain.perLength = *density;
        return chain;
    }
    if (!m.wire)
        return missing("wire");
    if (!m.pitch)
        return missing("pitch");
    if (!m.innerWidth)
        return missing("inner width");
    const auto density = gaugedChain(*m.wire, *m.pitch, *m.innerWidth);
    if (!density)
        return density.error();
    chain.perLength = *density;
    return chain;
}

std::vector<BandPoint> pointsOnFit(const BandMeasurement& measurement)
{
    return pointsOf(measurement, false);
}

std::vector<BandPoint> pointsOnTheWayBack(const BandMeasurement& measurement)
{
    return pointsOf(measurement, true);
}

Result<BandFit> bandFitFrom(const BandMeasurement& measurement)
{
    if (!measurement.rest)
        return missing("rest length");
    const auto points = pointsOnFit(measurement);
    if (points.empty())
        return missing("points");
    return measurement.model ? BandFit::with(*measurement.model, *measurement.rest, points)
                             : BandFit::best(*measurement.rest, points);
}

Force bandGiveOrTake(const BandFit& fit, Length length)
{
    // hung straight over an anchor on the floor, a bar at this height stretches it to this length
    const auto upright = HungBand::of(Band{fit}, BandHang{});
    if (!upright)
        return Force{};
    Uncertainty sum;
    sum.add(upright->effectAt(length));
    return newtons(sum.giveOrTake());
}

std::optional<OddPoint> oddHanging(const BandMeasurement& measurement)
{
    if (!measurement.rest)
        return std::nullopt;
    auto odd = oddPoint(measurement.model, *measurement.rest, pointsOnFit(measurement));
    if (!odd)
        return std::nullopt;
    std::size_t seen = 0;
    for (std::size_t i = 0; i < measurement.hangings.size(); ++i) {
        if (!onFit(measurement.hangings[i]))
            continue;
        if (seen++ == odd->index) {
            odd->index = i;
            return odd;
        }
    }
    return std::nullopt;
}

Result<PlateLoads> loadsOf(const BarRecord& bar)
{
    std::vector<PlateStock> stock;
    for (const PlatesHere& p : bar.stock)
        stock.push_back({p.type, p.count});
    return PlateLoads::of(stock, bar.bar + bar.collars, bar.sleeve);
}

Mass plateUncertainty(const BarRecord& bar, Mass plates)
{
    constexpr double eitherWay = 0.02;
    return bar.trust == PlateTrust::Unweighed ? eitherWay / std::sqrt(3.0) * plates : Mass{};
}

}
