// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/implements/sledwork.h"

#include "core/work/implements/implementmass.h"
#include "core/work/records/seasonbook.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

/// Sources of what is not the sled's own mass, behind those of one thing.
constexpr SourceId ofSled{sourceCountOfOne}, ofPlates{1 + sourceCountOfOne}, ofScale{2 + sourceCountOfOne}, ofLane{3 + sourceCountOfOne}, ofStrap{4 + sourceCountOfOne},
    ofHook{5 + sourceCountOfOne};

Result<Estimate<Mass>> sledMass(const SledMeasurement& sled)
{
    const ImplementMass found = implementMass(sled);
    return found.mass ? Result<Estimate<Mass>>(weighedOnce(*found.mass, ofSled)) : Error{found.gap == MassGap::DoesNotFit ? Refusal::OutOfRange : Refusal::NotThere, "sled"};
}

Result<SledLoad> loadOf(const Estimate<Mass>& total, const SledMeasurement& sled, bool isBetweenRuns)
{
    const auto own = sledMass(sled);
    if (!own)
        return own.error();
    if (total.value < own->value)
        return Error{Refusal::OutOfRange, "sled"};
    return SledLoad{total, sumOf(total, times(*own, -1)), isBetweenRuns};
}

}

const SledSurface* lastSurface(const SeasonBook& book, const RecordId& venue, const RecordId& sled, const std::string& name)
{
    const auto all = surfacesOf(book, venue, sled);
    const auto at = std::find_if(all.begin(), all.end(), [&name](const SledSurface* surface) { return surface->name == name; });
    return at == all.end() ? nullptr : *at;
}

std::vector<const SledSurface*> surfacesOf(const SeasonBook& book, const RecordId& venue, const RecordId& sled)
{
    std::vector<const SledSurface*> last;
    for (const SledSurface* surface : book.surfacesAt(venue))
        if (surface->sled == sled && (last.empty() || last.back()->name != surface->name))
            last.push_back(surface);
    return last;
}

Result<Estimate<Mass>> sledTotal(const SledMeasurement& sled, Mass added)
{
    auto own = sledMass(sled);
    if (!own || added == Mass{})
        return own;
    const auto plates = markedMass(added, markToleranceShare, ofPlates);
    return plates ? Result<Estimate<Mass>>(sumOf(*own, *plates)) : plates;
}

Result<Estimate<Angle>> strapAngle(const SledMeasurement& sled, const std::optional<Entered<Height>>& belt)
{
    if (!belt)
        return exactly(Angle{});
    if (!sled.strap || !sled.hook)
        return Error{Refusal::NotThere, sled.strap ? "hook" : "strap"};
    // hook and strap are the sled's, whoever tows it
    return towAngle(within(sled.strap->quantity(), uTape, ofStrap), within(belt->quantity(), uTape), within(sled.hook->quantity(), uTape, ofHook));
}

Result<SurfaceFriction> frictionOf(const SledSurface& surface, const SledMeasurement& sled)
{
    const Scale scale{surface.scaleStep ? surface.scaleStep->quantity() : Mass{}, 0, surface.scaleAccuracy ? surface.scaleAccuracy->quantity() : Mass{}, ofScale};
    std::vector<TowReading> readings;
    for (const TowRead& read : surface.readings) {
        const auto total = sledTotal(sled, read.added), shown = readingOf(scale, read.pull);
        if (!total || !shown)
            return total ? shown.error() : total.error();
        readings.push_back({*total, pullOf(*shown)});
    }
    const auto angle = strapAngle(sled, surface.hip);
    return angle ? frictionFromPulls(readings, *angle) : angle.error();
}

Result<Haul> haulOn(const SurfaceFriction& surface, const SledMeasurement& sled, const std::optional<Entered<Height>>& belt)
{
    const auto angle = strapAngle(sled, belt);
    return angle ? Result<Haul>(Haul{surface.friction, *angle, SledWay::Tow}) : angle.error();
}

Haul pushOn(const SurfaceFriction& surface, const Estimate<Angle>& down)
{
    return {surface.friction, down, SledWay::Push};
}

Result<SledPull> sledPullAt(const SledMeasurement& sled, Mass added, const SurfaceFriction& surface, const Haul& haul)
{
    const auto total = sledTotal(sled, added);
    if (!total)
        return total.error();
    const auto pull = sledPull(*total, haul);
    return pull ? Result<SledPull>(SledPull{*total, *pull, surface.covers(total->value)}) : pull.error();
}

std::vector<SledRunTimed> runsThatCount(std::span<const SledRunTimed* const> runs, const RunsOf& which, std::chrono::sys_days day)
{
    std::vector<SledRunTimed> those;
    for (const SledRunTimed* run : runs)
        if (run->sled == which.sled && run->venue == which.venue && run->surface == which.surface && run->way == which.way && run->day <= day)
            those.push_back(*run);
    std::stable_sort(those.begin(), those.end(), [](const SledRunTimed& a, const SledRunTimed& b) { return a.day < b.day; });
    if (!those.empty())
        std::erase_if(those, [last = those.back().day](const SledRunTimed& run) { return run.day < last - runsTogether; });
    return those;
}

Result<LoadSpeedLine> speedLineOf(std::span<const SledRunTimed> runs, const SledMeasurement& sled)
{
    std::vector<SledRun> timed;
    for (const SledRunTimed& run : runs) {
        const auto total = sledTotal(sled, run.added);
        if (!total)
            return total.error();
        const auto one = timedRun(*total, within(run.distance.quantity(), uTape, ofLane), within(Seconds(run.time.quantity()), stopwatchU));
        if (!one)
            return one.error();
        timed.push_back(*one);
    }
    return LoadSpeedLine::of(timed);
}

Result<SledLoad> loadForSpeedLoss(const LoadSpeedLine& line, const SledMeasurement& sled, double speedLossShare)
{
    const auto total = line.loadFor(speedLossShare);
    return total ? loadOf(*total, sled, line.covers(total->value)) : total.error();
}

Result<SledLoad> carriedTo(const SledLoad& load, const Haul& here, const Haul& there, const SledMeasurement& sledThere)
{
    const auto total = sameElsewhere(load.total, here, there);
    return total ? loadOf(*total, sledThere, load.isBetweenRuns) : total.error();
}

}
