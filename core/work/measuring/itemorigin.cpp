// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/itemorigin.h"

#include "core/resistance/band.h"
#include "core/work/implements/implementmass.h"
#include "core/work/measuredkit.h"
#include "core/work/measuring/aidkit.h"
#include "core/work/measuring/keptkit.h"
#include "core/work/measuring/machinekit.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

const Length taped = metres(0.01), ruled = metres(0.001), gauged = metres(0.0001);

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

/// The part of one u in the squares of all.
double shareOf(double part, double all)
{
    return all > 0 ? std::min(1.0, part * part / (all * all)) : 0;
}

std::optional<ItemOrigin> originOfAid(const AidMeasurement& measurement)
{
    const auto help = aidFrom(measurement);
    if (!help)
        return std::nullopt;
    const Length at = help->first();
    const Force pull = help->at(at).value_or(Force{}), u = help->uncertaintyAt(at).value_or(Force{});
    const double plates = shareOf(help->doubt().massShare * pull.si(), u.si());
    return ItemOrigin{AidNumber{at, pull, coverageFactor95(knownExactly) * u, aidReadingsThatCount(measurement).size()},
                      {{ItemInput::AidPlates, plates, std::nullopt}, {ItemInput::AidHeight, 1 - plates, std::nullopt}}};
}

std::optional<ItemOrigin> originOfMachine(const MachineMeasurement& measurement)
{
    const auto answer = answerOf(measurement);
    if (!answer)
        return std::nullopt;
    const std::size_t readings = machineReadingsThatCount(measurement).size();
    if (answer->greatestTorque) {
        const auto cam = camFrom(measurement);
        const Angle at = answer->greatestAngle;
        const Length radius = cam->radius(at).value_or(Length{});
        const double torque = answer->greatestTorque->value.newtonMetres, u = answer->greatestTorque->u.newtonMetres;
        const double stack = shareOf(uStackShare * torque, u), ruler = shareOf(camTorque(*measurement.stack, cam->doubt().radius).newtonMetres, u);
        return ItemOrigin{TorqueNumber{at, answer->greatestTorque->value, Torque{coverageFactor95(knownExactly) * u}, radius, readings},
                          {{ItemInput::Stack, stack, std::nullopt},
                           {ItemInput::Radius, ruler, radius.si() > 0 ? std::optional(ruled / radius) : std::nullopt},
                           {ItemInput::TurnedAngle, std::max(0.0, 1 - stack - ruler), std::nullopt}}};
    }
    const auto pull = machinePullFrom(measurement);
    const double scale = shareOf(pull->doubt().scale.si(), answer->uGreatestPull->si());
    return ItemOrigin{TravelNumber{answer->greatestTravel, *answer->greatestPull, coverageFactor95(knownExactly) * *answer->uGreatestPull, readings},
                      {{ItemInput::PullScale, scale, std::nullopt}, {ItemInput::Travel, 1 - scale, std::nullopt}}};
}

std::optional<ItemOrigin> originOfScale(const ScaleMeasurement& measurement)
{
    const auto check = checked(measurement);
    if (!check)
        return std::nullopt;
    // it was read twice, empty and under the mass, each time to its step
    const double u = std::hypot(1.0, 1.0) * scaleReadingUncertainty(measurement.step->si(), 0);
    return ItemOrigin{ScaleNumber{check->worst, kilograms(coverageFactor95(knownExactly) * u), check->worstAt, check->accuracy, measurement.readings.size()},
                      {{ItemInput::KnownMass, 0, std::nullopt}, {ItemInput::EmptyRead, 0.5, std::nullopt}, {ItemInput::KnownRead, 0.5, std::nullopt}}};
}

/// What each input of a mass is called among those of all things.
ItemInput inputOf(MassInput input)
{
    switch (input) {
    case MassInput::ScaleStep: return ItemInput::ScaleStep;
    case MassInput::ScaleError: return ItemInput::ScaleError;
    case MassInput::Mark: return ItemInput::MarkTaken;
    case MassInput::LiftPoint: return ItemInput::LiftPoint;
    case MassInput::FarContact: return ItemInput::FarContact;
    case MassInput::EndSpan:
    case MassInput::FirstInset:
    case MassInput::SecondInset: return ItemInput::EndSpan;
    case MassInput::SizeLength: return ItemInput::SizeLength;
    case MassInput::Across:
    case MassInput::SecondAcross: return ItemInput::SizeAcross;
    case MassInput::Gravity: return ItemInput::Gravity;
    case MassInput::Moisture: return ItemInput::Moisture;
    case MassInput::StuffDensity: return ItemInput::StuffDensity;
    case MassInput::Filled: return ItemInput::Filled;
    case MassInput::Depth: break;
    }
    return ItemInput::Depth;
}

