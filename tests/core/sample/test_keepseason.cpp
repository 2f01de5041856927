// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/sample/keepseason.h"
#include "tests/core/sample/marrowhill.h"
#include "tests/core/work/memorykeeper.h"

#include <QtTest>
#endif

using namespace steelyard;
using namespace steelyard::sample;
using marrowhill::today;

namespace {

/// Keeps a season in memory.
std::optional<NotKept> kept(keeping::Device& device, const Season& season)
{
    return keepSeason(device.keeping, season, {[&device](std::chrono::sys_days day) { device.today = day; }, [] {}});
}

}

/// A season goes through the use-cases, and what they refuse is not kept.
class KeepSeasonTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void bookHoldsTheSeason_data();
    void bookHoldsTheSeason();
    void twiceTheSame();
    void whatIsRefusedIsNamed();
};

void KeepSeasonTest::bookHoldsTheSeason_data()
{
    QTest::addColumn<int>("year");
    QTest::addColumn<int>("month");
    QTest::newRow("in autumn") << 2026 << 11;
    QTest::newRow("the season lies in the year before") << 2027 << 1;
    QTest::newRow("much later") << 2041 << 6;
}

void KeepSeasonTest::bookHoldsTheSeason()
{
    QFETCH(int, year);
    QFETCH(int, month);
    const std::chrono::sys_days on = keeping::day(year, static_cast<unsigned>(month), 3);
    const Season season = marrowhill::season(on);
    keeping::Device device;
    const auto trouble = kept(device, season);
    QVERIFY2(!trouble, trouble ? trouble->what.c_str() : "");
    const SeasonBook& book = device.book;
    QCOMPARE(book.athletes().size(), season.people.size());
    QCOMPARE(book.venues().size(), season.venues.size());
    QCOMPARE(book.kit().size(), season.kit.size());
    QCOMPARE(book.unreadCount(), std::size_t(0));
    QVERIFY(book.review().empty());
    std::size_t surfaces = 0, keptSurfaces = 0;
    for (const SampleItem& item : season.kit)
        surfaces += item.surfaces.size();
    for (const Venue* venue : book.venues()) {
        keptSurfaces += book.surfacesAt(venue->id).size();
        QVERIFY(venue->lane == season.venue(venue->name)->venue.lane);
    }
    QCOMPARE(keptSurfaces, surfaces);
    std::size_t setups = 0, acknowledgements = 0, clearances = 0, statuses = 0;
    for (const SamplePerson& person : season.people) {
        const auto all = book.athletes();
        const auto at = std::find_if(all.begin(), all.end(), [&](const Athlete* a) { return a->name == person.athlete.name; });
        QVERIFY(at != all.end());
        const Athlete& athlete = **at;
        QVERIFY(athlete.squad == person.athlete.squad && athlete.birthYear == person.athlete.birthYear && athlete.notes == person.athlete.notes);
        QVERIFY(athlete.agreement == person.athlete.agreement && athlete.marks.size() == person.athlete.marks.size());
        QCOMPARE(athlete.pulls.size(), person.athlete.pulls.size());
        for (std::size_t i = 0; i < athlete.pulls.size(); ++i)
            QVERIFY(athlete.pulls[i].day == person.athlete.pulls[i].day && athlete.pulls[i].pull == person.athlete.pulls[i].pull && athlete.pulls[i].height == person.athlete.pulls[i].height);
        QVERIFY(athlete.caps == person.athlete.caps);
        QCOMPARE(book.runsOf(athlete.id).size(), person.runs.size());
        const auto tests = book.testsOf(athlete.id);
        QCOMPARE(tests.size(), person.tests.size());
        for (const StrengthTest& test : person.tests)
            QVERIFY(std::any_of(tests.begin(), tests.end(), [&](const StrengthTest* one) {
                return one->day == test.day && one->lift == test.lift && one->load == test.load && one->reps == test.reps && one->conditions == test.conditions;
            }));
        QCOMPARE(athlete.sizes.size(), person.athlete.sizes.size());
        for (std::size_t i = 0; i < athlete.sizes.size(); ++i)
            QVERIFY(athlete.sizes[i].day == person.athlete.sizes[i].day && athlete.sizes[i].mass == person.athlete.sizes[i].mass);
        for (const Clearance* one : book.clearancesOf(athlete.id)) {
            const auto like = [&](const Clearance& said) { return said.athlete == person.athlete.id && said.lift == one->lift && said.method == one->method && said.until == one->until; };
            QVERIFY(std::any_of(season.clearances.begin(), season.clearances.end(), like));
            ++clearances;
        }
        for (const DayStatus* one : book.statusesOf(athlete.id)) {
            const auto like = [&](const DayStatus& said) { return said.athlete == person.athlete.id && said.day == one->day && said.fitness == one->fitness && said.notMethods == one->notMethods && said.notGroups == one->notGroups; };
            QVERIFY(std::any_of(season.statuses.begin(), season.statuses.end(), like));
            ++statuses;
        }
        for (const SavedSetup* setup : book.setupsOf(athlete.id)) {
            ++setups;
            acknowledgements += book.acknowledgementsOf(setup->id).size();
            for (const HungRecord& hung : setup->setup.hung)
                QVERIFY(book.item(hung.item));
        }
    }
    QCOMPARE(setups, season.setups.size());
    QCOMPARE(clearances, season.clearances.size());
    QCOMPARE(statuses, season.statuses.size());
    std::size_t lookedOver = 0;
    for (const SampleSetup& setup : season.setups)
        lookedOver += setup.lookedOver.size();
    QCOMPARE(acknowledgements, lookedOver);
    for (const KitRecord* record : book.kit()) {
        const SampleItem* item = season.item(record->item.name);
        QCOMPARE(record->measurements.size(), item->measurings.size());
        QVERIFY(record->measurements.front().day == item->measurings.back().first);
        QVERIFY(record->item.borrowed == item->item.borrowed && record->item.lent == item->item.lent);
    }
}

void KeepSeasonTest::twiceTheSame()
{
    keeping::Device first, second;
    QVERIFY(!kept(first, marrowhill::season()) && !kept(second, marrowhill::season()));
    QVERIFY(first.keeper.entries.size() > 300);
    QCOMPARE(first.keeper.entries.size(), second.keeper.entries.size());
    for (std::size_t i = 0; i < first.keeper.entries.size(); ++i)
        QVERIFY(first.keeper.entries[i].id == second.keeper.entries[i].id);
}

void KeepSeasonTest::whatIsRefusedIsNamed()
{
    Season season = marrowhill::season();
    season.people[18].athlete.notes = "a minor without an agreement";
    keeping::Device device;
    const auto trouble = kept(device, season);
    QVERIFY(trouble && trouble->what == season.people[18].athlete.name);
    QVERIFY(trouble->told.unfit == Unfit::AgreementFirst);
    device.keeper.refusal = vault::Refusal{vault::Code::DiskFullFreeSpace};
    const auto full = kept(device, marrowhill::season());
    QVERIFY(full && full->told.refusal && full->what == "Weight room");
}

QTEST_APPLESS_MAIN(KeepSeasonTest)
#include "test_keepseason.moc"
