// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/strength/maxima.h"

#include "tests/core/near.h"
#include "tests/core/work/memorykeeper.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;
using keeping::day;

namespace {

constexpr LiftId squat{1}, bench{4};

StrengthTest set(std::chrono::sys_days when, double kg, int reps, std::optional<int> reserve = 0)
{
    StrengthTest test;
    test.lift = squat;
    test.day = when;
    test.load = kilograms(kg);
    test.reps = reps;
    test.repsInReserve = reserve;
    return test;
}

StrengthTest tried(std::chrono::sys_days when, double kg, std::optional<double> jump = 2.5)
{
    StrengthTest test = set(when, kg, 1);
    test.maximum = true;
    if (jump)
        test.leastJump = Entered<Mass>(kilograms(*jump));
    return test;
}

StrengthTest withChains(StrengthTest test)
{
    test.conditions.hung = {Method::Chains};
    return test;
}

}

/// What the tests of somebody come to, day by day, and which of it counts.
class MaximaTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nothingFollowsFromNothing();
    void aSetIsARange();
    void aTestComesBeforeSets();
    void conditionsAreNeverMixed();
    void theLastDayCountsNotTheBest();
    void plainIronFirst();
    void theBodyIsPartOfTheLoad();
    void refusedStandsBeside();
    void theHistoryKeepsWhatIsRefused();
    void withAndWithoutTheBody();
    void asGatesTakeIt();
};

void MaximaTest::nothingFollowsFromNothing()
{
    QVERIFY(maximaByDay({}, squat).empty() && !maximumOn({}, squat, day(2026, 11, 2)) && !knownMaximum(std::span<const StrengthTest>(), squat, day(2026, 11, 2)));
    const std::vector other{set(day(2026, 11, 1), 80, 5)};
    QVERIFY(maximaByDay(other, bench).empty());
}

/// Five reps with 100 kg to failure: Lombardi says 117.46, Epley 116.67, Brzycki and O'Conner 112.5 (formulas as published).
void MaximaTest::aSetIsARange()
{
    const std::vector tests{set(day(2026, 11, 1), 100, 5)};
    const auto found = maximumOn(tests, squat, day(2026, 11, 2));
    QVERIFY(found && !found->max.isTested && found->day == day(2026, 11, 1));
    VERIFY_NEAR(inKilograms(found->max.lowest.value), 112.5, 1e-9);
    QVERIFY(found->max.highest.value > kilograms(117.4));
    QVERIFY(found->max.middle.u > Mass{});
}

void MaximaTest::aTestComesBeforeSets()
{
    const std::vector tests{set(day(2026, 11, 1), 100, 5), tried(day(2026, 11, 1), 115), tried(day(2026, 11, 1), 110)};
    const auto found = maximumOn(tests, squat, day(2026, 11, 1));
    QVERIFY(found && found->max.isTested && found->test.load == kilograms(115));
    QVERIFY(found->why == WhyBest::HeaviestTested && !found->setsShowMore);
    VERIFY_NEAR(inKilograms(found->max.middle.u), 2.5, 1e-9);
    // a jump that nobody noted
    const std::vector bare{tried(day(2026, 11, 1), 115, std::nullopt)};
    VERIFY_NEAR(inKilograms(maximumOn(bare, squat, day(2026, 11, 1))->max.middle.u), inKilograms(usualJump), 1e-9);
    // a set that shows more than the test: said
    const std::vector more{tried(day(2026, 11, 1), 100), set(day(2026, 11, 1), 100, 5)};
    QVERIFY(maximumOn(more, squat, day(2026, 11, 1))->setsShowMore);
}

void MaximaTest::conditionsAreNeverMixed()
{
    StrengthTest inSetup = set(day(2026, 11, 1), 90, 5);
    inSetup.conditions.setup = samples::numbered(5);
    const std::vector tests{set(day(2026, 11, 1), 100, 5), withChains(set(day(2026, 11, 1), 140, 5)), inSetup, withChains(set(day(2026, 10, 1), 95, 5))};
    const auto days = maximaByDay(tests, squat);
    QCOMPARE(days.size(), std::size_t(4));
    QVERIFY(days[0].day == day(2026, 10, 1));
    QVERIFY(days[1].test.conditions.isPlainIron()); // of one day plain iron first
    QVERIFY(!days[2].test.conditions.isPlainIron() && !days[3].test.conditions.isPlainIron());
}

