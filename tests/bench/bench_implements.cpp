// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/booking/counts.h"
#include "core/booking/sessionload.h"
#include "core/booking/volume.h"
#include "core/implements/cap.h"
#include "core/implements/keg.h"
#include "core/implements/sled.h"
#include "core/implements/sledline.h"
#include "core/implements/solids.h"
#include "core/implements/tyre.h"
#include "core/implements/weighing.h"
#include "core/work/implements/figures.h"
#include "core/work/implements/sledwork.h"
#include "core/work/implements/whatishere.h"
#include "tests/bench/verdicts.h"
#include "tests/core/work/implements/pitch.h"

#include <benchmark/benchmark.h>

#include <vector>

using namespace steelyard;

namespace {

const Scale hanging{kilograms(0.5), 0.01, {}, SourceId{1}};

Estimate<Mass> shown(double mass) { return *readingOf(hanging, kilograms(mass)); }
Estimate<Length> taped(double length) { return within(metres(length), metres(0.01)); }

/// A borrowed tyre: its mass, its whole flip, and whether this athlete may use it.
void tyreAnswer()
{
    const auto mass = *tyreMassFromEdge({shown(62), taped(0.70), taped(0.55)});
    const auto flip = *TyreFlip::of({mass, taped(1.4), taped(0.38)});
    benchmark::DoNotOptimize(flip.curve(200));
    const std::vector estimates{within(kilograms(150), kilograms(5)), within(kilograms(145), kilograms(6))};
    benchmark::DoNotOptimize(heldAgainst(*LoadCap::of(estimates), mass));
}

/// A log by its size and by both ends, and a keg by its level.
void solidAnswer()
{
    benchmark::DoNotOptimize(logMass({taped(2.2), taped(0.34), taped(0.27)}, {gravityOfSpecies(0.46), within(18.0, 4.0)}));
    benchmark::DoNotOptimize(massByEnds({shown(38), taped(0.1)}, {shown(29.5), taped(0.15)}, taped(2.2)));
    benchmark::DoNotOptimize(filledMass(shown(12.5), *contentLying({taped(0.19), taped(0.5), taped(0.14)}), exactly(Density::fromSi(998))));
}

/// A sled on two surfaces of twelve pulls each, a line of twelve runs, and a load carried from one to the other.
void sledAnswer()
{
    const auto strap = *towAngle(taped(5), taped(1), taped(0.2));
    std::vector<TowReading> here, there;
    std::vector<SledRun> runs;
    for (int i = 0; i < 12; ++i) {
        const double total = 30 + 6 * i, off = i % 2 == 0 ? 1.02 : 0.98;
        here.push_back({shown(total), pullOf(shown(0.45 * total * off))});
        there.push_back({shown(total), pullOf(shown(0.25 * total * off))});
        runs.push_back(*timedRun(shown(total), taped(20), within(Seconds{20 / (7.5 - 0.04 * total) * off}, stopwatchU)));
    }
    const auto home = frictionFromPulls(here, strap)->friction, away = frictionFromPulls(there, strap)->friction;
    const auto load = *LoadSpeedLine::of(runs)->loadFor(0.5);
    benchmark::DoNotOptimize(sameElsewhere(load, {home, strap}, {away, strap}));
}

/// A session of two hundred sets and sixty carries, and its week.
void bookingAnswer()
{
    std::vector<LiftedSet> sets;
    for (std::uint64_t i = 0; i < 200; ++i) {
        LiftedSet set;
        set.reps = 5;
        set.load = PathLoad::constant(within(kilograms(80), kilograms(0.4), SourceId{1 + i % 20}));
        set.legs = i % 3 == 0 ? Limbs::Both : i % 3 == 1 ? Limbs::Left : Limbs::Right;
        set.bodyInLoad = i % 2 == 0 ? BodyInLoad::No : BodyInLoad::Whole;
        set.body = within(kilograms(70), kilograms(0.3), SourceId{99});
        sets.push_back(set);
    }
    benchmark::DoNotOptimize(bookedVolume(sets));
    const auto handle = shown(30);
    const std::vector<CarryDone> carries(60, *carryDone({CarryKind::Farmers, {handle, handle, {}}, std::vector<CarryLap>(4, {taped(20), within(Seconds{15}, stopwatchU), 0}), 0}));
    benchmark::DoNotOptimize(carriedIn(carries));
    benchmark::DoNotOptimize(weekLoad(std::vector<std::optional<Score>>{Score{300, 17}, Score{450, 20}, {}, Score{600, 26}}));
}

/// A pitch with sixty things on it, of each kind and measured in each way, and somebody with sixty tests, caps and clearances.
const pitch::Pitch& fullPitch()
{
    static pitch::Pitch full;
    static const bool laid = [] {
        const std::vector<Measured> kinds{borrowed::tyre(), borrowed::unknownTyre(), borrowed::logByEnds(), borrowed::logBySize(), borrowed::stone(), borrowed::lyingKeg(),
                                          borrowed::sled(), borrowed::handles(), borrowed::kettlebell(), borrowed::tyreOf(90)};
        for (int i = 0; i < 60; ++i)
            full.item("Thing " + std::to_string(i), kinds[static_cast<std::size_t>(i) % kinds.size()]);
        for (int i = 0; i < 60; ++i)
            full.tried(i % 2 == 0 ? deadliftId : pitch::press, 60 + i, 60 - i);
        for (const LiftId& lift : {pitch::kegPress, pitch::logPress, pitch::frontCarry, pitch::farmers})
            full.cap(lift, deadliftId, 60);
        for (int i = 0; i < 60; ++i)
            keepClearance(full.keeping, {{}, full.who, LiftId{static_cast<std::uint16_t>(1 + i % 41)}, Method::Overhead, "the head coach", full.today - std::chrono::days(i), {}, false, {}}, full.told());
        return true;
    }();
    benchmark::DoNotOptimize(laid);
    return full;
}

void hereAnswer()
{
    const pitch::Pitch& p = fullPitch();
    const auto rows = whatIsHere(p.book, {p.who, p.venue, p.today, {}});
    if (!rows || rows->size() != 60)
        verdicts::missing("what is here");
}

/// A remembered surface, a line of runs on it, and the load carried to another: all from records.
void sledFromRecords()
{
    const SledMeasurement sled = borrowed::sled();
    std::vector<SledRunTimed> runs;
    for (int i = 0; i < 12; ++i)
        runs.push_back(borrowed::run({}, {}, {}, 5.0 * i, 6.5 - 0.2 * i));
    const auto wet = *haulOn(*frictionOf(borrowed::surface({}, {}), sled), sled, metres(0.98)), dry = *haulOn(*frictionOf(borrowed::surface({}, {}, "dry", 0.6), sled), sled, metres(0.98));
    benchmark::DoNotOptimize(carriedTo(*loadForSpeedLoss(*speedLineOf(runs, sled), sled, 0.5), wet, dry, sled));
}

void flipFromRecord()
{
    benchmark::DoNotOptimize(flipFigures(borrowed::tyre(), KnownMaximum{deadliftId, true, kilograms(140), kilograms(145), kilograms(2), {}, false})->flip.curve(200));
}

void implementAnswers(benchmark::State& state)
{
    for (auto _ : state)
        for (const auto& [name, answer] : {std::pair<const char*, void (*)()>{"a tyre with its flip and cap", tyreAnswer}, {"a log and a keg", solidAnswer},
                                           {"a sled load for another surface", sledAnswer}, {"a session of 200 sets and 60 carries booked", bookingAnswer},
                                           {"a sled from its records", sledFromRecords}, {"a flip from its record", flipFromRecord}}) {
            const double took = verdicts::timeOf(answer);
            state.counters[name] = took;
            verdicts::hold(name, took, 5, "ms");
        }
    (void)fullPitch();
    const double took = verdicts::timeOf(hereAnswer);
    state.counters["what is here, of 60 things"] = took;
    verdicts::hold("what is here, of 60 things", took, 10, "ms");
}
BENCHMARK(implementAnswers)->Iterations(1)->Unit(benchmark::kMillisecond);

}
