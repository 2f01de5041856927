// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/itemorigin.h"

#include "core/resistance/band.h"
#include "core/work/measuredkit.h"

#include <algorithm>

namespace steelyard {

namespace {

const Length taped = metres(0.01), gauged = metres(0.0001);

/// What becomes of a number when one of its lengths is read a step longer.
template <typename Measurement, typename Number>
std::optional<double> moreBy(Length step, Measurement measurement, std::optional<Entered<Length>> Measurement::*entry, double now, const Number& number)
{
    if (!(measurement.*entry))
        return std::nullopt;
    measurement.*entry = Entered<Length>((measurement.*entry)->quantity() + step);
    const std::optional<double> then = number(measurement);
    return then && now != 0 ? std::optional(*then / now - 1) : std::nullopt;
}

std::optional<ItemOrigin> originOfChain(const ChainMeasurement& measurement)
{
    const auto chain = chainFrom(measurement);
    if (!chain)
        return std::nullopt;
    const MeasuredDensity& density = chain->perLength;
    ItemOrigin origin{ChainNumber{density.value, coverageFactor95(knownExactly) * density.u}, {}};
    const auto again = [](const ChainMeasurement& m) {
        const auto other = chainFrom(m);
        return other ? std::optional(other->perLength.value.si()) : std::nullopt;
    };
    const auto more = [&](Length step, std::optional<Entered<Length>> ChainMeasurement::*entry) { return moreBy(step, measurement, entry, density.value.si(), again); };
    if (measurement.by == ChainMeasuring::Weighed) {
        const double u = (density.u * chain->length).si(), step = scaleReadingUncertainty(measurement.scaleStep->si(), 0);
        const double ofStep = u > 0 ? std::min(1.0, step * step / (u * u)) : 0;
        origin.lines.push_back({ItemInput::ChainMass, 0, std::nullopt});
        origin.lines.push_back({ItemInput::ScaleStep, ofStep, std::nullopt});
        constexpr double hair = 1e-9;
        if (ofStep < 1 - hair)
            origin.lines.push_back({ItemInput::ScaleError, 1 - ofStep, std::nullopt});
        origin.lines.push_back({ItemInput::ChainLength, 0, more(taped, &ChainMeasurement::length)});
        return origin;
    }
    origin.lines = {{ItemInput::Wire, 0, more(gauged, &ChainMeasurement::wire)},
                    {ItemInput::Pitch, 0, more(gauged, &ChainMeasurement::pitch)},
                    {ItemInput::InnerWidth, 0, more(gauged, &ChainMeasurement::innerWidth)},
                    {ItemInput::GaugedLength, 0, std::nullopt},
                    {ItemInput::Method, 1, std::nullopt}};
    return origin;
}

std::optional<ItemOrigin> originOfBand(const BandMeasurement& measurement)
{
    const auto fit = bandFitFrom(measurement);
    if (!fit)
        return std::nullopt;
    const Length at = fit->longestMeasured();
    const auto upright = HungBand::of(Band{*fit}, BandHang{});
    if (!upright)
        return std::nullopt;
    ItemOrigin origin{BandNumber{at, fit->pull(at), bandGiveOrTake(*fit, at), fit->points(), fit->model()}, {}};
    // hung straight over an anchor on the floor, a bar at this height stretches it to this length
    const auto amount = upright->effectAt(at).amount;
    const double floor = amount[2] * amount[2], all = amount[0] * amount[0] + amount[1] * amount[1] + floor;
    origin.lines.push_back({ItemInput::BandReadings, all > 0 ? 1 - floor / all : 0, std::nullopt});
    if (floor > 0)
        origin.lines.push_back({ItemInput::FewReadings, floor / all, std::nullopt});
    const auto again = [at](const BandMeasurement& m) {
        const auto other = bandFitFrom(m);
        return other ? std::optional(other->pull(at).si()) : std::nullopt;
    };
    // the same curve laid anew: another model would be another question
    BandMeasurement same = measurement;
    same.model = fit->model();
    origin.lines.push_back({ItemInput::BandRest, 0, moreBy(taped, same, &BandMeasurement::rest, fit->pull(at).si(), again)});
    return origin;
}

}

std::optional<ItemOrigin> originOf(const Measured& measured)
{
    if (const auto* chain = std::get_if<ChainMeasurement>(&measured))
        return originOfChain(*chain);
    if (const auto* band = std::get_if<BandMeasurement>(&measured))
        return originOfBand(*band);
    return std::nullopt;
}

}
