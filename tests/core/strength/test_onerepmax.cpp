// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/strength/onerepmax.h"
#include "tests/core/near.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <rapidcheck.h>

using namespace steelyard;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN(), endless = std::numeric_limits<double>::infinity();

RepsSet setOf(double kg, int reps, double reserve = 0, double u = 0, int missed = 0) { return {{kilograms(kg), kilograms(u)}, reps, reserve, missed}; }

/// What each formula makes of 100 kg.
double of100(OneRmFormula formula, int reps) { return oneRepMaxBy(formula, kilograms(100), reps)->si(); }

std::pair<double, double> ends(int reps)
{
    std::vector<double> all;
    for (const OneRmFormula f : allOneRmFormulas)
        all.push_back(of100(f, reps));
    const auto [least, most] = std::minmax_element(all.begin(), all.end());
    return {*least, *most};
}

RepsSet anySet()
{
    const int reps = *rc::gen::inRange(1, 11);
    const double reserve = std::min(*rc::gen::inRange(0, 11) / 2.0, 10.0 - reps);
    return setOf(*rc::gen::inRange(5, 4000) / 10.0, reps, std::min(reserve, 5.0), *rc::gen::inRange(0, 50) / 20.0);
}

}
Q_DECLARE_METATYPE(RepsSet)
Q_DECLARE_METATYPE(TestedMax)

