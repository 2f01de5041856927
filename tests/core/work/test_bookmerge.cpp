// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/journal/content.h"
#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/athlete/keepisometric.h"
#include "core/work/keeping/keepkititem.h"
#include "core/work/keeping/keepsetup.h"
#include "core/work/keeping/keepvenue.h"
#include "core/work/keeping/putright.h"
#include "core/work/keeping/undo.h"
#include "tests/core/work/memorykeeper.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#include <rapidcheck.h>

#include <algorithm>
#include <random>
#endif

using namespace steelyard;
using keeping::Device;

namespace {

/// Numbers that one step is made of.
struct Dice {
    unsigned device, deed, which, value;
};

std::string word(unsigned value)
{
    return "word " + std::to_string(value % 5);
}

template <typename Record>
const Record* pick(const std::vector<const Record*>& list, unsigned which)
{
    return list.empty() ? nullptr : list[which % list.size()];
}

void editAthlete(Device& d, const Athlete& known, unsigned value)
{
    Athlete athlete = known;
    switch (value % 6) {
    case 0: athlete.name = word(value); break;
    case 1: athlete.squad = word(value); break;
    case 2: athlete.birthYear = std::chrono::year(1990 + int(value % 30)); break;
    case 3: athlete.notes = word(value); break;
    case 4: athlete.marks[LiftId{1}] = samples::marks(0.7 + 0.01 * (value % 10), 1.3); break;
    default: athlete.marks.clear(); break;
    }
    keepAthlete(d.keeping, athlete, d.told());
}

void edit(Device& d, const Dice& dice)
{
    const auto [device, deed, which, value] = dice;
    d.today += std::chrono::days(value % 3);
    const Athlete* athlete = pick(d.book.athletes(), which);
    const KitRecord* item = pick(d.book.kit(), which);
    Athlete fresh;
    fresh.name = word(value);
    switch (deed % 12) {
    case 0: return keepAthlete(d.keeping, fresh, d.told());
    case 1: return athlete ? editAthlete(d, *athlete, value) : void();
    case 2: return athlete ? keepBodySize(d.keeping, athlete->id, {{}, d.today - std::chrono::days(value % 5), kilograms(50 + value % 30), std::nullopt}, d.told()) : void();
    case 11: return athlete ? keepIsometricPull(d.keeping, athlete->id, {{}, d.today - std::chrono::days(value % 5), LiftId{1}, metres(0.8 + 0.01 * (value % 40)), kilograms(100 + value % 60), std::nullopt}, d.told()) : void();
    case 3: return keepVenue(d.keeping, {{}, word(value), {}}, d.told());
    case 4: return keepKitItem(d.keeping, samples::item(0, word(value), samples::weighed()), d.told());
    case 5: {
        if (!item)
            return;
        KitItem changed = item->item;
        changed.measurement = value % 2 ? Measured(samples::gauged()) : Measured(samples::weighed());
        changed.pair = value % 3 != 0;
        return keepKitItem(d.keeping, changed, d.told());
    }
    case 6: return athlete ? keepSetup(d.keeping, {{}, athlete->id, LiftId{1}, samples::setup(20 + 2.5 * (value % 20)), {}}, d.told()) : void();
    case 7: {
        if (!item)
            return;
        MeasurementRecord record = item->measurements[value % item->measurements.size()];
        record.measured = samples::gauged();
        std::get<ChainMeasurement>(record.measured).length = metres(1 + 0.01 * (value % 50));
        return putMeasurementRight(d.keeping, record, d.told());
    }
    case 8: return item && value % 4 == 0 ? takeOut(d.keeping, itemPlace(item->item.id), d.told()) : void();
    case 9: return keepSettings(d.keeping, {value % 2 ? MassUnit::Pound : MassUnit::Kilogram, LengthUnit::Centimetre}, d.told());
    default: return undo(d.keeping, which % 3, d.told());
    }
}

/// What `from` has kept and `to` does not have yet.
void bring(const Device& from, Device& to, std::size_t& brought)
{
    const std::vector<journal::Held> news(from.keeper.entries.begin() + static_cast<std::ptrdiff_t>(brought), from.keeper.entries.end());
    brought = from.keeper.entries.size();
    for (const journal::Held& entry : news)
        to.keeper.see(entry);
    to.book.take(news);
}

template <typename Record>
std::vector<Record> copies(const std::vector<const Record*>& list)
{
    std::vector<Record> all;
    for (const Record* record : list)
        all.push_back(*record);
    return all;
}

bool sameBooks(const SeasonBook& a, const SeasonBook& b)
{
    if (copies(a.athletes()) != copies(b.athletes()) || copies(a.venues()) != copies(b.venues()) || copies(a.kit()) != copies(b.kit()))
        return false;
    for (const Athlete* athlete : a.athletes())
        if (copies(a.setupsOf(athlete->id)) != copies(b.setupsOf(athlete->id)))
            return false;
    return a.settings() == b.settings() && a.review() == b.review() && a.unreadCount() == b.unreadCount() && a.fold().digest() == b.fold().digest();
}

}

namespace rc {

template <>
struct Arbitrary<Dice> {
    static Gen<Dice> arbitrary()
    {
        const auto die = gen::inRange(0U, 1000U);
        return gen::build<Dice>(gen::set(&Dice::device, die), gen::set(&Dice::deed, die), gen::set(&Dice::which, die), gen::set(&Dice::value, die));
    }
};

}

/// Two devices that were edited apart say the same once each has the other's entries.
class BookMergeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void mergedEitherWayTheSame();
    void bothNamesWaitForReview();
    void settledByOneOfThem();
    void loadedFromHeadsTheSame();
    void newerEntriesAreCountedAndLeaveTheRest();
};

