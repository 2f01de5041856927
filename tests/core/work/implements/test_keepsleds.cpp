// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/putright.h"
#include "core/work/keeping/undo.h"
#include "core/work/records/implementcodec.h"
#include "tests/core/work/implements/pitch.h"

#include <QtTest>

#include <algorithm>
#include <limits>
#include <random>
#endif

using namespace steelyard;
using namespace pitch;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

int unfitOf(const Told& told) { return told.unfit ? static_cast<int>(*told.unfit) : -1; }

}

/// Surfaces, timed runs, caps and lanes: kept, put right, taken out, and refused where they cannot be.
class KeepSledsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aSurfaceIsRemembered()
    {
        Pitch p;
        const RecordId sled = p.item("Sled", borrowed::sled());
        keepSurface(p.keeping, borrowed::surface(p.venue, sled), p.told());
        QVERIFY(p.last.kept());
        const RecordId first = p.last.id;
        SledSurface dry = borrowed::surface(p.venue, sled, "turf, dry");
        keepSurface(p.keeping, dry, p.told());
        SledSurface later = borrowed::surface(p.venue, sled, "grass, wet", 0.3);
        later.day += days(3);
        keepSurface(p.keeping, later, p.told());
        const auto here = p.book.surfacesAt(p.venue);
        QCOMPARE(here.size(), std::size_t{3});
        QVERIFY(here[0]->name == "grass, wet" && here[0]->day == later.day && here[1]->id == first && here[2]->name == "turf, dry");
        QVERIFY(p.book.surfacesAt(p.home).empty());
        QCOMPARE(static_cast<int>(p.keeping.deeds().front().deed), static_cast<int>(Deed::SurfaceKept));

        SledSurface right = *p.book.surface(first);
        right.readings[0].pull = kilograms(21);
        putSurfaceRight(p.keeping, right, p.told());
        QVERIFY(p.last.kept() && p.book.surface(first)->readings[0].pull == kilograms(21));
        takeOut(p.keeping, sledSurfacePlace(first), p.told());
        QVERIFY(p.last.kept() && !p.book.surface(first));
        undo(p.keeping, 0, p.told());
        QVERIFY(p.last.kept() && p.book.surface(first) && p.book.surface(first)->readings[0].pull == kilograms(21));
        putSurfaceRight(p.keeping, {}, p.told());
        QCOMPARE(unfitOf(p.last), static_cast<int>(Unfit::RecordUnknown));
    }

    void runsAreHers()
    {
        Pitch p;
        const RecordId sled = p.item("Sled", borrowed::sled());
        for (const double added : {0.0, 25.0, 50.0})
            keepSledRun(p.keeping, borrowed::run(p.who, p.venue, sled, added, 6 - added / 30), p.told());
        QVERIFY(p.last.kept());
        const auto runs = p.book.runsOf(p.who);
        QCOMPARE(runs.size(), std::size_t{3});
        QVERIFY(runs[1]->added == kilograms(25) && runs[1]->athlete == p.who && p.book.runsOf(p.venue).empty());
        SledRunTimed right = *runs[1];
        right.time = std::chrono::milliseconds(4444);
        putSledRunRight(p.keeping, right, p.told());
        QVERIFY(p.last.kept() && p.book.run(sledRunPlace(right.id, p.who))->time.quantity().count() == 4444);
        takeOut(p.keeping, sledRunPlace(right.id, p.who), p.told());
        QCOMPARE(p.book.runsOf(p.who).size(), std::size_t{2});
        putSledRunRight(p.keeping, right, p.told());
        QCOMPARE(unfitOf(p.last), static_cast<int>(Unfit::RecordUnknown));
    }

    void refusedSurfaces_data()
    {
        QTest::addColumn<int>("which");
        QTest::addColumn<int>("unfit");
        const auto row = [](const char* name, int which, Unfit unfit) { QTest::newRow(name) << which << static_cast<int>(unfit); };
        row("no venue", 0, Unfit::VenueUnknown);
        row("no sled", 1, Unfit::ItemUnknown);
        row("a tyre", 2, Unfit::ItemUnknown);
        row("no name", 3, Unfit::NameMissing);
        row("tomorrow", 4, Unfit::DayAhead);
        row("one reading", 5, Unfit::ReadingsTooFew);
        row("the same load twice", 6, Unfit::ReadingsTooFew);
        row("pulled by nothing", 7, Unfit::QuantityUnfit);
        row("less than nothing on it", 8, Unfit::QuantityUnfit);
        row("no number", 9, Unfit::QuantityUnfit);
        row("an error below nothing", 10, Unfit::QuantityUnfit);
    }
    void refusedSurfaces()
    {
        QFETCH(int, which);
        QFETCH(int, unfit);
        Pitch p;
        const RecordId sled = p.item("Sled", borrowed::sled()), tyre = p.item("Tyre", borrowed::tyre());
        SledSurface s = borrowed::surface(p.venue, sled);
        switch (which) {
        case 0: s.venue = numberedids::numbered(99); break;
        case 1: s.sled = {}; break;
        case 2: s.sled = tyre; break;
        case 3: s.name = " "; break;
        case 4: s.day = p.today + days(1); break;
        case 5: s.readings.pop_back(); break;
        case 6: s.readings[1].added = s.readings[0].added; break;
        case 7: s.readings[1].pull = kilograms(0); break;
        case 8: s.readings[0].added = kilograms(-1); break;
        case 9: s.readings[0].added = kilograms(notANumber); break;
        default: s.scaleAccuracy = kilograms(-0.1);
        }
        const auto entries = p.keeper.entries.size();
        keepSurface(p.keeping, s, p.told());
        QCOMPARE(unfitOf(p.last), unfit);
        QCOMPARE(p.keeper.entries.size(), entries);
    }

    void refusedRuns()
    {
        Pitch p;
        const RecordId sled = p.item("Sled", borrowed::sled());
        const SledRunTimed good = borrowed::run(p.who, p.venue, sled, 20, 5);
        const auto refused = [&](const SledRunTimed& run) {
            keepSledRun(p.keeping, run, p.told());
            return unfitOf(p.last);
        };
        SledRunTimed r = good;
        r.athlete = numberedids::numbered(99);
        QCOMPARE(refused(r), static_cast<int>(Unfit::AthleteUnknown));
        r = good;
        r.time = std::chrono::milliseconds(0);
        QCOMPARE(refused(r), static_cast<int>(Unfit::QuantityUnfit));
        r = good;
        r.distance = metres(0);
        QCOMPARE(refused(r), static_cast<int>(Unfit::QuantityUnfit));
        r = good;
        r.surface.clear();
        QCOMPARE(refused(r), static_cast<int>(Unfit::NameMissing));
        r = good;
        r.day = p.today + days(1);
        QCOMPARE(refused(r), static_cast<int>(Unfit::DayAhead));
        // who may be under age without an agreement has nothing more kept of them
        Athlete minor;
        minor.name = "Minor";
        minor.birthYear = std::chrono::year(2012);
        keepAthlete(p.keeping, minor, p.told());
        r = good;
        r.athlete = p.last.id;
        QCOMPARE(refused(r), static_cast<int>(Unfit::AgreementFirst));
        QCOMPARE(refused(good), -1);
    }

    void capsAreAPairOfLifts()
    {
        Pitch p;
        p.cap(kegPress, press, 60);
        QVERIFY(p.last.kept());
        p.cap(frontCarry, deadliftId, 100);
        const auto& caps = p.book.athlete(p.who)->caps;
        QVERIFY(caps.size() == 2 && (caps.at(kegPress) == CapRule{press, 60}));
        // a form that knows nothing of caps leaves them
        Athlete renamed = *p.book.athlete(p.who);
        renamed.caps.clear();
        renamed.squad = "Women";
        keepAthlete(p.keeping, renamed, p.told());
        QCOMPARE(p.book.athlete(p.who)->caps.size(), std::size_t{2});
        keepCap(p.keeping, p.who, kegPress, std::nullopt, p.told());
        QVERIFY(p.last.kept() && !p.book.athlete(p.who)->caps.contains(kegPress));
        undo(p.keeping, 0, p.told());
        QVERIFY(p.book.athlete(p.who)->caps.contains(kegPress));
        for (const auto& [lift, rule, unfit] : {std::tuple(kegPress, CapRule{press, 0}, Unfit::LimitUnfit), std::tuple(kegPress, CapRule{press, 101}, Unfit::LimitUnfit),
                                                std::tuple(tyreFlip, CapRule{deadliftId, 70}, Unfit::LimitUnfit), std::tuple(LiftId{}, CapRule{press, 70}, Unfit::LiftUnknown),
                                                std::tuple(kegPress, CapRule{LiftId{999}, 70}, Unfit::LiftUnknown)}) {
            keepCap(p.keeping, p.who, lift, rule, p.told());
            QCOMPARE(unfitOf(p.last), static_cast<int>(unfit));
        }
        keepCap(p.keeping, p.venue, kegPress, CapRule{press, 60}, p.told());
        QCOMPARE(unfitOf(p.last), static_cast<int>(Unfit::AthleteUnknown));
    }

    void aVenueHasALane()
    {
        Pitch p;
        Venue venue = *p.book.venue(p.venue);
        QVERIFY(!venue.lane);
        venue.lane = Entered<Length>(metres(22.5), AsTyped{"22.5", Unit::Metre});
        keepVenue(p.keeping, venue, p.told());
        QVERIFY(p.book.venue(p.venue)->lane == venue.lane && (p.book.venue(p.venue)->lane->typed() == AsTyped{"22.5", Unit::Metre}));
        for (const double wrong : {0.0, -1.0, notANumber}) {
            venue.lane = metres(wrong);
            keepVenue(p.keeping, venue, p.told());
            QCOMPARE(unfitOf(p.last), static_cast<int>(Unfit::QuantityUnfit));
        }
        venue.lane.reset();
        keepVenue(p.keeping, venue, p.told());
        QVERIFY(!p.book.venue(p.venue)->lane);
    }

    void inAnyOrderTheSame()
    {
        Pitch p;
        const RecordId sled = p.item("Sled", borrowed::sled());
        keepSurface(p.keeping, borrowed::surface(p.venue, sled), p.told());
        keepSledRun(p.keeping, borrowed::run(p.who, p.venue, sled, 20, 5), p.told());
        SledRunTimed right = *p.book.runsOf(p.who).front();
        right.added = kilograms(25);
        putSledRunRight(p.keeping, right, p.told());
        p.cap(kegPress, press, 60);
        p.cap(kegPress, press, 55);
        Venue venue = *p.book.venue(p.venue);
        venue.lane = metres(20);
        keepVenue(p.keeping, venue, p.told());
        std::vector<journal::Held> entries = p.keeper.entries;
        std::mt19937 chance(1795);
        for (int time = 0; time < 50; ++time) {
            std::shuffle(entries.begin(), entries.end(), chance);
            SeasonBook other;
            for (const journal::Held& entry : entries)
                other.take({&entry, 1});
            QVERIFY(*other.athlete(p.who) == *p.book.athlete(p.who) && *other.venue(p.venue) == *p.book.venue(p.venue));
            QVERIFY(*other.runsOf(p.who).at(0) == right && *other.surfacesAt(p.venue).at(0) == *p.book.surfacesAt(p.venue).at(0));
        }
    }
};

QTEST_APPLESS_MAIN(KeepSledsTest)
#include "test_keepsleds.moc"
