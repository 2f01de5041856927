// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/athlete/keepclearance.h"

#include "core/work/keeping/putright.h"
#include "core/work/keeping/undo.h"
#include "tests/core/work/athlete/somebody.h"

#include <QtTest>

#include <functional>
#endif

using namespace steelyard;
using keeping::day;
using keeping::Device;
using std::chrono::days;

using Change = std::function<void(Clearance&)>;
Q_DECLARE_METATYPE(Change)
Q_DECLARE_METATYPE(std::optional<Unfit>)

namespace {

SaidSo byPhysio(std::chrono::sys_days when) { return {"the physiotherapist", when}; }

void takeBack(Device& device, const RecordId& athlete, const SaidSo& by)
{
    takeClearanceBack(device.keeping, athlete, LiftId{1}, Method::EccentricRelease, by, device.told());
}

/// Entries of one device that another one takes.
void send(const Device& from, Device& to, std::size_t first = 0)
{
    const std::vector<journal::Held> entries(from.keeper.entries.begin() + static_cast<std::ptrdiff_t>(first), from.keeper.entries.end());
    for (const journal::Held& entry : entries)
        to.keeper.see(entry);
    to.book.take(entries);
}

}

/// Clearances: given, put right, and taken back so that nothing brings them back.
class KeepClearanceTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void comesBackAsItWasGiven();
    void refusals_data();
    void refusals();
    void waitsForTheGuardian();
    void takenBackTakesAllOfThem();
    void takingBackIsRefused();
    void takenBackOnOneDevicePutRightOnAnother();
    void takenBackOnTwoDevices();
    void undone();
    void aSampleKnowsItsPeople();
    void stateByDay();
};

