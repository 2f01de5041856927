// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/plates.h"
#include "tests/core/resistance/kit.h"

#include <benchmark/benchmark.h>

namespace {

using namespace steelyard;

/// What a coach may hang at most: chains and bands on both ends and a bench aid, marks and a cap; each kit thing measured.
Setup fullSetup()
{
    Setup setup = tests::onBothEnds({tests::hungChain(ChainHanging::Doubled, 1.5, 0.8, 5.7, 0.02, 1, 0.4), tests::hungBelow(tests::rubberBand(2, false), 0.05, 0.2)});
    setup.left.push_back(tests::benchAid(0.77, {newtons(3)}, 5));
    setup.uIron = kilograms(0.3);
    setup.path.uMark = metres(0.01);
    setup.path.zoneFrom = metres(0.88);
    setup.path.zoneTo = metres(1.02);
    setup.path.rack = metres(1.25);
    return setup;
}

void wholeCurve(benchmark::State& state)
{
    const Setup setup = fullSetup();
    const auto samples = static_cast<std::size_t>(state.range(0));
    for (auto _ : state)
        benchmark::DoNotOptimize(pullCurve(setup, samples));
}
BENCHMARK(wholeCurve)->Arg(0)->Arg(100)->Arg(200)->Unit(benchmark::kMicrosecond);

void wholeCurveUnderACap(benchmark::State& state)
{
    Setup setup = fullSetup();
    setup.limits.cap = kilograms(95);
    setup.limits.safetyRating = kilograms(400);
    for (auto _ : state)
        benchmark::DoNotOptimize(pullCurve(setup));
}
BENCHMARK(wholeCurveUnderACap)->Unit(benchmark::kMicrosecond);

void bestBandFit(benchmark::State& state)
{
    const auto points = tests::bandPoints();
    for (auto _ : state)
        benchmark::DoNotOptimize(BandFit::best(metres(1), points));
}
BENCHMARK(bestBandFit)->Unit(benchmark::kMicrosecond);

void everyLoadOfAGym(benchmark::State& state)
{
    std::vector<PlateStock> stock;
    for (const double kg : {25.0, 20.0, 15.0, 10.0, 5.0, 2.5, 1.25, 0.5})
        stock.push_back({{kilograms(kg), metres(0.2 + kg / 100), metres(0.03)}, 8});
    for (auto _ : state)
        benchmark::DoNotOptimize(PlateLoads::of(stock, kilograms(20), metres(0.4)));
}
BENCHMARK(everyLoadOfAGym)->Unit(benchmark::kMicrosecond);

}
