// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/keeplift.h"

#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/keepsetup.h"
#include "core/work/keeping/putright.h"
#include "core/work/keeping/undo.h"
#include "core/work/records/codec.h"
#include "tests/core/work/memorykeeper.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;
using keeping::Device;

namespace {

OwnLift pinSquat()
{
    return {{}, "Pin squat", LiftId{1}, LiftStart::OwnBottom};
}

}

/// Lifts that a coach adds: kept, changed, taken out, and used for marks and set-ups like any other.
class LiftsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void addedAndChanged();
    void refusals();
    void marksAndSetups();
    void takenOutAndBack();
    void twoDevicesAddOneEach();
    void anOlderAppTakesItForNoOther();
};

void LiftsTest::addedAndChanged()
{
    Device device;
    keepLift(device.keeping, pinSquat(), device.told());
    QVERIFY(device.last.kept());
    const RecordId id = device.last.id;
    QCOMPARE(device.book.lifts().size(), std::size_t(1));
    OwnLift wanted = pinSquat();
    wanted.id = id;
    QVERIFY(*device.book.lift(id) == wanted);
    QVERIFY(device.book.startOf(LiftId::added(id)) == LiftStart::OwnBottom);
    wanted.name = "Block pull";
    wanted.like = {};
    wanted.start = LiftStart::Floor;
    const std::size_t entries = device.keeper.entries.size();
    keepLift(device.keeping, wanted, device.told());
    QVERIFY(*device.book.lift(id) == wanted);
    QCOMPARE(device.keeper.entries.size(), entries + 3);
    QVERIFY(device.book.startOf(LiftId::added(id)) == LiftStart::Floor);
    undo(device.keeping, 0, device.told());
    QCOMPARE(device.book.lift(id)->name, std::string("Pin squat"));
    undo(device.keeping, 0, device.told());
    QVERIFY(device.book.lifts().empty());
    // those that ship start where they always did
    QVERIFY(device.book.startOf(LiftId{14}) == LiftStart::Floor && device.book.startOf(LiftId{1}) == LiftStart::OwnBottom);
}

void LiftsTest::refusals()
{
    Device device;
    const auto unfit = [&device](const OwnLift& lift) {
        keepLift(device.keeping, lift, device.told());
        return device.last.unfit;
    };
    OwnLift lift = pinSquat();
    lift.name = "  ";
    QVERIFY(unfit(lift) == Unfit::NameMissing);
    lift = pinSquat();
    lift.id = samples::numbered(5);
    QVERIFY(unfit(lift) == Unfit::LiftUnknown);
    // a jump has no bar, and what was added is not what another is like
    for (const LiftId like : {LiftId{40}, LiftId{999}, LiftId::added(samples::numbered(5))}) {
        lift = pinSquat();
        lift.like = like;
        QVERIFY(unfit(lift) == Unfit::LiftUnknown);
    }
    QVERIFY(device.keeper.entries.empty());
}

void LiftsTest::marksAndSetups()
{
    Device device;
    keepLift(device.keeping, pinSquat(), device.told());
    const LiftId lift = LiftId::added(device.last.id);
    Athlete athlete;
    athlete.name = "Anna";
    athlete.marks[lift] = samples::marks(0.9, 1.3);
    athlete.marks[LiftId{1}] = samples::marks(0.77, 1.27);
    keepAthlete(device.keeping, athlete, device.told());
    const RecordId anna = device.last.id;
    QVERIFY(device.last.kept());
    QVERIFY(device.book.athlete(anna)->marks == athlete.marks);
    keepSetup(device.keeping, {{}, anna, lift, samples::setup(60), {}}, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(device.book.setup(device.last.id)->lift == lift);
    SavedSetup other = *device.book.setup(device.last.id);
    other.lift = LiftId{1};
    keepSetup(device.keeping, other, device.told());
    QVERIFY(device.book.setup(other.id)->lift == LiftId{1});
    undo(device.keeping, 0, device.told());
    QVERIFY(device.book.setup(other.id)->lift == lift);
    // all of it again from the entries alone
    SeasonBook again;
    again.take(device.keeper.entries);
    QVERIFY(again.athlete(anna)->marks == athlete.marks && again.setup(other.id)->lift == lift);
    QCOMPARE(again.unreadCount(), std::size_t(0));
}

void LiftsTest::takenOutAndBack()
{
    Device device;
    keepLift(device.keeping, pinSquat(), device.told());
    const RecordId id = device.last.id;
    Athlete athlete;
    athlete.name = "Anna";
    athlete.marks[LiftId::added(id)] = samples::marks(0.9, 1.3);
    keepAthlete(device.keeping, athlete, device.told());
    takeOut(device.keeping, liftPlace(id), device.told());
    QVERIFY(device.last.kept());
    QVERIFY(device.book.lifts().empty());
    QCOMPARE(device.book.athletes().front()->marks.size(), std::size_t(1));
    takeOut(device.keeping, liftPlace(id), device.told());
    QVERIFY(device.last.unfit == Unfit::RecordUnknown);
    undo(device.keeping, 0, device.told());
    QCOMPARE(device.book.lifts().size(), std::size_t(1));
}

void LiftsTest::twoDevicesAddOneEach()
{
    Device one(1), other(2);
    keepLift(one.keeping, pinSquat(), one.told());
    OwnLift pull{{}, "Block pull", LiftId{14}, LiftStart::Floor};
    keepLift(other.keeping, pull, other.told());
    one.book.take(other.keeper.entries);
    other.book.take(one.keeper.entries);
    for (const Device* device : {&one, &other}) {
        QCOMPARE(device->book.lifts().size(), std::size_t(2));
        QCOMPARE(device->book.lifts().front()->name, std::string("Block pull"));
        QVERIFY(device->book.review().empty());
    }
}

void LiftsTest::anOlderAppTakesItForNoOther()
{
    // it reads a whole number there, and nothing else
    const LiftId lift = LiftId::added(samples::numbered(9));
    QVERIFY(!journal::numberIn(*contentOf(lift)));
    QVERIFY(journal::numberIn(*contentOf(LiftId{14})) == 14);
    // and so do parts of registers: digits, and no more of them than a small number has
    QCOMPARE(partOf(lift).size(), std::size_t(32));
}

QTEST_APPLESS_MAIN(LiftsTest)
#include "test_lifts.moc"
