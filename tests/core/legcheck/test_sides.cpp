// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/sides.h"
#include "tests/core/near.h"
#include "tests/core/refused.h"

#include <limits>
#include <rapidcheck.h>
#include <vector>

using namespace steelyard;
using tests::whatOf;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
constexpr auto oneLeg = SideFormula::PercentageDifference, plates = SideFormula::TwoPlates;

double tenths(int from, int to) { return *rc::gen::inRange(from, to) / 10.0; }
TestScore of(std::vector<double> tries, ScoreKind kind = ScoreKind::MeanOfTries, Better better = Better::Higher) { return *scoreOf(tries, kind, better); }
SidesVerdict bySquad(const TestScore& left, const TestScore& right, double cv) { return *sidesVerdict(left, right, oneLeg, Better::Higher, cv); }

}

class TestSides : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// With p one and b the other, b = p/(2 − p): Bishop et al. 2016, all published formulas come down to these.
    void formulasHoldTogether()
    {
        QVERIFY(rc::check("two plates is half of one leg at most, sides swap, units do not matter, and a better side is never worse", [] {
            const double left = tenths(1, 20000), right = tenths(1, 20000);
            const auto higher = *sideDifference(left, right, oneLeg, Better::Higher), lower = *sideDifference(left, right, oneLeg, Better::Lower);
            const auto swapped = *sideDifference(right, left, oneLeg, Better::Higher), onPlates = *sideDifference(left, right, plates, Better::Higher);
            const double share = higher.percent / 100;
            RC_ASSERT(tests::near(onPlates.percent, 100 * share / (2 - share), 1e-10));
            RC_ASSERT((higher.percent >= 0 && higher.percent <= 100 && higher.percent == lower.percent && higher.percent == swapped.percent));
            RC_ASSERT(tests::near(sideDifference(left * 2.2, right * 2.2, oneLeg, Better::Higher)->percent, higher.percent, 1e-10));
            RC_ASSERT(higher.better.has_value() == (left != right));
            if (left == right)
                return;
            RC_ASSERT((*higher.better == Leg::Left) == (left > right));
            RC_ASSERT((*lower.better != *higher.better && *swapped.better != *higher.better));
        }));
    }

    void refused()
    {
        QCOMPARE(whatOf(sideDifference(-1, 1, oneLeg, Better::Higher)), std::string("left"));
        QCOMPARE(whatOf(sideDifference(1, notANumber, oneLeg, Better::Higher)), std::string("right"));
        QCOMPARE(whatOf(sideDifference(0, 0, oneLeg, Better::Higher)), std::string("left"));
        QCOMPARE(sideDifference(0, 7, oneLeg, Better::Higher)->percent, 100.0);
        QCOMPARE(whatOf(noiseLimitPercent(0, 1, oneLeg, {0.1, 0.1})), std::string("left"));
        QCOMPARE(whatOf(noiseLimitPercent(1, 1, oneLeg, {-0.1, 0.1})), std::string("left CV"));
        QCOMPARE(whatOf(noiseLimitPercent(1, 1, oneLeg, {0.1, notANumber})), std::string("right CV"));
        QCOMPARE(whatOf(noiseLimitPercent(1, 1, oneLeg, {0.1, 0.1, 0, 1})), std::string("tries"));
        QCOMPARE(sidesVerdict(of({1, 2}), of({2, 3}, ScoreKind::BestOfTries), oneLeg, Better::Higher, 0.05).error(), (Error{Refusal::NotComparable, "score"}));
        QCOMPARE(sidesVerdict(of({1}), of({2, 3}), oneLeg, Better::Higher, std::nullopt).error(), (Error{Refusal::TooFewPoints, "tries"}));
        QVERIFY(sidesVerdict(of({1}), of({2}), oneLeg, Better::Higher, 0.05));
        QCOMPARE(whatOf(pureNoiseMeanPercent(oneLeg, -0.1, ScoreKind::MeanOfTries, 3)), std::string("CV"));
        QCOMPARE(whatOf(pureNoiseMeanPercent(oneLeg, 0.1, ScoreKind::MeanOfTries, 0)), std::string("tries"));
        QCOMPARE(whatOf(meanSizePercent({})), std::string("differences"));
        QCOMPARE(whatOf(meanSizePercent(std::vector{3.0, -1.0})), std::string("difference 2"));
    }

    /// 5 % of one try, three tries: 3.2 % of pure noise on average.
    void squadMeanIsNeverZero()
    {
        VERIFY_NEAR(*pureNoiseMeanPercent(oneLeg, 0.05, ScoreKind::MeanOfTries, 3), 3.2, 0.05);
        QCOMPARE(*pureNoiseMeanPercent(oneLeg, 0, ScoreKind::MeanOfTries, 3), 0.0);
        QCOMPARE(*meanSizePercent(std::vector{2.0, 4.0, 9.0}), 5.0);
    }

    void callsAndTheTriesNeeded()
    {
        // 1.96·√2·0.03/√3 is 4.8 %, times min/max
        QCOMPARE(bySquad(of({100, 100, 100}), of({94, 94, 94}), 0.03).call, SidesCall::LeftBetter);
        QCOMPARE(bySquad(of({94, 94, 94}), of({100, 100, 100}), 0.03).call, SidesCall::RightBetter);
        const auto close = bySquad(of({100, 100, 100}), of({96, 96, 96}), 0.03), far = bySquad(of({100, 100, 100}), of({99, 99, 99}), 0.03);
        QCOMPARE(close.call, SidesCall::TooClose);
        // (4.61/4)²·3 = 3.98
        QCOMPARE(close.triesNeededCount, std::optional(4));
        QCOMPARE(close.noise, NoiseSource::SquadBetweenDays);
        QCOMPARE(far.call, SidesCall::NotBeyondNoise);
        QVERIFY(!far.triesNeededCount);
        QCOMPARE(bySquad(of({100}), of({100}), 0.03).call, SidesCall::NotBeyondNoise);
    }

    void lowerIsBetterFlipsTheVerdict()
    {
        const auto hop = *sidesVerdict(of({2.0, 2.0}), of({2.5, 2.5}), oneLeg, Better::Lower, 0.03);
        QCOMPARE(hop.call, SidesCall::LeftBetter);
    }

    /// Today's noise takes t at nL + nR − 2, also where the legs had different tries.
    void todaysTriesTakeStudent()
    {
        const auto verdict = *sidesVerdict(of({10, 12, 14}), of({11, 13}), oneLeg, Better::Higher, std::nullopt);
        const double left = 2.0 / 12 / std::sqrt(3), right = std::sqrt(2) / 12 / std::sqrt(2);
        VERIFY_NEAR_SHARE(verdict.limitPercent, 100 * 3.182446305284263 * std::hypot(left, right), 1e-10);
        QCOMPARE(verdict.noise, NoiseSource::TodaysTries);
    }

    void oneMoreTryNeededIsEnough()
    {
        QVERIFY(rc::check("with the tries needed and the same scores the verdict is a side, and with one fewer it is not", [] {
            const double left = tenths(900, 1100), right = tenths(900, 1100), cv = *rc::gen::inRange(5, 80) / 1000.0;
            const auto formula = *rc::gen::element(oneLeg, plates);
            const int tries = *rc::gen::inRange(1, 6);
            const auto at = [&](int count) { return *sidesVerdict({left, ScoreKind::MeanOfTries, count}, {right, ScoreKind::MeanOfTries, count}, formula, Better::Higher, cv); };
            const auto now = at(tries);
            const bool isSide = now.call == SidesCall::LeftBetter || now.call == SidesCall::RightBetter;
            RC_ASSERT(isSide == (now.difference.percent > now.limitPercent));
            RC_ASSERT(now.triesNeededCount.has_value() == (now.call == SidesCall::TooClose));
            if (!now.triesNeededCount)
                return;
            const int needed = *now.triesNeededCount;
            RC_ASSERT((needed > tries && needed <= mostTriesCount));
            RC_ASSERT((at(needed).call == SidesCall::LeftBetter || at(needed).call == SidesCall::RightBetter));
            RC_ASSERT((needed - 1 <= 1 || at(needed - 1).difference.percent <= at(needed - 1).limitPercent));
        }));
    }

    /// Tries that go up and down together tell the sides apart; worked on the means of each plate they would not.
    void platesAreWorkedTryByTry()
    {
        const std::vector<PlatesTry> tries{{1000, 1060}, {1200, 1270}, {800, 849}};
        const auto verdict = *platesVerdict(tries, Better::Higher);
        QCOMPARE(verdict.call, SidesCall::RightBetter);
        const double first = 100 * 60.0 / 2060, second = 100 * 70.0 / 2470, third = 100 * 49.0 / 1649, mean = (first + second + third) / 3;
        VERIFY_NEAR_SHARE(verdict.difference.percent, mean, 1e-12);
        const double sd = std::sqrt((std::pow(first - mean, 2) + std::pow(second - mean, 2) + std::pow(third - mean, 2)) / 2);
        VERIFY_NEAR_SHARE(verdict.limitPercent, 4.302652729749464 * sd / std::sqrt(3), 1e-10);
        const auto apart = *sidesVerdict(of({1000, 1200, 800}), of({1060, 1270, 849}), plates, Better::Higher, std::nullopt);
        QCOMPARE(apart.call, SidesCall::NotBeyondNoise);
        QCOMPARE(platesVerdict(tries, Better::Lower)->call, SidesCall::LeftBetter);
    }

    /// Tries that change sides cancel: their sizes do not add up to a side.
    void platesThatChangeSides()
    {
        const auto verdict = *platesVerdict(std::vector<PlatesTry>{{1000, 1100}, {1100, 1000}}, Better::Higher);
        VERIFY_NEAR(verdict.difference.percent, 0, 1e-12);
        QCOMPARE(verdict.call, SidesCall::NotBeyondNoise);
        QCOMPARE(platesVerdict(std::vector<PlatesTry>{{1000, 1100}}, Better::Higher).error(), (Error{Refusal::TooFewPoints, "tries"}));
        QCOMPARE(whatOf(platesVerdict(std::vector<PlatesTry>{{1000, 1100}, {notANumber, 1}}, Better::Higher)), std::string("try 2, left"));
    }
};

QTEST_APPLESS_MAIN(TestSides)
#include "test_sides.moc"
