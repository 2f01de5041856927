// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/undo.h"

#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/keepkititem.h"
#include "core/work/keeping/keepsetup.h"
#include "core/work/keeping/keepvenue.h"
#include "core/work/keeping/putright.h"
#include "tests/core/work/memorykeeper.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <functional>
#endif

using namespace steelyard;
using keeping::day;
using keeping::Device;

using Step = std::function<void(Device&)>;
Q_DECLARE_METATYPE(Step)

namespace {

/// The records as they are shown; what was never there and what was taken back look the same.
struct Shown {
    explicit Shown(const SeasonBook& book) : settings(book.settings())
    {
        for (const Athlete* a : book.athletes())
            athletes.push_back(*a);
        for (const Venue* v : book.venues())
            venues.push_back(*v);
        for (const KitRecord* k : book.kit())
            kit.push_back(*k);
        for (const Athlete& a : athletes)
            for (const SavedSetup* s : book.setupsOf(a.id))
                setups.push_back(*s);
    }
    bool operator==(const Shown&) const = default;

    std::vector<Athlete> athletes;
    std::vector<Venue> venues;
    std::vector<KitRecord> kit;
    std::vector<SavedSetup> setups;
    VaultSettings settings;
};

RecordId anna(Device& d) { return d.book.athletes().front()->id; }
RecordId chain(Device& d) { return d.book.kit().front()->item.id; }

/// An athlete with everything, a venue, a chain measured twice, a set-up.
void fill(Device& device)
{
    Athlete athlete;
    athlete.name = "Anna";
    athlete.squad = "Women";
    athlete.birthYear = std::chrono::year(1999);
    athlete.notes = "Left-handed.";
    athlete.marks[LiftId{1}] = samples::marks(0.77, 1.27);
    keepAthlete(device.keeping, athlete, device.told());
    keepBodySize(device.keeping, anna(device), {{}, day(2026, 9, 1), kilograms(61.5), metres(1.72)}, device.told());
    keepVenue(device.keeping, {{}, "School hall", "60 kg of plates"}, device.told());
    keepKitItem(device.keeping, samples::item(0, "Chain", samples::weighed()), device.told());
    KitItem item = device.book.kit().front()->item;
    item.measurement = samples::gauged();
    keepKitItem(device.keeping, item, device.told());
    keepSetup(device.keeping, {{}, anna(device), LiftId{1}, samples::setup(60), {}}, device.told());
    device.keeping.forget();
    device.today += std::chrono::days(3);
}

}

/// Taking back: entries that say the inverse, from a list of the last twenty.
class UndoTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void standsAsBefore_data();
    void standsAsBefore();
    void inAnyOrderWhereTheyDoNotMeet();
    void lastFirstWhereTheyMeet();
    void listHoldsTwenty();
    void nothingKeptIsNoDeed();
    void refusedUndoStaysOnTheList();
    void askedTwiceIsDoneOnce();
    void nothingThere();
    void otherDevicesFollow();
};

