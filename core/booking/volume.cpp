// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/booking/volume.h"

#include "core/measure/conditions.h"

#include <algorithm>
#include <array>

namespace steelyard {

namespace {

using Known = std::optional<Estimate<Mass>>;

Estimate<Mass> withoutHelp(const Estimate<Mass>& load)
{
    return load.number() > 0 ? load : Estimate<Mass>{};
}

void add(Known& sum, int reps, const Known& load)
{
    if (!load)
        sum.reset();
    else if (sum)
        addTo(*sum, *load, reps);
}

template <typename Each>
PathLoad eachOf(const PathLoad& load, const Each& each)
{
    const auto ifKnown = [&each](const Known& end) { return end ? Known(each(*end)) : Known{}; };
    return {each(load.mean), ifKnown(load.bottom), ifKnown(load.top)};
}

void add(Tonnage& tonnage, int reps, const PathLoad& load)
{
    if (reps == 0)
        return;
    tonnage.reps += reps;
    addTo(tonnage.mean, load.mean, reps);
    add(tonnage.bottom, reps, load.bottom);
    add(tonnage.top, reps, load.top);
}

/// Reps with one load, into the phase they were done in.
void add(Tonnage& bare, std::optional<Tonnage>& withBody, const LiftedSet& set, int reps, const PathLoad& load)
{
    if (reps == 0)
        return;
    add(bare, reps, eachOf(load, withoutHelp));
    const bool isBodyKnown = set.bodyInLoad == BodyInLoad::No || (set.bodyInLoad == BodyInLoad::Whole && set.body);
    if (!isBodyKnown)
        withBody.reset();
    else if (withBody)
        add(*withBody, reps, set.bodyInLoad == BodyInLoad::No ? load : eachOf(load, [&set](const Estimate<Mass>& m) { return sumOf(m, *set.body); }));
}

void add(PhaseVolume& volume, const LiftedSet& set)
{
    const int heavier = set.lowering ? set.lowering->reps : 0;
    add(volume.up, volume.upWithBody, set, set.reps, set.load);
    add(volume.down, volume.downWithBody, set, std::max(0, set.reps - heavier), set.load);
    if (set.lowering)
        add(volume.down, volume.downWithBody, set, heavier, set.lowering->load);
}

std::optional<Error> wrongLoad(const PathLoad& load, const LiftedSet& set)
{
    const bool isBodyLoad = set.bodyInLoad != BodyInLoad::No;
    const double least = !isBodyLoad ? 0 : set.body ? -set.body->number() : -std::numeric_limits<double>::infinity();
    for (const Known& part : std::array{Known(load.mean), load.bottom, load.top})
        if (part)
            if (auto wrong = broken({{isFinite(*part) && part->number() >= least, "load"}}))
                return wrong;
    return std::nullopt;
}

std::optional<Error> wrongSet(const LiftedSet& set)
{
    if (auto wrong = broken({{isCount(set.reps), "reps"}, {!set.lowering || isCount(set.lowering->reps), "lowered reps"}, {!set.body || isPositive(*set.body), "body mass"}}))
        return wrong;
    if (auto wrong = wrongLoad(set.load, set))
        return wrong;
    return set.lowering ? wrongLoad(set.lowering->load, set) : std::nullopt;
}

PhaseVolume& ofLegs(BookedVolume& booked, Limbs legs)
{
    return legs == Limbs::Left ? booked.left : legs == Limbs::Right ? booked.right : booked.bothLegs;
}

}

Result<BookedVolume> bookedVolume(std::span<const LiftedSet> sets)
{
    BookedVolume booked;
    for (const LiftedSet& set : sets) {
        if (const auto wrong = wrongSet(set))
            return *wrong;
        add(booked.all, set);
        add(ofLegs(booked, set.legs), set);
    }
    return booked;
}

}
