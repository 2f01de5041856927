// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/bilateral.h"
#include "core/legcheck/jumprecord.h"
#include "core/legcheck/reliability.h"
#include "core/legcheck/sides.h"
#include "core/legcheck/trend.h"
#include "tests/bench/verdicts.h"

#include <benchmark/benchmark.h>

#include <cmath>
#include <tuple>
#include <vector>

using namespace steelyard;

namespace {

/// A hundred athletes on six days.
void squadReliability()
{
    std::vector<SubjectScores> scores(100, SubjectScores(6));
    for (std::size_t i = 0; i < scores.size(); ++i)
        for (std::size_t j = 0; j < scores[i].size(); ++j)
            scores[i][j] = 30 + 0.2 * static_cast<double>(i) + std::sin(static_cast<double>(7 * i + 13 * j));
    benchmark::DoNotOptimize(reliabilityOf(scores));
}

/// What is said after a try: both verdicts from three tries of each, and a trend over forty days.
void answerAfterATry()
{
    const auto scored = [](std::vector<double> tries) { return *scoreOf(tries, ScoreKind::MeanOfTries, Better::Higher); };
    const auto both = scored({36.1, 35.4, 36.8}), left = scored({19.1, 19.6, 18.8}), right = scored({20.3, 19.9, 20.8});
    benchmark::DoNotOptimize(bilateralVerdict(*bilateralIndex({*estimateOf(both), *estimateOf(left), *estimateOf(right)}), 3));
    benchmark::DoNotOptimize(sidesVerdict(left, right, SideFormula::PercentageDifference, Better::Higher, std::nullopt));
    benchmark::DoNotOptimize(platesVerdict(std::vector<PlatesTry>{{1310, 1480}, {1290, 1465}, {1335, 1470}}, Better::Higher));
    std::vector<Visit> visits;
    for (int i = 0; i < 40; ++i)
        visits.push_back({20 + 0.1 * i, i < 30 ? 1u : 2u});
    benchmark::DoNotOptimize(trendOf(visits, 0.8));
}

/// Ten seconds at 1000 a second.
void jumpOfARecord()
{
    ForceRecord record{hertz(1000), {}};
    for (int i = 0; i < 10'000; ++i)
        record.force.push_back(newtons(i < 7000 ? 700 + std::sin(0.37 * i) : i < 7300 ? 1500 : i < 7700 ? 0 : 700));
    benchmark::DoNotOptimize(forceJump(record));
}

void legCheckAnswers(benchmark::State& state)
{
    for (auto _ : state)
        for (const auto& [name, answer, most] : {std::tuple<const char*, void (*)(), double>{"reliability of 100 athletes on 6 days", squadReliability, 5},
                                                 {"a leg check's answer after a try", answerAfterATry, 10}, {"a jump from ten seconds of force", jumpOfARecord, 50}}) {
            const double took = verdicts::timeOf(answer);
            state.counters[name] = took;
            verdicts::hold(name, took, most, "ms");
        }
}
BENCHMARK(legCheckAnswers)->Iterations(1)->Unit(benchmark::kMillisecond);

}
