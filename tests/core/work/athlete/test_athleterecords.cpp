// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/athlete/keepclearance.h"
#include "core/work/keeping/athlete/keepstatus.h"
#include "core/work/keeping/athlete/keeptest.h"
#include "core/work/keeping/putright.h"
#include "core/work/keeping/undo.h"
#include "tests/core/work/athlete/somebody.h"

#include <QtTest>
#include <rapidcheck.h>

#include <algorithm>
#include <random>
#endif

using namespace steelyard;
using keeping::Device;
using std::chrono::days;

namespace {

struct Shown {
    Shown(const SeasonBook& book, const RecordId& athlete)
    {
        for (const StrengthTest* t : book.testsOf(athlete))
            tests.push_back(*t);
        for (const Clearance* c : book.clearancesOf(athlete))
            clearances.push_back(*c);
        for (const DayStatus* s : book.statusesOf(athlete))
            statuses.push_back(*s);
    }
    bool operator==(const Shown&) const = default;
    [[nodiscard]] bool empty() const { return tests.empty() && clearances.empty() && statuses.empty(); }

    std::vector<StrengthTest> tests;
    std::vector<Clearance> clearances;
    std::vector<DayStatus> statuses;
};

/// One thing done to what is known of an athlete, chosen by a number.
void step(Device& d, const RecordId& athlete, unsigned which)
{
    const auto back = d.today - days(which % 7);
    const Shown known(d.book, athlete);
    const auto pick = [which](const auto& list) { return list.empty() ? std::nullopt : std::optional(list[which % list.size()]); };
    const auto test = pick(known.tests);
    const auto clearance = pick(known.clearances);
    const auto status = pick(known.statuses);
    switch (which % 11) {
    case 0: return keepStrengthTest(d.keeping, somebody::test(athlete, back, 60 + which % 40), d.told());
    case 1: return keepClearance(d.keeping, somebody::clearance(athlete, back, which % 2 ? Method::MaximalTest : Method::EccentricRelease), d.told());
    case 2: return keepDayStatus(d.keeping, which % 2 ? somebody::status(athlete, back) : somebody::noOverhead(athlete, back), d.told());
    case 3: return takeClearanceBack(d.keeping, athlete, LiftId{1}, Method::EccentricRelease, {"the doctor", back}, d.told());
    case 4: return status ? liftDayStatus(d.keeping, athlete, status->id, {"the doctor", back}, d.told()) : void();
    case 5:
        if (test) {
            StrengthTest right = *test;
            right.reps = 1 + static_cast<int>(which % 9);
            putStrengthTestRight(d.keeping, right, d.told());
        }
        return;
    case 6:
        if (clearance) {
            Clearance right = *clearance;
            right.until = right.day + days(which % 30);
            putClearanceRight(d.keeping, right, d.told());
        }
        return;
    case 7:
        if (status) {
            DayStatus right = *status;
            right.until = right.day + days(which % 30);
            putDayStatusRight(d.keeping, right, d.told());
        }
        return;
    case 8: return test ? takeOut(d.keeping, strengthTestPlace(test->id, athlete), d.told()) : void();
    case 9: return clearance ? takeOut(d.keeping, clearancePlace(clearance->id, athlete), d.told()) : void();
    default: return status ? takeOut(d.keeping, dayStatusPlace(status->id, athlete), d.told()) : void();
    }
}

}

/// Tests, clearances and day status through fold, undo and erasure.
class AthleteRecordsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyDeedIsUndone();
    void inAnyOrderTheSame();
    void anErasureTakesAllOfIt();
    void askedOfTheVault();
};

