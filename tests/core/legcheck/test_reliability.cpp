// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/reliability.h"
#include "core/measure/distributions.h"
#include "tests/core/near.h"
#include "tests/core/refused.h"

#include <cmath>
#include <limits>
#include <rapidcheck.h>

using namespace steelyard;
using tests::whatOf;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN(), endless = std::numeric_limits<double>::infinity();
using Scores = std::vector<SubjectScores>;

Scores anyScores(std::size_t n, std::size_t k)
{
    Scores scores(n, SubjectScores(k));
    for (auto& row : scores)
        for (double& score : row)
            score = *rc::gen::inRange(200, 900) / 10.0;
    return scores;
}

Scores changed(Scores scores, double factor, double shift)
{
    for (auto& row : scores)
        for (double& score : row)
            score = factor * score + shift;
    return scores;
}

}

class TestReliability : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// Differences of two days: 2, −2, 4, 0; mean 1, SD √(20/3), over √2.
    void twoDaysByTheirDifferences()
    {
        const auto of = *reliabilityOf(Scores{{10, 12}, {20, 18}, {30, 34}, {40, 40}});
        VERIFY_NEAR_SHARE(of.typicalErrorScore.score, std::sqrt(20.0 / 3) / std::sqrt(2), 1e-13);
        VERIFY_NEAR_SHARE(of.mdc95Score, 1.96 * std::sqrt(20.0 / 3), 1e-13);
        QCOMPARE(of.subjectsCount, 4u);
        QCOMPARE(of.daysCount, 2u);
        QVERIFY(of.worthwhileChangeScore && of.cvPercent);
    }

    void partsOfTheVarianceAddUp()
    {
        QVERIFY(rc::check("sums of squares add up; ICCs lie in order and in their intervals; units and days' order do not matter", [] {
            const std::size_t n = *rc::gen::inRange<std::size_t>(3, 9), k = *rc::gen::inRange<std::size_t>(2, 6);
            const Scores scores = anyScores(n, k);
            const auto of = *reliabilityOf(scores);
            RC_PRE((of.residualScore > 0 && of.betweenScore > 0));
            const double dn = static_cast<double>(n), dk = static_cast<double>(k);
            RC_ASSERT(tests::nearShare(dn * (dk - 1) * of.withinScore, (dk - 1) * of.daysScore + (dn - 1) * (dk - 1) * of.residualScore, 1e-9));
            for (const auto& icc : {of.icc11Ratio, of.icc21Ratio, of.icc31Ratio, of.icc1kRatio, of.icc2kRatio, of.icc3kRatio}) {
                RC_ASSERT((icc.has_value() || of.betweenScore <= of.residualScore));
                if (!icc)
                    continue;
                RC_ASSERT((of.betweenScore <= of.residualScore || icc->score <= 1));
                if (of.betweenScore > of.residualScore) {
                    RC_ASSERT((!icc->lowScore || *icc->lowScore <= icc->score + 1e-9));
                    RC_ASSERT((!icc->highScore || icc->score <= *icc->highScore + 1e-9));
                }
            }
            RC_ASSERT(of.worthwhileChangeScore.has_value() == (of.betweenScore > of.residualScore));
            RC_ASSERT((of.typicalErrorScore.lowScore < of.typicalErrorScore.score && of.typicalErrorScore.score < of.typicalErrorScore.highScore));
            const auto inOther = *reliabilityOf(changed(scores, 2.54, 0));
            RC_ASSERT(tests::near(inOther.icc21Ratio->score, of.icc21Ratio->score, 1e-9));
            RC_ASSERT(tests::nearShare(inOther.typicalErrorScore.score, 2.54 * of.typicalErrorScore.score, 1e-9));
            RC_ASSERT(tests::nearShare(inOther.cvPercent->score, of.cvPercent->score, 1e-9));
            const auto shifted = *reliabilityOf(changed(scores, 1, 1e6));
            RC_ASSERT(tests::nearShare(shifted.typicalErrorScore.score, of.typicalErrorScore.score, 1e-6));
            Scores turned = scores;
            for (auto& row : turned)
                std::reverse(row.begin(), row.end());
            RC_ASSERT(tests::near(reliabilityOf(turned)->icc31Ratio->score, of.icc31Ratio->score, 1e-9));
        }));
    }

    /// Everybody a little better on the second day: consistent, and not in agreement.
    void aDaysShiftIsNoNoise()
    {
        const auto of = *reliabilityOf(Scores{{10, 15}, {20, 25}, {30, 35}});
        QCOMPARE(of.typicalErrorScore.score, 0.0);
        VERIFY_NEAR(of.icc31Ratio->score, 1, 1e-14);
        QVERIFY(of.icc21Ratio->score < 0.95);
        QVERIFY(!of.icc31Ratio->lowScore && !of.icc21Ratio->highScore);
        QVERIFY(of.worthwhileChangeScore);
    }

    void nothingThatVaries()
    {
        const auto of = *reliabilityOf(Scores{{0.1, 0.1}, {0.1, 0.1}, {0.1, 0.1}});
        QCOMPARE(of.typicalErrorScore.score, 0.0);
        QVERIFY(!of.icc11Ratio && !of.icc21Ratio && !of.icc31Ratio && !of.icc1kRatio && !of.icc2kRatio && !of.icc3kRatio && !of.worthwhileChangeScore);
        QCOMPARE(of.cvPercent->score, 0.0);
    }

    /// Noise as large as the athletes differ: what is worthwhile cannot be said.
    void cannotSay()
    {
        const auto of = *reliabilityOf(Scores{{10, 14}, {14, 10}, {12, 12.5}});
        QVERIFY(of.betweenScore <= of.residualScore);
        QVERIFY(!of.worthwhileChangeScore);
        QVERIFY(of.icc31Ratio->score < 0);
    }

    void scoresBelowZeroHaveNoLogarithm()
    {
        const auto of = *reliabilityOf(Scores{{-1, 2}, {3, 4}, {5, 5}});
        QVERIFY(!of.cvPercent);
        QVERIFY(!reliabilityOf(Scores{{0, 2}, {3, 4}})->cvPercent);
    }

    void missingDaysAreRefused()
    {
        QCOMPARE(reliabilityOf(Scores{}).error(), (Error{Refusal::TooFewPoints, "subjects"}));
        QCOMPARE(reliabilityOf(Scores{{1, 2}}).error(), (Error{Refusal::TooFewPoints, "subjects"}));
        QCOMPARE(reliabilityOf(Scores{{1}, {2}}).error(), (Error{Refusal::TooFewPoints, "repeated days"}));
        QCOMPARE(reliabilityOf(Scores{{}, {}}).error(), (Error{Refusal::TooFewPoints, "repeated days"}));
        QCOMPARE(reliabilityOf(Scores{{1, 2}, {3}}).error(), (Error{Refusal::NotFinite, "scores row 2"}));
        QCOMPARE(reliabilityOf(Scores{{1, 2}, {3, notANumber}}).error(), (Error{Refusal::NotFinite, "scores row 2, day 2"}));
        QCOMPARE(reliabilityOf(Scores{{1, endless}, {3, 4}}).error(), (Error{Refusal::NotFinite, "scores row 1, day 2"}));
    }

    void distributionsOfNonsense()
    {
        QVERIFY(std::isnan(fQuantile(1.5, 3, 4)) && std::isnan(fQuantile(0.5, -1, 4)) && std::isnan(fQuantile(notANumber, 3, 4)));
        QVERIFY(std::isnan(chiSquaredQuantile(-0.1, 3)) && std::isnan(chiSquaredQuantile(0.5, 0)));
        QVERIFY(std::isnan(normalProbability(notANumber)));
        QCOMPARE(normalProbability(endless), 1.0);
        // F with 1 above is t squared; χ² of many is F with infinitely many below
        VERIFY_NEAR_SHARE(fQuantile(0.95, 1, 9), 2.262157162740992 * 2.262157162740992, 1e-10);
    }
};

QTEST_APPLESS_MAIN(TestReliability)
#include "test_reliability.moc"