void UndoTest::standsAsBefore_data()
{
    QTest::addColumn<Step>("step");
    const auto row = [](const char* name, Step step) { QTest::newRow(name) << std::move(step); };
    row("new athlete", [](Device& d) { keepAthlete(d.keeping, [] { Athlete a; a.name = "Zoe"; a.squad = "Youth"; return a; }(), d.told()); });
    row("every field changed", [](Device& d) {
        Athlete a = *d.book.athlete(anna(d));
        a.name = "Ana";
        a.squad.clear();
        a.birthYear = std::chrono::year(1998);
        a.agreement = GuardianAgreement{"her mother", day(2020, 1, 1)};
        a.notes = "Right-handed.";
        a.marks[LiftId{1}].rack = metres(1.2);
        a.marks[LiftId{6}] = samples::marks(0.3, 0.7);
        keepAthlete(d.keeping, a, d.told());
    });
    row("every field taken back", [](Device& d) {
        Athlete a;
        a.id = anna(d);
        a.name = "Anna";
        keepAthlete(d.keeping, a, d.told());
    });
    row("body size", [](Device& d) { keepBodySize(d.keeping, anna(d), {{}, day(2026, 10, 1), kilograms(62), std::nullopt}, d.told()); });
    row("body size put right", [](Device& d) {
        BodySize size = d.book.athlete(anna(d))->sizes.front();
        size.day += std::chrono::days(1);
        size.mass = kilograms(63);
        putBodySizeRight(d.keeping, anna(d), size, d.told());
    });
    row("athlete taken out", [](Device& d) { takeOut(d.keeping, athletePlace(anna(d)), d.told()); });
    row("venue changed", [](Device& d) {
        Venue venue = *d.book.venues().front();
        venue.name = "Hall";
        venue.notes.clear();
        keepVenue(d.keeping, venue, d.told());
    });
    row("new item", [](Device& d) { keepKitItem(d.keeping, samples::item(0, "Band", samples::band()), d.told()); });
    row("item measured again", [](Device& d) {
        KitItem item = d.book.item(chain(d))->item;
        item.measurement = samples::weighed();
        item.pair = false;
        item.venue = d.book.venues().front()->id;
        keepKitItem(d.keeping, item, d.told());
    });
    row("measurement put right", [](Device& d) {
        MeasurementRecord record = d.book.item(chain(d))->measurements.back();
        std::get<ChainMeasurement>(record.measured).mass = kilograms(9);
        putMeasurementRight(d.keeping, record, d.told());
    });
    row("measurement taken out", [](Device& d) { takeOut(d.keeping, measurementPlace(d.book.item(chain(d))->measurements.front().id), d.told()); });
    row("set-up changed", [](Device& d) {
        SavedSetup setup = *d.book.setupsOf(anna(d)).front();
        setup.setup.bar.wanted = kilograms(80);
        setup.lift = LiftId{2};
        keepSetup(d.keeping, setup, d.told());
    });
    row("set-up taken out", [](Device& d) { takeOut(d.keeping, setupPlace(d.book.setupsOf(anna(d)).front()->id, anna(d)), d.told()); });
    row("settings", [](Device& d) { keepSettings(d.keeping, {MassUnit::Pound, LengthUnit::Inch}, d.told()); });
}

void UndoTest::standsAsBefore()
{
    QFETCH(Step, step);
    Device device;
    fill(device);
    const Shown before(device.book);
    step(device);
    QVERIFY(device.last.kept());
    const Shown after(device.book);
    QVERIFY(!(after == before));
    QCOMPARE(device.keeping.deeds().size(), std::size_t(1));
    QVERIFY(canUndo(device.keeping, 0));
    const std::size_t entries = device.keeper.entries.size();
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(Shown(device.book) == before);
    QVERIFY(device.keeping.deeds().empty());
    // nothing was rubbed out
    QVERIFY(device.keeper.entries.size() > entries);
    QVERIFY(device.book.review().empty());
    // and it can be done again
    step(device);
    QVERIFY(device.last.kept());
}

void UndoTest::inAnyOrderWhereTheyDoNotMeet()
{
    Device device;
    fill(device);
    const Shown before(device.book);
    Athlete athlete = *device.book.athlete(anna(device));
    athlete.squad = "Youth";
    keepAthlete(device.keeping, athlete, device.told());
    athlete.notes.clear();
    keepAthlete(device.keeping, athlete, device.told());
    QCOMPARE(device.keeping.deeds().size(), std::size_t(2));
    undo(device.keeping, 1, device.told());
    QVERIFY(device.last.kept());
    QCOMPARE(device.book.athlete(athlete.id)->squad, std::string("Women"));
    undo(device.keeping, 0, device.told());
    QVERIFY(Shown(device.book) == before);
}