void AthleteRecordsTest::everyDeedIsUndone()
{
    std::size_t undone = 0;
    const bool ok = rc::check("each deed undone shows what stood before", [&undone](const std::vector<unsigned>& steps) {
        Device d;
        const RecordId athlete = somebody::adult(d);
        for (const unsigned which : steps) {
            const Shown before(d.book, athlete);
            const std::size_t deeds = d.keeping.deeds().size();
            if (deeds == SeasonKeeping::mostUndoCount)
                return;
            step(d, athlete, which);
            if (d.keeping.deeds().size() == deeds)
                continue;
            const Shown after(d.book, athlete);
            undo(d.keeping, 0, d.told());
            RC_ASSERT(d.last.kept() && Shown(d.book, athlete) == before);
            ++undone;
            step(d, athlete, which);
            RC_ASSERT(Shown(d.book, athlete).tests.size() == after.tests.size() && Shown(d.book, athlete).statuses.size() == after.statuses.size());
        }
    });
    QVERIFY(ok);
    QVERIFY(undone > 100);
}

void AthleteRecordsTest::inAnyOrderTheSame()
{
    const bool ok = rc::check("two devices' entries in any order", [](const std::vector<unsigned>& steps, unsigned seed) {
        Device one(1), other(2);
        const RecordId athlete = somebody::adult(one);
        other.book.take(one.keeper.entries);
        for (const unsigned which : steps)
            step(which % 2 ? one : other, athlete, which / 2);
        std::vector<journal::Held> entries = one.keeper.entries;
        entries.insert(entries.end(), other.keeper.entries.begin(), other.keeper.entries.end());
        SeasonBook straight, shuffled;
        straight.take(entries);
        std::shuffle(entries.begin(), entries.end(), std::mt19937(seed));
        for (const journal::Held& entry : entries)
            shuffled.take({&entry, 1});
        RC_ASSERT(Shown(straight, athlete) == Shown(shuffled, athlete));
        RC_ASSERT(straight.unreadCount() == 0 && shuffled.unreadCount() == 0);
    });
    QVERIFY(ok);
}

void AthleteRecordsTest::anErasureTakesAllOfIt()
{
    Device d;
    const RecordId athlete = somebody::adult(d), other = somebody::adult(d);
    for (const RecordId& whose : {athlete, other}) {
        keepStrengthTest(d.keeping, somebody::test(whose, d.today), d.told());
        keepClearance(d.keeping, somebody::clearance(whose, d.today), d.told());
        keepDayStatus(d.keeping, somebody::noOverhead(whose, d.today), d.told());
        liftDayStatus(d.keeping, whose, d.last.id, {"the doctor", d.today}, d.told());
        takeClearanceBack(d.keeping, whose, LiftId{1}, Method::EccentricRelease, {"the doctor", d.today}, d.told());
        QVERIFY(d.last.kept());
    }
    journal::Draft erasure;
    erasure.kind = journal::Kind::Erased;
    erasure.subject = athletePlace(athlete).subject;
    erasure.athlete = athlete;
    d.keeping.keepUnlisted(athlete, {erasure}, d.told());
    QVERIFY(d.last.kept());
    QVERIFY(Shown(d.book, athlete).empty());
    const Shown left(d.book, other);
    QVERIFY(left.tests.size() == 1 && left.clearances.size() == 1 && left.statuses.size() == 1);
    for (const auto& [key, here] : d.book.fold().registers())
        QVERIFY(key.athlete != athlete || key.holds == journal::RegisterClass::Erasure);
    // late entries never bring it back
    SeasonBook late;
    std::vector<journal::Held> backwards(d.keeper.entries.rbegin(), d.keeper.entries.rend());
    late.take(backwards);
    QVERIFY(Shown(late, athlete).empty() && Shown(late, other) == left);
}

void AthleteRecordsTest::askedOfTheVault()
{
    const auto kinds = SeasonBook::wanted().kinds;
    for (const auto kind : {journal::RecordKind::StrengthTest, journal::RecordKind::Clearance, journal::RecordKind::DayStatus})
        QCOMPARE(std::count(kinds.begin(), kinds.end(), kind), std::ptrdiff_t(1));
}

QTEST_APPLESS_MAIN(AthleteRecordsTest)
#include "test_athleterecords.moc"
