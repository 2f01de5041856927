// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/athlete/keeptest.h"

#include "core/work/keeping/putright.h"
#include "tests/core/work/athlete/somebody.h"

#include <QtTest>

#include <functional>
#include <limits>
#endif

using namespace steelyard;
using keeping::Device;
using std::chrono::days;

using Change = std::function<void(StrengthTest&)>;
Q_DECLARE_METATYPE(Change)
Q_DECLARE_METATYPE(std::optional<Unfit>)

/// Tests of strength: what is kept, what is refused, and in which order they stand.
class KeepTestTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void comesBackAsItWasTyped();
    void byLiftAndDay();
    void refusals_data();
    void refusals();
    void waitsForTheGuardian();
    void aSampleTakesNoNote();
    void putRight();
};

void KeepTestTest::comesBackAsItWasTyped()
{
    Device device;
    StrengthTest chin = somebody::test(somebody::adult(device), device.today - days(3), -7.5, 1);
    chin.lift = LiftId{12};
    chin.repsInReserve = 0;
    chin.missed = chin.maximum = true;
    chin.leastJump = kilograms(1.25);
    chin.conditions = {{Method::BandsAbove}, numberedids::numbered(77), kilograms(61.5)};
    chin.note = "strap on the left";
    keepStrengthTest(device.keeping, chin, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(device.keeping.deeds().front().deed == Deed::TestKept);
    chin.id = device.last.id;
    QVERIFY(!chin.conditions.isPlainIron());
    QVERIFY(*device.book.testsOf(chin.athlete).front() == chin);
    SeasonBook opened;
    opened.take(device.keeper.entries);
    QVERIFY(*opened.test(strengthTestPlace(chin.id, chin.athlete)) == chin);
    QCOMPARE(opened.unreadCount(), std::size_t(0));
}

void KeepTestTest::byLiftAndDay()
{
    Device device;
    const RecordId athlete = somebody::adult(device), other = somebody::adult(device);
    const auto keep = [&](const RecordId& whose, int daysAgo, double kg, LiftId lift) {
        StrengthTest test = somebody::test(whose, device.today - days(daysAgo), kg);
        test.lift = lift;
        keepStrengthTest(device.keeping, test, device.told());
        QVERIFY(device.last.kept());
    };
    keep(athlete, 0, 82, {1});
    keep(athlete, 9, 80, {1});
    keep(other, 1, 60, {1});
    keep(athlete, 9, 81, {1});
    keep(athlete, 2, 90, {14});
    std::vector<double> squats, all;
    for (const StrengthTest* test : device.book.testsOf(athlete, {1}))
        squats.push_back(test->load.si());
    for (const StrengthTest* test : device.book.testsOf(athlete))
        all.push_back(test->load.si());
    QVERIFY((squats == std::vector<double>{80, 81, 82}));
    QVERIFY((all == std::vector<double>{80, 81, 90, 82}));
    QVERIFY(device.book.testsOf(numberedids::numbered(5)).empty());
    // of one day in the order they were kept, whatever their ids
    Device second(2);
    second.book.take(device.keeper.entries);
    device.keeper.now += std::chrono::hours(3);
    keepStrengthTest(second.keeping, somebody::test(other, device.today, 61), second.told());
    keepStrengthTest(device.keeping, somebody::test(other, device.today, 62), device.told());
    QVERIFY(device.last.id < second.last.id);
    device.book.take(second.keeper.entries);
    const auto both = device.book.testsOf(other);
    QVERIFY(both.size() == 3 && both[1]->load == kilograms(61) && both[2]->load == kilograms(62));
}

void KeepTestTest::refusals_data()
{
    QTest::addColumn<Change>("change");
    QTest::addColumn<std::optional<Unfit>>("unfit");
    const auto row = [](const char* name, std::optional<Unfit> unfit, Change change) { QTest::newRow(name) << std::move(change) << unfit; };
    row("fine", std::nullopt, [](StrengthTest&) {});
    row("nobody of that id", Unfit::AthleteUnknown, [](StrengthTest& t) { t.athlete = numberedids::numbered(5); });
    row("no lift", Unfit::LiftUnknown, [](StrengthTest& t) { t.lift = {}; });
    row("no load", Unfit::QuantityUnfit, [](StrengthTest& t) { t.load = kilograms(0); });
    row("less than no load", Unfit::QuantityUnfit, [](StrengthTest& t) { t.load = kilograms(-5); });
    row("not a number", Unfit::QuantityUnfit, [](StrengthTest& t) { t.load = kilograms(std::numeric_limits<double>::quiet_NaN()); });
    row("endless", Unfit::QuantityUnfit, [](StrengthTest& t) { t.load = kilograms(std::numeric_limits<double>::infinity()); });
    row("past what can be written", Unfit::QuantityUnfit, [](StrengthTest& t) { t.load = kilograms(1e30); });
    row("the body alone", std::nullopt, [](StrengthTest& t) { t.load = kilograms(0); t.conditions.bodyMass = kilograms(60); });
    row("help of all the body", Unfit::QuantityUnfit, [](StrengthTest& t) { t.load = kilograms(-60); t.conditions.bodyMass = kilograms(60); });
    row("no body", Unfit::QuantityUnfit, [](StrengthTest& t) { t.conditions.bodyMass = kilograms(0); });
    row("no rep", Unfit::RepsUnfit, [](StrengthTest& t) { t.reps = 0; });
    row("no rep, missed", std::nullopt, [](StrengthTest& t) { t.reps = 0; t.missed = true; });
    row("less than no rep", Unfit::RepsUnfit, [](StrengthTest& t) { t.reps = -1; t.missed = true; });
    row("reps beyond counting", Unfit::RepsUnfit, [](StrengthTest& t) { t.reps = 501; });
    row("reserve below nothing", Unfit::RepsUnfit, [](StrengthTest& t) { t.repsInReserve = -1; });
    row("missed with one in reserve", Unfit::RepsUnfit, [](StrengthTest& t) { t.missed = true; t.repsInReserve = 1; });
    row("missed with none in reserve", std::nullopt, [](StrengthTest& t) { t.missed = true; t.repsInReserve = 0; });
    row("maximum", std::nullopt, [](StrengthTest& t) { t.maximum = true; t.reps = 1; t.leastJump = kilograms(2.5); });
    row("maximum of two", Unfit::RepsUnfit, [](StrengthTest& t) { t.maximum = true; t.reps = 2; });
    row("maximum with one in reserve", Unfit::RepsUnfit, [](StrengthTest& t) { t.maximum = true; t.reps = 1; t.repsInReserve = 1; });
    row("jump without a maximum", Unfit::RepsUnfit, [](StrengthTest& t) { t.leastJump = kilograms(2.5); });
    row("jump of nothing", Unfit::RepsUnfit, [](StrengthTest& t) { t.maximum = true; t.reps = 1; t.leastJump = kilograms(0); });
    row("chains hung", std::nullopt, [](StrengthTest& t) { t.conditions.hung = {Method::Chains}; });
    row("a tyre hung", Unfit::QuantityUnfit, [](StrengthTest& t) { t.conditions.hung = {Method::Chains, Method::Tyre}; });
    row("today", std::nullopt, [](StrengthTest& t) { t.day += days(3); });
    row("tomorrow", Unfit::DayAhead, [](StrengthTest& t) { t.day += days(4); });
    row("half a letter", Unfit::TextUnreadable, [](StrengthTest& t) { t.note = "b\xc3"; });
    row("too long a note", Unfit::TextTooLong, [](StrengthTest& t) { t.note = std::string(20'001, 'n'); });
}

void KeepTestTest::refusals()
{
    QFETCH(Change, change);
    QFETCH(std::optional<Unfit>, unfit);
    Device device;
    StrengthTest test = somebody::test(somebody::adult(device), device.today - days(3));
    change(test);
    const int asked = device.keeper.askedCount;
    keepStrengthTest(device.keeping, test, device.told());
    QVERIFY(device.last.unfit == unfit);
    QCOMPARE(device.keeper.askedCount, asked + (unfit ? 0 : 1));
    QCOMPARE(device.book.testsOf(test.athlete).size(), std::size_t(unfit ? 0 : 1));
}

void KeepTestTest::waitsForTheGuardian()
{
    Device device;
    const std::tuple<std::optional<int>, bool, std::optional<Unfit>> rows[] = {
        {std::nullopt, true, Unfit::BirthYearFirst}, {2011, false, Unfit::AgreementFirst}, {2011, true, std::nullopt}, {2007, false, std::nullopt}};
    for (const auto& [year, agreed, unfit] : rows) {
        keepStrengthTest(device.keeping, somebody::test(somebody::born(device, year, agreed), device.today), device.told());
        QVERIFY(device.last.unfit == unfit);
    }
}

void KeepTestTest::aSampleTakesNoNote()
{
    Device device;
    StrengthTest test = somebody::test(somebody::adult(device), device.today);
    test.note = "belt";
    keepStrengthTest(device.keeping, test, device.told());
    device.keeping.setSample(true);
    keepStrengthTest(device.keeping, test, device.told());
    QVERIFY(device.last.unfit == Unfit::SampleTakesNobody);
    StrengthTest known = *device.book.testsOf(test.athlete).front();
    known.load = kilograms(85);
    putStrengthTestRight(device.keeping, known, device.told());
    QVERIFY(device.last.kept());
    known.note = "a belt";
    putStrengthTestRight(device.keeping, known, device.told());
    QVERIFY(device.last.unfit == Unfit::SampleTakesNobody);
    test.note.clear();
    keepStrengthTest(device.keeping, test, device.told());
    QVERIFY(device.last.kept());
}

void KeepTestTest::putRight()
{
    Device device;
    const RecordId athlete = somebody::adult(device);
    keepStrengthTest(device.keeping, somebody::test(athlete, device.today, 80), device.told());
    StrengthTest test = *device.book.testsOf(athlete).front();
    test.load = kilograms(85);
    test.reps = 3;
    test.day -= days(1);
    putStrengthTestRight(device.keeping, test, device.told());
    QVERIFY(*device.book.testsOf(athlete).front() == test);
    QVERIFY(device.book.righted(strengthTestPlace(test.id, athlete)));
    test.reps = 0;
    putStrengthTestRight(device.keeping, test, device.told());
    QVERIFY(device.last.unfit == Unfit::RepsUnfit);
    test.reps = 3;
    test.day = device.today + days(1);
    putStrengthTestRight(device.keeping, test, device.told());
    QVERIFY(device.last.unfit == Unfit::DayAhead);
    // a day that stood ahead already comes from a clock that was wrong
    test = *device.book.testsOf(athlete).front();
    device.today = test.day - days(5);
    test.load = kilograms(86);
    putStrengthTestRight(device.keeping, test, device.told());
    QVERIFY(device.last.kept());
    // somebody else's, and one that is gone
    const RecordId other = somebody::adult(device);
    test.athlete = other;
    putStrengthTestRight(device.keeping, test, device.told());
    QVERIFY(device.last.unfit == Unfit::RecordUnknown);
    test.athlete = athlete;
    takeOut(device.keeping, strengthTestPlace(test.id, athlete), device.told());
    QVERIFY(device.last.kept() && device.book.testsOf(athlete).empty());
    putStrengthTestRight(device.keeping, test, device.told());
    QVERIFY(device.last.unfit == Unfit::RecordUnknown);
}

QTEST_APPLESS_MAIN(KeepTestTest)
#include "test_keeptest.moc"