void MaximaTest::theLastDayCountsNotTheBest()
{
    const std::vector tests{tried(day(2026, 10, 1), 130), tried(day(2026, 11, 1), 115), tried(day(2026, 11, 20), 140)};
    QCOMPARE(maximumOn(tests, squat, day(2026, 11, 2))->test.load.quantity(), kilograms(115));
    QCOMPARE(maximumOn(tests, squat, day(2026, 10, 31))->test.load.quantity(), kilograms(130));
    QVERIFY(!maximumOn(tests, squat, day(2026, 9, 30)));
}

void MaximaTest::plainIronFirst()
{
    const std::vector tests{tried(day(2026, 9, 1), 110), withChains(tried(day(2026, 11, 1), 120))};
    QCOMPARE(maximumOn(tests, squat, day(2026, 11, 2))->test.load.quantity(), kilograms(110));
    const std::vector chains{withChains(tried(day(2026, 11, 1), 120))};
    const auto known = knownMaximum(chains, squat, day(2026, 11, 2));
    QVERIFY(known && !known->plain);
}

/// Chins with 10 kg hung on 70 kg of body lift 80; with 20 kg of help 50.
void MaximaTest::theBodyIsPartOfTheLoad()
{
    StrengthTest chin = tried(day(2026, 11, 1), 10), helped = tried(day(2026, 11, 2), -20);
    chin.conditions.bodyMass = helped.conditions.bodyMass = Entered<Mass>(kilograms(70));
    VERIFY_NEAR(inKilograms(maximumOn(std::vector{chin}, squat, day(2026, 11, 1))->max.middle.value), 80, 1e-9);
    VERIFY_NEAR(inKilograms(maximumOn(std::vector{helped}, squat, day(2026, 11, 2))->max.middle.value), 50, 1e-9);
}

void MaximaTest::refusedStandsBeside()
{
    StrengthTest missed = set(day(2026, 11, 1), 100, 5);
    missed.missed = true;
    const std::vector tests{missed, set(day(2026, 11, 1), 90, 4), set(day(2026, 11, 1), 60, 14)};
    const auto found = maximumOn(tests, squat, day(2026, 11, 1));
    QVERIFY(found && found->test.load == kilograms(90));
    QCOMPARE(found->refused.size(), std::size_t(2));
    QVERIFY(!maximumOn(std::vector{missed}, squat, day(2026, 11, 1)));
}

void MaximaTest::theHistoryKeepsWhatIsRefused()
{
    StrengthTest missed = set(day(2026, 11, 3), 100, 5);
    missed.missed = true;
    const std::vector tests{set(day(2026, 10, 1), 100, 5), set(day(2026, 11, 1), 100, 6), withChains(set(day(2026, 11, 2), 90, 5)), missed, set(day(2026, 11, 3), 60, 14)};
    const auto history = strengthHistory(tests, squat);
    QCOMPARE(history.size(), std::size_t(4));
    QVERIFY(!history[0].isLikeBefore && history[1].isLikeBefore && !history[2].isLikeBefore && !history[3].isLikeBefore);
    QVERIFY(history[2].maximum && !history[3].maximum);
    QCOMPARE(history[3].tests.size(), std::size_t(2));
    QVERIFY(oneRepMaxFrom(missed).error().what == "missed reps" && oneRepMaxFrom(tests[4]).error().what == "reps" && oneRepMaxFrom(tests[0]).ok());
    QVERIFY(strengthHistory(tests, bench).empty());
}

void MaximaTest::withAndWithoutTheBody()
{
    StrengthTest with = tried(day(2026, 11, 1), 10);
    with.conditions.bodyMass = Entered<Mass>(kilograms(70));
    const auto history = strengthHistory(std::vector{tried(day(2026, 11, 1), 12.5), with}, squat);
    QVERIFY(history.size() == 2 && !history[1].isLikeBefore);
}

void MaximaTest::asGatesTakeIt()
{
    const std::vector tests{tried(day(2026, 11, 1), 115)};
    const auto known = knownMaximum(tests, squat, day(2026, 11, 2));
    QVERIFY(known && known->plain && known->tested && known->lift == squat && known->day == day(2026, 11, 1));
    QVERIFY(known->lowest <= known->value);
    VERIFY_NEAR(inKilograms(known->value), 115, 1e-9);
    VERIFY_NEAR(inKilograms(known->u), 2.5, 1e-9);
    keeping::Device device;
    QVERIFY(!knownMaximum(device.book, samples::numbered(3), squat, day(2026, 11, 2)));
}

QTEST_APPLESS_MAIN(MaximaTest)
#include "test_maxima.moc"
