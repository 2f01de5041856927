// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/evidence.h"
#include "tests/bench/verdicts.h"
#include "tests/core/hanging/stocks.h"
#include "tests/core/work/eccentric/releases.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <vector>

using namespace steelyard;

namespace {

template <typename Work>
double milliseconds(const Work& work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

/// Bar and hooks from forty plates, as a gym has them and of no two alike masses, for loads over the whole range.
void barAndHooksFromFortyPlates(benchmark::State& state)
{
    std::vector<double> took;
    const auto tryAll = [&](const EccentricKit& kit) {
        for (double concentric = 30; concentric <= 230; concentric += 9.7)
            for (const double more : {12.3, 31.7, 58.9}) {
                const auto target = *eccentricTarget(kilograms(concentric), kilograms(concentric + more));
                took.push_back(milliseconds([&] { benchmark::DoNotOptimize(eccentricLoad(kit, target)); }));
            }
    };
    for (auto _ : state) {
        EccentricKit gym = stocks::kit(stocks::gym());
        tryAll(gym);
        gym.sleeve = metres(0.12);
        gym.hookRoom = metres(0.1);
        gym.platesUShare = 0.02;
        gym.eccentricCap = kilograms(250);
        tryAll(gym);
        for (unsigned seed = 1; seed <= 20; ++seed)
            tryAll(stocks::kit(stocks::weighed(seed)));
    }
    state.counters["median_ms"] = verdicts::median(took);
    state.counters["worst_ms"] = *std::max_element(took.begin(), took.end());
    verdicts::hold("bar and hooks from 40 plates", verdicts::median(took), 5, "ms");
    verdicts::hold("the slowest of them", *std::max_element(took.begin(), took.end()), 10, "ms");
}
BENCHMARK(barAndHooksFromFortyPlates)->Iterations(1)->Unit(benchmark::kMillisecond);

/// The maximum of a day from more sets than a day has.
void maximumOfADay(benchmark::State& state)
{
    std::vector<StrengthEvidence> evidence;
    for (int i = 0; i < 100; ++i)
        evidence.emplace_back(RepsSet{{kilograms(60 + i), kilograms(0.5)}, 1 + i % 10, 0, 0});
    std::vector<double> took;
    for (auto _ : state)
        took.push_back(milliseconds([&] { benchmark::DoNotOptimize(bestOfDay(evidence)); }));
    state.counters["median_ms"] = verdicts::median(took);
    verdicts::hold("the maximum of a day from 100 sets", verdicts::median(took), 5, "ms");
}
BENCHMARK(maximumOfADay)->Iterations(200)->Unit(benchmark::kMillisecond);

/// All that a plan for a heavier way down comes to, whatever is asked of it.
void wholePlan(benchmark::State& state)
{
    SetupRecord setup = releases::byHooks();
    std::vector<double> took;
    for (auto _ : state)
        for (double down = 100; down <= 130; down += 2.5) {
            setup.release->asked.downPercent = down;
            took.push_back(milliseconds([&] { benchmark::DoNotOptimize(releaseAnswer(setup, releases::facts())); }));
        }
    state.counters["median_ms"] = verdicts::median(took);
    verdicts::hold("a plan for a heavier way down", verdicts::median(took), 5, "ms");
    verdicts::hold("the slowest of these plans", *std::max_element(took.begin(), took.end()), 10, "ms");
}
BENCHMARK(wholePlan)->Iterations(20)->Unit(benchmark::kMillisecond);

}
