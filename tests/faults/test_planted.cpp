// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/vault/faults.h"
#include "tests/core/vault/shown.h"
#include "tests/faults/trials.h"

using namespace faults;
using vault::Fault;
using vault::plantedFault;

namespace {

/// Reads the vault after an older database has been put back; something is wrong when nobody notices.
QString faultOfOlderDatabase()
{
    Place place;
    {
        const auto vault = place.create();
        QFile::copy(place.file("vault-1.db"), place.dir.filePath("older"));
        if (!(*vault)->keep({fieldOf(1, 1, "x")}))
            return "nothing was kept";
    }
    QFile older(place.dir.filePath("older"));
    if (older.open(QIODevice::ReadOnly))
        place.put("vault-1.db", older.readAll());
    const auto vault = place.unlock();
    return (*vault)->opened({})->findings.witness == WitnessState::DatabaseBehind ? QString() : QString("nobody noticed");
}

/// Entries of one place in a chain, and an entry that comes before the one that it replaces is there.
QString faultOfArrivals()
{
    Place place;
    const auto vault = place.create();
    const seal::RandomSource random = seededRandom(3);
    journal::ChainEnd one, other;
    random(one.chain.origin.bytes);
    random(other.chain.origin.bytes);
    const auto first = journal::nextEntry(one, journal::finished(fieldOf(1, 1, "x"), {}), random);
    const auto rival = journal::nextEntry(one, journal::finished(fieldOf(1, 1, "y"), {}), random);
    const auto later = journal::nextEntry(other, journal::finished(fieldOf(1, 1, "z", {journal::idOf(first->header)}), {}), random);
    Store& store = (*vault)->store();
    if (!store.append({*later}) || !store.append({*first}))
        return "nothing was taken";
    if (store.append({*rival}))
        return "an entry took the place of another";
    return shownBy(store.views()) == shownFromScratch(store.database()) ? QString() : QString("the tables are wrong");
}

/// A disk that is full until the reserve goes: what is kept then.
QString faultOfFullDisk()
{
    Place place;
    arm({place.dir.path().toStdString()});
    const auto vault = place.create();
    arm({place.dir.path().toStdString(), Trouble::FullUntilReserve, 1});
    const bool kept = (*vault)->keep({fieldOf(1, 1, "x")}).ok();
    disarm();
    return kept ? QString() : QString("refused with the reserve still there");
}

/// Errors of the storage once at every operation of keeping.
QString faultOfErrors()
{
    for (long at = 1; at < 60; ++at) {
        Place place;
        const std::string root = place.dir.path().toStdString();
        Told told;
        const bool ended = inAProcess(
            [&](const Tell& tell) {
                arm({root});
                const Surroundings surroundings = surroundingsOf(root, 1, 1);
                const auto vault = Vault::create(folderOf(root), newRing(1), surroundings);
                tell("created");
                arm({root, Trouble::ErrorOnce, at});
                work(**vault, 1, 0, 4, tell);
            },
            told);
        const QString fault = ended ? faultOf(root, told, 1, 0) : QString("the process ended before its time");
        if (!fault.isEmpty())
            return fault;
    }
    return {};
}

using Trial = std::function<QString()>;
const Trial kills = [] { return faultOfKills(200, 1); };
const Trial powerCuts = [] { return faultOfPowerCuts(1'500, 1); };

}

Q_DECLARE_METATYPE(Trial)

/// Each mistake is noticed by the trial that is there for it, and the same trial passes without the mistake.
class TestPlanted : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QVERIFY(seal::start().ok()); }
    void cleanup() { plantedFault = Fault::None; }

    void eachIsNoticed_data()
    {
        QTest::addColumn<int>("fault");
        QTest::addColumn<Trial>("trial");
        const auto row = [](const char* name, Fault fault, const Trial& trial) { QTest::newRow(name) << static_cast<int>(fault) << trial; };
        row("nothing forced", Fault::NothingForced, powerCuts);
        row("log written ahead", Fault::WriteAheadLog, powerCuts);
        row("journal deleted", Fault::JournalDeleted, powerCuts);
        row("told too early", Fault::ToldTooEarly, kills);
        row("half batches", Fault::HalfBatches, kills);
        row("rows replaced", Fault::RowsReplaced, faultOfArrivals);
        row("key file first", Fault::KeyFileFirst, kills);
        row("doubt not cleared", Fault::DoubtNotCleared, faultOfErrors);
        row("reserve held back", Fault::ReserveHeldBack, faultOfFullDisk);
        row("witness unread", Fault::WitnessUnread, faultOfOlderDatabase);
        row("marks forgotten", Fault::MarksForgotten, faultOfArrivals);
        row("drafts uncommitted", Fault::DraftsUncommitted, kills);
    }
    void eachIsNoticed()
    {
        QFETCH(int, fault);
        QFETCH(Trial, trial);
        plantedFault = static_cast<Fault>(fault);
        QVERIFY(!trial().isEmpty());
    }

    void withoutThemAllIsWell()
    {
        QCOMPARE(faultOfArrivals(), QString());
        QCOMPARE(faultOfErrors(), QString());
        QCOMPARE(faultOfFullDisk(), QString());
        QCOMPARE(faultOfOlderDatabase(), QString());
        QCOMPARE(faultOfKills(60, 1), QString());
        QCOMPARE(faultOfPowerCuts(60, 1), QString());
    }
};

QTEST_APPLESS_MAIN(TestPlanted)
#include "test_planted.moc"
