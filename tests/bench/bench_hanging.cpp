// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/verdicts.h"
#include "tests/core/hanging/kits.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <vector>

using namespace steelyard;

namespace {

/// What to hang from thirty pairs of chains and bands, proved best, of a thousand kits.
void whatToHangOfSixtyItems(benchmark::State& state)
{
    std::vector<double> took;
    std::size_t unproved = 0;
    for (auto _ : state)
        for (unsigned seed = 1; seed <= 1000; ++seed) {
            const HangQuestion question = kits::Kits(seed).large(30);
            const auto start = std::chrono::steady_clock::now();
            const HangAnswers answers = whatToHang(question);
            took.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
            unproved += answers.isProved ? 0 : 1;
        }
    std::sort(took.begin(), took.end());
    state.counters["median_ms"] = verdicts::median(took);
    state.counters["worst_ms"] = took.back();
    state.counters["unproved"] = static_cast<double>(unproved);
    verdicts::hold("what to hang of 60 items, of 1,000 kits", verdicts::median(took), 20, "ms");
    verdicts::hold("the slowest of them", took.back(), 150, "ms");
    verdicts::hold("of them not proved", static_cast<double>(unproved), 0, "");
}
/// The same, level with somebody's strength besides: no bound was promised, so the figure stands beside the others.
void levelWithStrength(benchmark::State& state)
{
    std::vector<double> took;
    for (auto _ : state)
        for (unsigned seed = 1; seed <= 100; ++seed) {
            kits::Kits kits(seed);
            HangQuestion question = kits.large(30);
            question.strength = kits.strength();
            const auto start = std::chrono::steady_clock::now();
            benchmark::DoNotOptimize(whatToHang(question));
            took.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
        }
    state.counters["median_ms"] = verdicts::median(took);
    state.counters["worst_ms"] = *std::max_element(took.begin(), took.end());
}
BENCHMARK(levelWithStrength)->Iterations(1)->Unit(benchmark::kMillisecond);
BENCHMARK(whatToHangOfSixtyItems)->Iterations(1)->Unit(benchmark::kMillisecond);

}
