// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/strength/evidence.h"
#include "tests/core/near.h"

#include <cmath>
#include <rapidcheck.h>

using namespace steelyard;
using Evidence = std::vector<StrengthEvidence>;

namespace {

RepsSet setOf(double kg, int reps, double reserve = 0, int missed = 0) { return {{kilograms(kg), {}}, reps, reserve, missed}; }
TestedMax tested(double kg, double jump = 2.5) { return {{kilograms(kg), {}}, kilograms(jump)}; }

StrengthEvidence anyEvidence()
{
    const double kg = *rc::gen::inRange(400, 1600) / 10.0;
    if (*rc::gen::inRange(0, 4) == 0)
        return tested(kg, *rc::gen::inRange(0, 5));
    return setOf(kg, *rc::gen::inRange(0, 13), *rc::gen::inRange(0, 4), *rc::gen::inRange(0, 8) == 0 ? 1 : 0);
}

}
Q_DECLARE_METATYPE(Evidence)
Q_DECLARE_METATYPE(WhyBest)

class TestEvidence : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void best_data()
    {
        QTest::addColumn<Evidence>("evidence");
        QTest::addColumn<int>("index");
        QTest::addColumn<WhyBest>("why");
        QTest::addColumn<bool>("setsShowMore");
        QTest::newRow("one set") << Evidence{setOf(100, 5)} << 0 << WhyBest::OnlyOne << false;
        QTest::newRow("one test") << Evidence{tested(100)} << 0 << WhyBest::OnlyOne << false;
        QTest::newRow("a test among sets") << Evidence{setOf(100, 3), tested(104), setOf(85, 8)} << 1 << WhyBest::Tested << false;
        QTest::newRow("a test that sets show more than") << Evidence{tested(100), setOf(100, 5)} << 0 << WhyBest::Tested << true;
        QTest::newRow("two tests") << Evidence{tested(100), tested(105), setOf(100, 2)} << 1 << WhyBest::HeaviestTested << false;
        QTest::newRow("two tests of one load, the smaller jump") << Evidence{tested(100, 5), tested(100, 2.5)} << 1 << WhyBest::HeaviestTested << false;
        QTest::newRow("the set before she was tired") << Evidence{setOf(90, 6), setOf(100, 5), setOf(100, 4)} << 1 << WhyBest::HighestLowest << false;
        QTest::newRow("as high at its lowest, and narrower") << Evidence{setOf(100, 5, 1), setOf(100, 5)} << 1 << WhyBest::HighestLowest << false;
        QTest::newRow("what is refused does not count") << Evidence{setOf(140, 12), setOf(150, 3, 0, 1), setOf(100, 5)} << 2 << WhyBest::OnlyOne << false;
    }
    void best()
    {
        QFETCH(Evidence, evidence);
        QFETCH(int, index);
        QFETCH(WhyBest, why);
        QFETCH(bool, setsShowMore);
        const DayEvidence day = bestOfDay(evidence);
        QVERIFY(day.best);
        QCOMPARE(static_cast<int>(day.best->index), index);
        QCOMPARE(day.best->why, why);
        QCOMPARE(day.best->setsShowMore, setsShowMore);
        QCOMPARE(day.best->max.middle.value, oneRepMaxFrom(evidence[day.best->index])->middle.value);
    }

    void refusalsAreKept()
    {
        const DayEvidence day = bestOfDay(Evidence{setOf(100, 11), setOf(100, 5, 0, 1), tested(0)});
        QVERIFY(!day.best);
        QCOMPARE(day.refused.size(), 3u);
        QCOMPARE(day.refused[0].why.what, std::string("reps"));
        QCOMPARE(day.refused[1].why.what, std::string("missed reps"));
        QCOMPARE(day.refused[2].why.what, std::string("load"));
        QVERIFY(!bestOfDay({}).best);
    }

    void testedAgainstEstimated()
    {
        const OneRepMax test = *oneRepMaxFrom(tested(115)), set = *oneRepMaxFrom(setOf(100, 5));
        const MaxDifference near = testedAgainst(test, set);
        VERIFY_NEAR(near.difference.value.si(), 115 - set.middle.value.si(), 1e-12);
        VERIFY_NEAR(near.difference.u.si(), std::hypot(2.5, set.middle.u.si()), 1e-12);
        QVERIFY(!near.isBeyondNoise);
        const MaxDifference far = testedAgainst(*oneRepMaxFrom(tested(100)), set);
        QVERIFY(far.isBeyondNoise && far.difference.value < Mass{});
    }

    void theBestHasNoBetter()
    {
        QVERIFY(rc::check("a test before sets, the heaviest test, the highest floor; every piece is the best or beaten or refused", [] {
            Evidence evidence;
            for (int n = *rc::gen::inRange(0, 7); n > 0; --n)
                evidence.push_back(anyEvidence());
            const DayEvidence day = bestOfDay(evidence);
            std::size_t refused = 0;
            for (const StrengthEvidence& piece : evidence) {
                const auto max = oneRepMaxFrom(piece);
                if (!max) {
                    RC_ASSERT(day.refused[refused++].why == max.error());
                    continue;
                }
                RC_ASSERT(day.best.has_value());
                const OneRepMax& best = day.best->max;
                RC_ASSERT(best.isTested || !max->isTested);
                RC_ASSERT(best.isTested != max->isTested || best.lowest.value >= max->lowest.value);
                RC_ASSERT(!best.isTested || max->isTested || max->lowest.value <= best.highest.value || day.best->setsShowMore);
            }
            RC_ASSERT(refused == day.refused.size());
            RC_ASSERT(day.best.has_value() == (refused < evidence.size()));
        }));
    }
};

QTEST_APPLESS_MAIN(TestEvidence)
#include "test_evidence.moc"
