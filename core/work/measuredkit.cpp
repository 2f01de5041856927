// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuredkit.h"

#include <algorithm>
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
        const Mass accuracy = m.scaleAccuracy ? m.scaleAccuracy->quantity() : Mass{};
        const auto density = weighedChain(*m.mass, *m.length, *m.scaleStep, accuracy);
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

namespace {

/// The hung plates, each row of the stock with how many of it hang.
template <typename Each>
void eachHung(const BarRecord& bar, const PlateLoad& load, const Each& each)
{
    std::vector<PlateType> hanging = load.eachSide;
    hanging.insert(hanging.end(), load.eachSide.begin(), load.eachSide.end());
    for (const bool weighed : {false, true})
        for (const PlatesHere& row : bar.stock) {
            int count = 0;
            for (; row.weighed.has_value() == weighed && count < row.count; ++count) {
                const auto at = std::find(hanging.begin(), hanging.end(), row.type);
                if (at == hanging.end())
                    break;
                hanging.erase(at);
            }
            if (count > 0)
                each(row, count);
        }
}

}

Mass ironUncertainty(const BarRecord& bar, const PlateLoad& load)
{
    constexpr double eitherWay = 0.02;
    Mass scale = bar.barWeighed ? bar.barWeighed->u.quantity() : Mass{};
    eachHung(bar, load, [&scale](const PlatesHere& row, int count) {
        if (row.weighed)
            scale = scale + count * row.weighed->u.quantity();
    });
    return kilograms(std::hypot(scale.si(), eitherWay / std::sqrt(3.0) * ironKnown(bar, load).unweighed.si()));
}

IronKnown ironKnown(const BarRecord& bar, const PlateLoad& load)
{
    IronKnown known{Mass{}, bar.barWeighed.has_value()};
    eachHung(bar, load, [&](const PlatesHere& row, int count) {
        if (row.weighed)
            known.weighed = true;
        else if (bar.trust == PlateTrust::Unweighed)
            known.unweighed = known.unweighed + count * row.type.mass;
    });
    return known;
}

bool isOnTheBar(const BarRecord& bar, const PlateLoad& load, const RecordId& item)
{
    bool there = bar.barWeighed && bar.barWeighed->item == item;
    eachHung(bar, load, [&](const PlatesHere& row, int count) { there = there || (count > 0 && row.weighed && row.weighed->item == item); });
    return there;
}

}