void KeepClearanceTest::comesBackAsItWasGiven()
{
    Device device;
    Clearance c = somebody::clearance(somebody::adult(device), device.today + days(2));
    c.until = device.today + days(90);
    c.approvesMinor = true;
    keepClearance(device.keeping, c, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(device.keeping.deeds().front().deed == Deed::ClearanceKept);
    c.id = device.last.id;
    QVERIFY(*device.book.clearancesOf(c.athlete).front() == c);
    SeasonBook opened;
    opened.take(device.keeper.entries);
    QVERIFY(*opened.clearance(clearancePlace(c.id, c.athlete)) == c);
    QCOMPARE(opened.unreadCount(), std::size_t(0));
}

void KeepClearanceTest::refusals_data()
{
    QTest::addColumn<Change>("change");
    QTest::addColumn<std::optional<Unfit>>("unfit");
    const auto row = [](const char* name, std::optional<Unfit> unfit, Change change) { QTest::newRow(name) << std::move(change) << unfit; };
    row("fine", std::nullopt, [](Clearance&) {});
    row("nobody of that id", Unfit::AthleteUnknown, [](Clearance& c) { c.athlete = numberedids::numbered(5); });
    row("no lift", Unfit::LiftUnknown, [](Clearance& c) { c.lift = {}; });
    row("method 0", Unfit::LiftUnknown, [](Clearance& c) { c.method = static_cast<Method>(0); });
    row("method 18", Unfit::LiftUnknown, [](Clearance& c) { c.method = static_cast<Method>(18); });
    row("given by nobody", Unfit::WhoMissing, [](Clearance& c) { c.who = " \t"; });
    row("too long a name", Unfit::TextTooLong, [](Clearance& c) { c.who = std::string(201, 'n'); });
    row("half a letter", Unfit::TextUnreadable, [](Clearance& c) { c.who = "b\xc3"; });
    row("over before it begins", Unfit::UntilBeforeDay, [](Clearance& c) { c.until = c.day - days(1); });
    row("for one day", std::nullopt, [](Clearance& c) { c.until = c.day; });
    row("from tomorrow on", std::nullopt, [](Clearance& c) { c.day += days(1); });
}

void KeepClearanceTest::refusals()
{
    QFETCH(Change, change);
    QFETCH(std::optional<Unfit>, unfit);
    Device device;
    Clearance c = somebody::clearance(somebody::adult(device), device.today);
    keepClearance(device.keeping, c, device.told());
    Clearance known = *device.book.clearancesOf(c.athlete).front();
    change(c);
    keepClearance(device.keeping, c, device.told());
    QVERIFY(device.last.unfit == unfit);
    QCOMPARE(device.book.clearancesOf(known.athlete).size(), std::size_t(unfit ? 1 : 2));
    // put right, it is held to the same; of somebody else it is not there
    change(known);
    putClearanceRight(device.keeping, known, device.told());
    QVERIFY(device.last.unfit == (unfit == Unfit::AthleteUnknown ? std::optional(Unfit::RecordUnknown) : unfit));
    if (!unfit)
        QVERIFY(*device.book.clearance(clearancePlace(known.id, known.athlete)) == known);
}

void KeepClearanceTest::waitsForTheGuardian()
{
    Device device;
    const std::tuple<std::optional<int>, bool, std::optional<Unfit>> rows[] = {
        {std::nullopt, true, Unfit::BirthYearFirst}, {2011, false, Unfit::AgreementFirst}, {2011, true, std::nullopt}};
    for (const auto& [year, agreed, unfit] : rows) {
        keepClearance(device.keeping, somebody::clearance(somebody::born(device, year, agreed), device.today), device.told());
        QVERIFY(device.last.unfit == unfit);
    }
}

void KeepClearanceTest::takenBackTakesAllOfThem()
{
    Device device;
    const RecordId athlete = somebody::adult(device);
    for (const int daysFromNow : {-60, -10, 20})
        keepClearance(device.keeping, somebody::clearance(athlete, device.today + days(daysFromNow)), device.told());
    keepClearance(device.keeping, somebody::clearance(athlete, device.today, Method::MaximalTest), device.told());
    Clearance otherLift = somebody::clearance(athlete, device.today);
    otherLift.lift = LiftId{6};
    keepClearance(device.keeping, otherLift, device.told());
    takeBack(device, athlete, byPhysio(device.today));
    QVERIFY(device.last.kept());
    QVERIFY(device.keeping.deeds().front().deed == Deed::ClearanceTakenBack);
    int taken = 0;
    for (const Clearance* c : device.book.clearancesOf(athlete))
        if (c->takenBack) {
            QVERIFY(c->lift == LiftId{1} && c->method == Method::EccentricRelease);
            QVERIFY(c->takenBack == byPhysio(device.today));
            ++taken;
        }
    QCOMPARE(taken, 3);
    // what is put right stays taken back
    Clearance first = *device.book.clearancesOf(athlete).front();
    first.who = "the doctor";
    first.takenBack.reset();
    putClearanceRight(device.keeping, first, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(device.book.clearancesOf(athlete).front()->who == "the doctor" && device.book.clearancesOf(athlete).front()->takenBack);
}

void KeepClearanceTest::takingBackIsRefused()
{
    Device device;
    const RecordId athlete = somebody::adult(device);
    takeBack(device, athlete, byPhysio(device.today));
    QVERIFY(device.last.unfit == Unfit::RecordUnknown);
    keepClearance(device.keeping, somebody::clearance(athlete, device.today - days(5)), device.told());
    takeBack(device, athlete, byPhysio(device.today + days(1)));
    QVERIFY(device.last.unfit == Unfit::DayAhead);
    takeBack(device, athlete, {"", device.today});
    QVERIFY(device.last.unfit == Unfit::WhoMissing);
    QVERIFY(!device.book.clearancesOf(athlete).front()->takenBack);
    takeBack(device, athlete, byPhysio(device.today));
    takeBack(device, athlete, byPhysio(device.today));
    QVERIFY(device.last.unfit == Unfit::AlreadySaid);
    QVERIFY(device.book.clearancesOf(athlete).front()->takenBack == byPhysio(device.today));
}

void KeepClearanceTest::takenBackOnOneDevicePutRightOnAnother()
{
    Device one(1), other(2);
    const RecordId athlete = somebody::adult(one);
    keepClearance(one.keeping, somebody::clearance(athlete, one.today - days(5)), one.told());
    send(one, other);
    const std::size_t shared = one.keeper.entries.size();
    takeBack(one, athlete, byPhysio(one.today));
    // later by the clock, and knowing nothing of it
    other.keeper.now += std::chrono::hours(5);
    Clearance c = *other.book.clearancesOf(athlete).front();
    c.until = other.today + days(300);
    putClearanceRight(other.keeping, c, other.told());
    send(one, other, shared);
    send(other, one);
    for (const Device* device : {&one, &other}) {
        const Clearance* now = device->book.clearancesOf(athlete).front();
        QVERIFY(now->takenBack && now->until == c.until);
    }
}

void KeepClearanceTest::takenBackOnTwoDevices()
{
    Device one(1), other(2);
    const RecordId athlete = somebody::adult(one);
    keepClearance(one.keeping, somebody::clearance(athlete, one.today - days(5)), one.told());
    send(one, other);
    const std::size_t shared = one.keeper.entries.size();
    takeBack(one, athlete, byPhysio(one.today - days(1)));
    other.keeper.now += std::chrono::hours(5);
    takeBack(other, athlete, byPhysio(other.today));
    // taken back there, it is undone there too: that does not undo what was said here
    undo(other.keeping, 0, other.told());
    QVERIFY(!other.book.clearancesOf(athlete).front()->takenBack);
    send(one, other, shared);
    QVERIFY(other.book.clearancesOf(athlete).front()->takenBack == byPhysio(one.today - days(1)));
    QCOMPARE(other.book.review().size(), std::size_t(1));
    // taken back on both, the last day counts
    Device third(3);
    for (const std::size_t first : {std::size_t(0), shared})
        send(one, third, first);
    Device fourth(4);
    std::vector<journal::Held> before(one.keeper.entries.begin(), one.keeper.entries.begin() + static_cast<std::ptrdiff_t>(shared));
    fourth.book.take(before);
    takeBack(fourth, athlete, byPhysio(fourth.today));
    send(fourth, third);
    QVERIFY(third.book.clearancesOf(athlete).front()->takenBack == byPhysio(fourth.today));
}

void KeepClearanceTest::undone()
{
    Device device;
    const RecordId athlete = somebody::adult(device);
    keepClearance(device.keeping, somebody::clearance(athlete, device.today - days(9)), device.told());
    keepClearance(device.keeping, somebody::clearance(athlete, device.today - days(5)), device.told());
    takeBack(device, athlete, byPhysio(device.today));
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept());
    for (const Clearance* c : device.book.clearancesOf(athlete))
        QVERIFY(!c->takenBack);
    undo(device.keeping, 0, device.told());
    QCOMPARE(device.book.clearancesOf(athlete).size(), std::size_t(1));
    takeBack(device, athlete, byPhysio(device.today));
    QVERIFY(device.last.kept() && device.book.clearancesOf(athlete).front()->takenBack);
}

void KeepClearanceTest::aSampleKnowsItsPeople()
{
    Device device;
    const RecordId athlete = somebody::adult(device), other = somebody::adult(device);
    keepClearance(device.keeping, somebody::clearance(athlete, device.today), device.told());
    device.keeping.setSample(true);
    keepClearance(device.keeping, somebody::clearance(other, device.today), device.told());
    QVERIFY(device.last.kept());
    Clearance c = somebody::clearance(other, device.today);
    c.who = "somebody real";
    keepClearance(device.keeping, c, device.told());
    QVERIFY(device.last.unfit == Unfit::SampleTakesNobody);
    takeBack(device, other, {"somebody real", device.today});
    QVERIFY(device.last.unfit == Unfit::SampleTakesNobody);
    takeBack(device, other, {"the head coach", device.today});
    QVERIFY(device.last.kept());
}

void KeepClearanceTest::stateByDay()
{
    Clearance c = somebody::clearance({}, day(2026, 11, 2));
    QVERIFY(stateOn(c, day(2026, 11, 1)) == ClearanceState::NotYet);
    QVERIFY(stateOn(c, day(2026, 11, 2)) == ClearanceState::Valid && stateOn(c, day(2036, 1, 1)) == ClearanceState::Valid);
    c.until = day(2026, 11, 14);
    QVERIFY(stateOn(c, day(2026, 11, 14)) == ClearanceState::Valid && stateOn(c, day(2026, 11, 15)) == ClearanceState::Expired);
    c.takenBack = SaidSo{"the doctor", day(2026, 11, 10)};
    QVERIFY(stateOn(c, day(2026, 11, 9)) == ClearanceState::Valid && stateOn(c, day(2026, 11, 10)) == ClearanceState::TakenBack);
    QVERIFY(stateOn(c, day(2026, 11, 20)) == ClearanceState::TakenBack);
}

QTEST_APPLESS_MAIN(KeepClearanceTest)
#include "test_keepclearance.moc"