void BookMergeTest::mergedEitherWayTheSame()
{
    const bool ok = rc::check("edits on two devices, merged in any order", [](const std::vector<Dice>& steps, std::uint32_t seed) {
        Device one(1), two(2);
        std::size_t toTwo = 0, toOne = 0;
        // device two's clock is a year behind
        two.keeper.now -= std::chrono::hours(24 * 365);
        for (const Dice& dice : steps) {
            edit(dice.device % 2 ? one : two, dice);
            if (dice.device % 7 == 0)
                bring(one, two, toTwo);
            if (dice.device % 11 == 0)
                bring(two, one, toOne);
        }
        bring(one, two, toTwo);
        bring(two, one, toOne);
        RC_ASSERT(sameBooks(one.book, two.book));
        std::vector<journal::Held> all = one.keeper.entries;
        all.insert(all.end(), two.keeper.entries.begin(), two.keeper.entries.end());
        std::shuffle(all.begin(), all.end(), std::mt19937(seed));
        SeasonBook atOnce, oneByOne;
        atOnce.take(all);
        for (const journal::Held& entry : all)
            oneByOne.take({&entry, 1});
        RC_ASSERT(sameBooks(atOnce, one.book));
        RC_ASSERT(sameBooks(oneByOne, one.book));
    });
    QVERIFY(ok);
}

void BookMergeTest::bothNamesWaitForReview()
{
    Device one(1), two(2);
    std::size_t toTwo = 0, toOne = 0;
    Athlete athlete;
    athlete.name = "Anna";
    keepAthlete(one.keeping, athlete, one.told());
    bring(one, two, toTwo);
    athlete = *one.book.athlete(one.last.id);
    athlete.name = "Ana";
    keepAthlete(one.keeping, athlete, one.told());
    athlete.name = "Anne";
    two.keeper.now += std::chrono::seconds(5);
    keepAthlete(two.keeping, athlete, two.told());
    bring(one, two, toTwo);
    bring(two, one, toOne);
    QVERIFY(sameBooks(one.book, two.book));
    QCOMPARE(one.book.athlete(athlete.id)->name, std::string("Anne"));
    const auto review = one.book.review();
    QCOMPARE(review.size(), std::size_t(1));
    QCOMPARE(review.front().heads.size(), std::size_t(2));
    QCOMPARE(journal::textIn(review.front().heads.back().body.content).value_or(""), std::string("Ana"));
}

void BookMergeTest::settledByOneOfThem()
{
    Device one(1), two(2);
    std::size_t toTwo = 0, toOne = 0;
    keepSettings(one.keeping, {MassUnit::Pound, LengthUnit::Inch}, one.told());
    two.keeper.now += std::chrono::seconds(5);
    keepSettings(two.keeping, {MassUnit::Pound, LengthUnit::Inch}, two.told());
    keepSettings(two.keeping, {MassUnit::Kilogram, LengthUnit::Inch}, two.told());
    bring(two, one, toOne);
    auto review = one.book.review();
    QCOMPARE(review.size(), std::size_t(1));
    QVERIFY(one.book.settings().mass == MassUnit::Kilogram);
    settle(one.keeping, review.front(), journal::EntryId{}, one.told());
    QVERIFY(one.last.unfit == Unfit::RecordUnknown);
    settle(one.keeping, review.front(), review.front().heads.back().id, one.told());
    QVERIFY(one.last.kept());
    QVERIFY(one.book.settings().mass == MassUnit::Pound);
    QVERIFY(one.book.review().empty());
    settle(one.keeping, review.front(), review.front().heads.back().id, one.told());
    QVERIFY(one.last.unfit == Unfit::ChangedSince);
    bring(one, two, toTwo);
    QVERIFY(sameBooks(one.book, two.book));
}

void BookMergeTest::loadedFromHeadsTheSame()
{
    Device one(1);
    for (unsigned i = 0; i < 200; ++i)
        edit(one, {0, i * 7, i, i * 13});
    vault::Snapshot snapshot;
    for (const auto& [key, here] : one.book.fold().registers())
        for (const journal::Held& head : here.heads)
            if (key.holds == journal::RegisterClass::Record)
                snapshot.added.push_back(head);
            else
                snapshot.heads.push_back({head, head.id == here.winner()->id});
    SeasonBook loaded;
    int told = 0;
    const Subscription subscription = loaded.onChanged([&told] { ++told; });
    loaded.load(snapshot);
    QCOMPARE(told, 1);
    QVERIFY(sameBooks(loaded, one.book));
    loaded.load(snapshot);
    QVERIFY(sameBooks(loaded, one.book));
    loaded.clear();
    QVERIFY(sameBooks(loaded, SeasonBook{}));
}

void BookMergeTest::newerEntriesAreCountedAndLeaveTheRest()
{
    Device one(1);
    Athlete athlete;
    athlete.name = "Anna";
    athlete.squad = "Women";
    keepAthlete(one.keeping, athlete, one.told());
    journal::Held newer = one.keeper.entries.back();
    newer.id.bytes[0] ^= std::byte{1};
    newer.body.replaces = {one.keeper.entries.back().id};
    newer.body.content = journal::listItem({journal::textItem("Women"), journal::textItem("Seniors")});
    one.book.take({&newer, 1});
    QCOMPARE(one.book.athletes().size(), std::size_t(1));
    QCOMPARE(one.book.athletes().front()->name, std::string("Anna"));
    QCOMPARE(one.book.athletes().front()->squad, std::string());
    QCOMPARE(one.book.unreadCount(), std::size_t(1));
}

QTEST_APPLESS_MAIN(BookMergeTest)
#include "test_bookmerge.moc"
