// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/score.h"
#include "tests/core/near.h"
#include "tests/core/refused.h"

#include <algorithm>
#include <limits>
#include <rapidcheck.h>
#include <vector>

using namespace steelyard;
using tests::whatOf;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN(), endless = std::numeric_limits<double>::infinity();

Result<TestScore> mean(const std::vector<double>& tries) { return scoreOf(tries, ScoreKind::MeanOfTries, Better::Higher); }

}

class TestTestScore : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// 10, 12, 14: mean 12, SD 2.
    void threeTries()
    {
        const TestScore score = *mean({10, 12, 14});
        QCOMPARE(score.score, 12.0);
        QCOMPARE(score.triesCount, 3);
        VERIFY_NEAR_SHARE(*score.tryCvRatio, 2.0 / 12, 1e-14);
        QCOMPARE(scoreOf(std::vector{10.0, 14.0, 12.0}, ScoreKind::BestOfTries, Better::Higher)->score, 14.0);
        QCOMPARE(scoreOf(std::vector{10.0, 14.0, 12.0}, ScoreKind::BestOfTries, Better::Lower)->score, 10.0);
        QVERIFY(!mean({10})->tryCvRatio);
    }

    void refused()
    {
        QCOMPARE(mean({}).error(), (Error{Refusal::TooFewPoints, "tries"}));
        QCOMPARE(mean({1, notANumber}).error(), (Error{Refusal::NotFinite, "try 2"}));
        QCOMPARE(mean({endless}).error(), (Error{Refusal::NotFinite, "try 1"}));
        QCOMPARE(mean({1, 2, 0}).error(), (Error{Refusal::OutOfRange, "try 3"}));
        QCOMPARE(mean({1, -2}).error(), (Error{Refusal::OutOfRange, "try 2"}));
        QCOMPARE(mean(std::vector<double>(101, 5)).error(), (Error{Refusal::TooMany, "tries"}));
        const TestScore score = *mean({10, 12, 14});
        QCOMPARE(whatOf(estimateOf(score, {-0.1})), std::string("CV"));
        QCOMPARE(whatOf(estimateOf(score, {notANumber})), std::string("CV"));
        QCOMPARE(whatOf(estimateOf(TestScore{0}, {0.1})), std::string("score"));
        QCOMPARE(whatOf(estimateOf(TestScore{5, ScoreKind::MeanOfTries, 0}, {0.1})), std::string("tries"));
        QCOMPARE(whatOf(estimateOf(*mean({10}))), std::string("tries"));
    }

    /// The squad's figure is taken as known; today's tries know their scatter by two degrees of freedom.
    void noiseOfTheScoreUsed()
    {
        const TestScore score = *mean({10, 12, 14});
        const auto squad = *estimateOf(score, {0.05}), today = *estimateOf(score);
        VERIFY_NEAR_SHARE(squad.u(), 0.05 * 12 / std::sqrt(3), 1e-14);
        VERIFY_NEAR_SHARE(squad.giveOrTake(), 1.959963984540054 * squad.u(), 1e-14);
        VERIFY_NEAR_SHARE(today.u(), 2 / std::sqrt(3), 1e-14);
        QCOMPARE(today.degreesOfFreedom(), 2.0);
        VERIFY_NEAR_SHARE(today.giveOrTake(), 4.302652729749464 * today.u(), 1e-11);
    }

    void bestOfSeveralIsNoMean()
    {
        QCOMPARE(noiseFactor(ScoreKind::BestOfTries, 1), 1.0);
        QCOMPARE(noiseFactor(ScoreKind::MeanOfTries, 4), 0.5);
        for (int tries = 2; tries <= 10; ++tries) {
            QVERIFY(noiseFactor(ScoreKind::BestOfTries, tries) < noiseFactor(ScoreKind::BestOfTries, tries - 1));
            QVERIFY(noiseFactor(ScoreKind::BestOfTries, tries) > noiseFactor(ScoreKind::MeanOfTries, tries));
        }
        QCOMPARE(noiseFactor(ScoreKind::BestOfTries, 60), noiseFactor(ScoreKind::BestOfTries, 10));
        QCOMPARE(noiseFactor(ScoreKind::MeanOfTries, 0), 1.0);
    }

    void scoresHoldTogether()
    {
        QVERIFY(rc::check("the mean lies between the tries, the unit of the tries changes no CV, and their order changes nothing", [] {
            std::vector<double> tries = *rc::gen::container<std::vector<double>>(static_cast<std::size_t>(*rc::gen::inRange(1, 9)), rc::gen::map(rc::gen::inRange(1, 5000), [](int v) { return v / 10.0; }));
            const TestScore score = *mean(tries);
            const auto [least, most] = std::minmax_element(tries.begin(), tries.end());
            RC_ASSERT((score.score >= *least - 1e-9 && score.score <= *most + 1e-9));
            std::vector<double> other(tries.rbegin(), tries.rend());
            for (double& score : other)
                score *= 2.54;
            const TestScore inOther = *mean(other);
            RC_ASSERT(tests::nearShare(inOther.score, 2.54 * score.score, 1e-12));
            RC_ASSERT(inOther.tryCvRatio.has_value() == (tries.size() > 1));
            RC_ASSERT((!score.tryCvRatio || tests::near(*inOther.tryCvRatio, *score.tryCvRatio, 1e-12)));
        }));
    }

    void triesThatSettle()
    {
        QCOMPARE(triesToSettle(3, [](int tries) { return tries >= 5; }), std::optional(5));
        QCOMPARE(triesToSettle(3, [](int) { return true; }), std::optional(4));
        QCOMPARE(triesToSettle(1, [](int) { return true; }), std::optional(2));
        QVERIFY(!triesToSettle(3, [](int tries) { return tries >= 7; }));
        QVERIFY(!triesToSettle(6, [](int) { return true; }));
    }
};

QTEST_APPLESS_MAIN(TestTestScore)
#include "test_testscore.moc"