void UndoTest::lastFirstWhereTheyMeet()
{
    Device device;
    fill(device);
    const Shown before(device.book);
    Athlete athlete = *device.book.athlete(anna(device));
    for (const char* squad : {"Youth", "Seniors"}) {
        athlete.squad = squad;
        keepAthlete(device.keeping, athlete, device.told());
    }
    QVERIFY(!canUndo(device.keeping, 1));
    undo(device.keeping, 1, device.told());
    QVERIFY(device.last.unfit == Unfit::ChangedSince);
    QCOMPARE(device.book.athlete(athlete.id)->squad, std::string("Seniors"));
    undo(device.keeping, 0, device.told());
    QCOMPARE(device.book.athlete(athlete.id)->squad, std::string("Youth"));
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(Shown(device.book) == before);
    // added, then put right: the adding waits for the putting right
    keepBodySize(device.keeping, athlete.id, {{}, day(2026, 10, 1), kilograms(62), std::nullopt}, device.told());
    BodySize size = device.book.athlete(athlete.id)->sizes.back();
    size.mass = kilograms(64);
    putBodySizeRight(device.keeping, athlete.id, size, device.told());
    undo(device.keeping, 1, device.told());
    QVERIFY(device.last.unfit == Unfit::ChangedSince);
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(device.book.athlete(athlete.id)->sizes.back().mass == kilograms(62));
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(Shown(device.book) == before);
    // put right twice, taken back twice
    const BodySize first = device.book.athlete(athlete.id)->sizes.front();
    for (const double kg : {62.5, 63.5}) {
        size = first;
        size.mass = kilograms(kg);
        putBodySizeRight(device.keeping, athlete.id, size, device.told());
    }
    for (const double kg : {62.5, 61.5}) {
        undo(device.keeping, 0, device.told());
        QVERIFY(device.last.kept());
        QVERIFY(device.book.athlete(athlete.id)->sizes.front().mass == kilograms(kg));
    }
    QVERIFY(Shown(device.book) == before);
}

void UndoTest::listHoldsTwenty()
{
    Device device;
    for (int i = 0; i < 25; ++i)
        keepVenue(device.keeping, {{}, "Venue " + std::to_string(i), {}}, device.told());
    QCOMPARE(device.keeping.deeds().size(), SeasonKeeping::mostUndoCount);
    QVERIFY(device.keeping.deeds().front().id == device.last.id);
    QVERIFY(device.keeping.deeds().front().deed == Deed::VenueKept);
    for (int i = 0; i < 20; ++i)
        undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept());
    QCOMPARE(device.book.venues().size(), std::size_t(5));
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.unfit == Unfit::NothingToUndo);
}

void UndoTest::nothingKeptIsNoDeed()
{
    Device device;
    fill(device);
    keepAthlete(device.keeping, *device.book.athlete(anna(device)), device.told());
    QVERIFY(device.last.kept());
    QVERIFY(device.keeping.deeds().empty());
}

void UndoTest::refusedUndoStaysOnTheList()
{
    Device device;
    fill(device);
    takeOut(device.keeping, itemPlace(chain(device)), device.told());
    device.keeper.refusal = vault::Refusal{vault::Code::WriteFailedTryAgain};
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.refusal == device.keeper.refusal);
    QVERIFY(device.book.kit().empty());
    QVERIFY(canUndo(device.keeping, 0));
    device.keeper.refusal.reset();
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept());
    QCOMPARE(device.book.kit().size(), std::size_t(1));
}

void UndoTest::askedTwiceIsDoneOnce()
{
    Device device;
    fill(device);
    takeOut(device.keeping, itemPlace(chain(device)), device.told());
    const std::size_t before = device.keeper.entries.size();
    device.keeper.later = true;
    undo(device.keeping, 0, device.told());
    QVERIFY(!canUndo(device.keeping, 0));
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.unfit == Unfit::ChangedSince);
    device.keeper.answer();
    QVERIFY(device.last.kept());
    QCOMPARE(device.keeper.entries.size(), before + 1);
}

void UndoTest::nothingThere()
{
    Device device;
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.unfit == Unfit::NothingToUndo);
    QVERIFY(!canUndo(device.keeping, 0));
}

void UndoTest::otherDevicesFollow()
{
    Device device;
    fill(device);
    takeOut(device.keeping, athletePlace(anna(device)), device.told());
    undo(device.keeping, 0, device.told());
    std::vector<journal::Held> backwards(device.keeper.entries.rbegin(), device.keeper.entries.rend());
    SeasonBook other;
    other.take(backwards);
    QVERIFY(Shown(other) == Shown(device.book));
    QCOMPARE(other.athletes().size(), std::size_t(1));
}

QTEST_APPLESS_MAIN(UndoTest)
#include "test_undo.moc"