/// By what each makes of the square of its u. What no two readings share is the scale's step.
std::vector<ItemInputLine> linesOf(const Estimate<Mass>& mass)
{
    std::vector<ItemInputLine> lines;
    const double u = mass.u().si();
    for (const Effect& effect : mass.uncertainty.effects()) {
        const ItemInput input = effect.source == ownSource ? ItemInput::ScaleStep : inputOf(static_cast<MassInput>(effect.source.value - sourceOf(MassInput::ScaleStep).value));
        const double share = shareOf(effect.standard(), u);
        const auto at = std::find_if(lines.begin(), lines.end(), [input](const ItemInputLine& line) { return line.input == input; });
        if (at == lines.end())
            lines.push_back({input, share, std::nullopt});
        else
            at->share = std::min(1.0, at->share + share);
    }
    return lines;
}

std::optional<ItemOrigin> originOfIron(const IronMeasurement& measurement)
{
    const auto check = checked(measurement);
    if (!check)
        return std::nullopt;
    if (measurement.ends) {
        ItemOrigin origin{IronNumber{check->each, coverageFactor95(knownExactly) * check->u, 1}, linesOf(*massByEnds(measurement).mass)};
        if (measurement.marked)
            origin.lines.push_back({ItemInput::IronMark, 0, std::nullopt});
        return origin;
    }
    const double ofStep = shareOf(scaleReadingUncertainty(measurement.step->si(), 0) / measurement.count, check->u.si());
    ItemOrigin origin{IronNumber{check->each, coverageFactor95(knownExactly) * check->u, measurement.count},
                      {{ItemInput::IronRead, 0, std::nullopt}, {ItemInput::ScaleStep, ofStep, std::nullopt}}};
    constexpr double hair = 1e-9;
    if (ofStep < 1 - hair)
        origin.lines.push_back({ItemInput::ScaleError, 1 - ofStep, std::nullopt});
    if (measurement.count > 1)
        origin.lines.push_back({ItemInput::IronCount, 0, std::nullopt});
    origin.lines.push_back({ItemInput::IronMark, 0, std::nullopt});
    return origin;
}

std::optional<ItemOrigin> originOfLead(const LeadMeasurement& measurement)
{
    const auto lead = checked(measurement);
    if (!lead)
        return std::nullopt;
    return ItemOrigin{LeadNumber{lead->length, coverageFactor95(knownExactly) * uBarMark}, {{ItemInput::LeadLength, 1, std::nullopt}, {ItemInput::LeadMass, 0, std::nullopt}}};
}

std::optional<ItemOrigin> originOfRack(const RackMeasurement& measurement)
{
    const auto rack = checked(measurement);
    if (!rack)
        return std::nullopt;
    const Length give = coverageFactor95(knownExactly) * uBarMark;
    if (!rack->highest)
        return ItemOrigin{RackNumber{0, rack->anchors.front(), give}, {{ItemInput::AnchorRead, 1, std::nullopt}}};
    const double height = rack->highest->si();
    ItemOrigin origin{RackNumber{rack->holeCount, *rack->highest, give}, {{ItemInput::FirstHole, 1, height > 0 ? std::optional(taped.si() / height) : std::nullopt}}};
    if (rack->holeCount > 1)
        origin.lines.push_back({ItemInput::HoleSpacing, 0, height > 0 ? std::optional((rack->holeCount - 1) * ruled.si() / height) : std::nullopt});
    return origin;
}

std::optional<ItemOrigin> originOfImplement(const Measured& measured)
{
    const ImplementMass found = implementMass(measured);
    if (!found.mass)
        return std::nullopt;
    return ItemOrigin{ImplementNumber{found.mass->value, found.mass->giveOrTake(), found.byMark}, linesOf(*found.mass)};
}

}

std::optional<ItemOrigin> originOf(const Measured& measured)
{
    if (isImplement(kindOf(measured)))
        return originOfImplement(measured);
    switch (kindOf(measured)) {
    case ItemKind::Chain: return originOfChain(std::get<ChainMeasurement>(measured));
    case ItemKind::Band: return originOfBand(std::get<BandMeasurement>(measured));
    case ItemKind::Aid: return originOfAid(std::get<AidMeasurement>(measured));
    case ItemKind::Machine: return originOfMachine(std::get<MachineMeasurement>(measured));
    case ItemKind::Scale: return originOfScale(std::get<ScaleMeasurement>(measured));
    case ItemKind::Iron: return originOfIron(std::get<IronMeasurement>(measured));
    case ItemKind::Lead: return originOfLead(std::get<LeadMeasurement>(measured));
    default: break;
    }
    return originOfRack(std::get<RackMeasurement>(measured));
}

}
