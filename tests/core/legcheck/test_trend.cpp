// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/trend.h"
#include "tests/core/near.h"
#include "tests/core/refused.h"

#include <limits>
#include <rapidcheck.h>

using namespace steelyard;
using tests::whatOf;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

Trend trend(const std::vector<Visit>& visits, std::optional<double> typicalError = 1) { return *trendOf(visits, typicalError); }

}

class TestTrend : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void wordsAtTheirLines()
    {
        QCOMPARE(*trendWord(1.96, 1, 2, 2), std::optional(TrendWord::ClearlyChanged));
        QCOMPARE(*trendWord(-1.96, 1, 2, 2), std::optional(TrendWord::ClearlyChanged));
        QCOMPARE(*trendWord(1.9599, 1, 2, 2), std::optional(TrendWord::ProbablyChanged));
        QCOMPARE(*trendWord(1.28, 1, 2, 2), std::optional(TrendWord::ProbablyChanged));
        QCOMPARE(*trendWord(1.2799, 1, 2, 2), std::optional(TrendWord::NoClearChange));
        QCOMPARE(*trendWord(0, 1, 1, 1), std::optional(TrendWord::NoClearChange));
        QVERIFY(!*trendWord(5, 0, 1, 1));
        QCOMPARE(whatOf(trendWord(notANumber, 1, 1, 1)), std::string("difference"));
        QCOMPARE(whatOf(trendWord(1, -1, 1, 1)), std::string("typical error"));
        QCOMPARE(whatOf(trendWord(1, 1, 0, 1)), std::string("days"));
        QCOMPARE(whatOf(trendWord(1, 1, 1, 100'000)), std::string("days"));
    }

    /// 10 is learning and left out; 20, 22 make 21; 25 is 4 more, over √(1/2 + 1).
    void firstVisitIsLeftOut()
    {
        const auto of = trend({{10, 1}, {20, 1}, {22, 1}, {25, 1}}, 1.5);
        QCOMPARE(of.leftOutIndex, std::optional<std::size_t>(0));
        QCOMPARE(of.stretches.size(), 1u);
        QCOMPARE(of.stretches[0].firstIndex, 1u);
        QCOMPARE(of.stretches[0].visitsCount, 3u);
        QCOMPARE(of.differenceScore, 4.0);
        QCOMPARE(of.word, std::optional(TrendWord::ClearlyChanged));
        QCOMPARE(trend({{10, 1}, {20, 1}, {22, 1}, {25, 1}}, 2).word, std::optional(TrendWord::ProbablyChanged));
        QVERIFY(!trend({{10, 1}, {20, 1}, {22, 1}, {25, 1}}, std::nullopt).word);
    }

    /// From a mat to a plate: nothing is said across, and the first day of the new way is where it starts anew.
    void breaksAtAChangeOfMethod()
    {
        const auto broken = trend({{30, 1}, {31, 1}, {32, 1}, {36, 2}});
        QCOMPARE(broken.stretches.size(), 2u);
        QVERIFY(!broken.word);
        QCOMPARE(broken.differenceScore, 0.0);
        const auto after = trend({{30, 1}, {31, 1}, {32, 1}, {36, 2}, {39, 2}});
        QCOMPARE(after.differenceScore, 3.0);
        QCOMPARE(after.word, std::optional(TrendWord::ClearlyChanged));
        // back on the mat is no going on where it was left
        QCOMPARE(trend({{30, 1}, {31, 1}, {36, 2}, {31, 1}}).stretches.size(), 3u);
    }

    void fewVisits()
    {
        QVERIFY(trend({}).stretches.empty() && !trend({}).leftOutIndex);
        QVERIFY(trend({{10, 1}}).stretches.empty() && trend({{10, 1}}).leftOutIndex);
        QVERIFY(!trend({{10, 1}, {20, 1}}).word);
        QCOMPARE(whatOf(trendOf(std::vector<Visit>{{1, 1}, {notANumber, 1}}, 1)), std::string("visit 2"));
        QCOMPARE(whatOf(trendOf(std::vector<Visit>{{1, 1}, {2, 1}, {3, 1}}, -1)), std::string("typical error"));
    }

    void everyVisitButTheFirstIsInOneStretch()
    {
        QVERIFY(rc::check("and within a stretch the method is one", [] {
            std::vector<Visit> visits;
            for (int i = *rc::gen::inRange(1, 12); i > 0; --i)
                visits.push_back({*rc::gen::inRange(0, 100) / 10.0, *rc::gen::inRange(1u, 3u)});
            const auto of = trend(visits);
            std::size_t next = 1;
            for (const Stretch& stretch : of.stretches) {
                RC_ASSERT((stretch.firstIndex == next && stretch.visitsCount > 0));
                for (std::size_t i = 0; i < stretch.visitsCount; ++i)
                    RC_ASSERT(visits[next + i].methodNumber == visits[next].methodNumber);
                next += stretch.visitsCount;
            }
            RC_ASSERT(next == visits.size());
        }));
    }
};

QTEST_APPLESS_MAIN(TestTrend)
#include "test_trend.moc"
