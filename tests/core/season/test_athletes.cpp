// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/season/athlete.h"

#include <QtTest>

#include <set>
#endif

using namespace steelyard;

/// The lifts that ship, and what depends on a date.
class AthletesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void liftsKeepTheirNumbers_data();
    void liftsKeepTheirNumbers();
    void liftsAreEachThereOnce();
    void ofAgeTheYearAfter();
};

void AthletesTest::liftsKeepTheirNumbers_data()
{
    QTest::addColumn<int>("number");
    QTest::addColumn<std::string>("term");
    const auto row = [](int number, const char* term) { QTest::newRow(term) << number << std::string(term); };
    row(1, "back squat");
    row(6, "bench press");
    row(14, "deadlift");
    row(18, "clean");
    row(26, "isometric mid-thigh pull");
    row(32, "tyre flip");
    row(41, "medicine-ball throw");
}

void AthletesTest::liftsKeepTheirNumbers()
{
    QFETCH(int, number);
    QFETCH(std::string, term);
    const Lift* lift = shippedLift(LiftId{static_cast<std::uint16_t>(number)});
    QVERIFY(lift);
    QCOMPARE(std::string(lift->term), term);
}

void AthletesTest::liftsAreEachThereOnce()
{
    std::set<std::string> terms;
    std::uint16_t last = 0;
    for (const Lift& lift : shippedLifts()) {
        QVERIFY(lift.id.number > last && lift.id.number < 1000);
        last = lift.id.number;
        terms.insert(std::string(lift.term));
    }
    QCOMPARE(terms.size(), shippedLifts().size());
    QVERIFY(!shippedLift(LiftId{}) && !shippedLift(LiftId{42}));
    QVERIFY(shippedLift(LiftId{14})->start == LiftStart::Floor && shippedLift(LiftId{14})->onBar);
    QVERIFY(shippedLift(LiftId{1})->start == LiftStart::OwnBottom);
}

void AthletesTest::ofAgeTheYearAfter()
{
    using namespace std::chrono;
    const sys_days lastDay = year(2026) / December / 31, nextDay = year(2027) / January / 1;
    QVERIFY(majorityOn(std::nullopt, lastDay) == Majority::Unknown);
    QVERIFY(majorityOn(year(2008), lastDay) == Majority::MayBeMinor);
    QVERIFY(majorityOn(year(2008), nextDay) == Majority::Adult);
    QVERIFY(majorityOn(year(2009), nextDay) == Majority::MayBeMinor);
    QVERIFY(majorityOn(year(2030), nextDay) == Majority::MayBeMinor);
}

QTEST_APPLESS_MAIN(AthletesTest)
#include "test_athletes.moc"