class TestOneRepMax : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void oneRepetitionIsTheLoad()
    {
        for (const OneRmFormula formula : allOneRmFormulas)
            QCOMPARE(*oneRepMaxBy(formula, kilograms(87.5), 1), kilograms(87.5));
    }

    /// 36/(37 − 10) and 1 + 10/30 are both 4/3.
    void twoFormulasMeetAtTen() { VERIFY_NEAR(of100(OneRmFormula::Brzycki, 10), of100(OneRmFormula::Epley, 10), 1e-13); }

    void eachFormulaHasItsReach()
    {
        for (const OneRmFormula formula : allOneRmFormulas) {
            const int most = formula == OneRmFormula::Mayhew ? 15 : 10;
            QVERIFY(oneRepMaxBy(formula, kilograms(60), most));
            for (const int reps : {most + 1, 0, -3, 1'000'000}) {
                const auto refused = oneRepMaxBy(formula, kilograms(60), reps);
                QVERIFY(!refused);
                QCOMPARE(refused.error(), (Error{Refusal::OutOfRange, "reps"}));
            }
            for (const double load : {0.0, -20.0, notANumber, endless})
                QCOMPARE(oneRepMaxBy(formula, kilograms(load), 5).error(), (Error{Refusal::OutOfRange, "load"}));
        }
    }

    /// To failure the range goes from the least of the formulas at 5 to the most of them at 6; the fourth of seven is the middle.
    void rangeOfFiveToFailure()
    {
        const OneRepMax max = *oneRepMaxFrom(setOf(100, 5));
        QVERIFY(!max.isTested);
        VERIFY_NEAR(max.lowest.value.si(), 112.5, 1e-12);
        VERIFY_NEAR(max.highest.value.si(), ends(6).second, 1e-12);
        VERIFY_NEAR(max.middle.value.si(), of100(OneRmFormula::Wathan, 5), 1e-12);
        VERIFY_NEAR(max.middle.u.si(), (max.highest.value - max.lowest.value).si() / std::sqrt(12), 1e-12);
        QCOMPARE(max.lowest.u, Mass{});
    }

    void toldReserveReachesOneEitherWay()
    {
        const OneRepMax max = *oneRepMaxFrom(setOf(100, 5, 2));
        VERIFY_NEAR(max.lowest.value.si(), ends(6).first, 1e-12);
        VERIFY_NEAR(max.highest.value.si(), ends(8).second, 1e-12);
        // less in reserve than half a repetition cannot take back one that was made
        VERIFY_NEAR(oneRepMaxFrom(setOf(100, 5, 0.5))->lowest.value.si(), ends(5).first, 1e-12);
    }

    void singleLeavesTheLoadAsLowestAndMiddle()
    {
        const OneRepMax max = *oneRepMaxFrom(setOf(140, 1));
        QCOMPARE(max.lowest.value, kilograms(140));
        QCOMPARE(max.middle.value, kilograms(140));
        VERIFY_NEAR(max.highest.value.si(), 1.4 * ends(2).second, 1e-12);
    }

    /// At the end of their reach the range is wider than a repetition before, not narrower.
    void rangeGrowsToTheEndOfItsReach()
    {
        Mass before;
        for (int reps = 2; reps <= 10; ++reps) {
            const OneRepMax max = *oneRepMaxFrom(setOf(100, reps));
            QVERIFY2(reps == 2 || max.middle.u > 0.9 * before, qPrintable(QString::number(reps)));
            before = max.middle.u;
        }
        QVERIFY(oneRepMaxFrom(setOf(100, 10))->middle.u > oneRepMaxFrom(setOf(100, 5))->middle.u);
    }

    void loadsDoubtGoesThrough()
    {
        const OneRepMax exact = *oneRepMaxFrom(setOf(100, 5)), doubted = *oneRepMaxFrom(setOf(100, 5, 0, 2));
        VERIFY_NEAR(doubted.lowest.u.si(), 2 * 1.125, 1e-12);
        VERIFY_NEAR(doubted.middle.u.si(), std::hypot(exact.middle.u.si(), 0.02 * exact.middle.value.si()), 1e-12);
        VERIFY_NEAR(doubted.forCaps().si(), 112.5 - 1.9599639845400545 * 2.25, 1e-9);
        QCOMPARE(exact.forCaps(), exact.lowest.value);
    }

    void refusedSets_data()
    {
        QTest::addColumn<RepsSet>("set");
        QTest::addColumn<QString>("what");
        QTest::newRow("no load") << setOf(0, 5) << "load";
        QTest::newRow("a load below 0") << setOf(-40, 5) << "load";
        QTest::newRow("a load that is no number") << setOf(notANumber, 5) << "load";
        QTest::newRow("an endless load") << setOf(endless, 5) << "load";
        QTest::newRow("an uncertainty below 0") << setOf(100, 5, 0, -1) << "load";
        QTest::newRow("no repetition") << setOf(100, 0) << "reps";
        QTest::newRow("eleven") << setOf(100, 11) << "reps";
        QTest::newRow("eleven with those in reserve") << setOf(100, 8, 3) << "reps";
        QTest::newRow("ten and a half") << setOf(100, 10, 0.5) << "reps";
        QTest::newRow("a missed one among them") << setOf(100, 5, 0, 0, 1) << "missed reps";
        QTest::newRow("missed ones below 0") << setOf(100, 5, 0, 0, -1) << "missed reps";
        QTest::newRow("a reserve below 0") << setOf(100, 5, -1) << "reps in reserve";
        QTest::newRow("a reserve nobody can tell") << setOf(100, 3, 5.5) << "reps in reserve";
        QTest::newRow("a reserve that is no number") << setOf(100, 3, notANumber) << "reps in reserve";
    }
    void refusedSets()
    {
        QFETCH(RepsSet, set);
        QFETCH(QString, what);
        const auto max = oneRepMaxFrom(set);
        QVERIFY(!max);
        QCOMPARE(max.error(), (Error{Refusal::OutOfRange, what.toStdString()}));
    }

    void testedIsTheLoadGiveAJump()
    {
        const OneRepMax max = *oneRepMaxFrom(TestedMax{{kilograms(120), kilograms(0.5)}, kilograms(2.5)});
        QVERIFY(max.isTested);
        QCOMPARE(max.lowest.value, kilograms(120));
        QCOMPARE(max.middle.value, kilograms(120));
        QCOMPARE(max.highest.value, kilograms(122.5));
        VERIFY_NEAR(max.middle.u.si(), std::hypot(2.5, 0.5), 1e-12);
        QCOMPARE(oneRepMaxFrom(TestedMax{{kilograms(120)}, kilograms(2.5)})->middle.u, kilograms(2.5));
    }

    void refusedTests_data()
    {
        QTest::addColumn<TestedMax>("test");
        QTest::addColumn<QString>("what");
        QTest::newRow("no load") << TestedMax{{}, kilograms(2.5)} << "load";
        QTest::newRow("a load that is no number") << TestedMax{{kilograms(notANumber)}, kilograms(2.5)} << "load";
        QTest::newRow("no jump") << TestedMax{{kilograms(100)}, {}} << "jump";
        QTest::newRow("a jump that is no number") << TestedMax{{kilograms(100)}, kilograms(notANumber)} << "jump";
        QTest::newRow("a jump above the load") << TestedMax{{kilograms(10)}, kilograms(12.5)} << "jump";
    }
    void refusedTests()
    {
        QFETCH(TestedMax, test);
        QFETCH(QString, what);
        const auto max = oneRepMaxFrom(test);
        QVERIFY(!max);
        QCOMPARE(max.error(), (Error{Refusal::OutOfRange, what.toStdString()}));
    }

    void moreIsNeverLess()
    {
        QVERIFY(rc::check("one repetition more, or a kilogram more, never gives a lower maximum", [] {
            const auto formula = *rc::gen::elementOf(std::vector(allOneRmFormulas.begin(), allOneRmFormulas.end()));
            const int reps = *rc::gen::inRange(1, mostReps(formula));
            const Mass load = kilograms(*rc::gen::inRange(1, 4000) / 10.0);
            const Mass max = *oneRepMaxBy(formula, load, reps);
            RC_ASSERT(max >= load);
            RC_ASSERT(*oneRepMaxBy(formula, load, reps + 1) > max);
            RC_ASSERT(*oneRepMaxBy(formula, load + kilograms(1), reps) > max);
        }));
    }

    void rangesHoldTogether()
    {
        QVERIFY(rc::check("lowest, middle and highest are in order, scale with the load and rise with what was done", [] {
            const RepsSet set = anySet();
            const OneRepMax max = *oneRepMaxFrom(set);
            RC_ASSERT(set.load.value <= max.lowest.value);
            RC_ASSERT(max.lowest.value <= max.middle.value);
            RC_ASSERT(max.middle.value < max.highest.value);
            RC_ASSERT(max.middle.u > Mass{} && max.forCaps() <= max.lowest.value);
            for (const OneRmFormula f : allOneRmFormulas) {
                const Mass one = *oneRepMaxBy(f, set.load.value, set.reps);
                RC_ASSERT(set.repsInReserve > 0 || (max.lowest.value <= one + kilograms(1e-9) && one <= max.highest.value + kilograms(1e-9)));
            }
            RepsSet twice = set;
            twice.load = {2 * set.load.value, 2 * set.load.u};
            const OneRepMax doubled = *oneRepMaxFrom(twice);
            RC_ASSERT(tests::nearShare(doubled.middle.value.si(), 2 * max.middle.value.si(), 1e-14));
            RC_ASSERT(tests::nearShare(doubled.middle.u.si(), 2 * max.middle.u.si(), 1e-12));
            RepsSet more = set;
            ++more.reps;
            if (const auto raised = oneRepMaxFrom(more)) {
                RC_ASSERT(raised->lowest.value > max.lowest.value);
                RC_ASSERT(raised->middle.value > max.middle.value);
                RC_ASSERT(raised->highest.value > max.highest.value);
            } else
                RC_ASSERT(more.reps + more.repsInReserve > 10);
        }));
    }
};

QTEST_APPLESS_MAIN(TestOneRepMax)
#include "test_onerepmax.moc"
