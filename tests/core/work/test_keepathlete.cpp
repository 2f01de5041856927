// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/keepathlete.h"

#include "core/work/keeping/fitness.h"
#include "tests/core/work/memorykeeper.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;
using keeping::day;
using keeping::Device;

Q_DECLARE_METATYPE(std::optional<Unfit>)

namespace {

Athlete named(const std::string& name, std::optional<std::chrono::year> birthYear = std::nullopt)
{
    Athlete athlete;
    athlete.name = name;
    athlete.birthYear = birthYear;
    return athlete;
}

BodySize massOf(double kg, std::chrono::sys_days when)
{
    return {{}, when, kilograms(kg), std::nullopt};
}

}

/// Athletes: what is kept, what is refused, and what waits for a guardian.
class KeepAthleteTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void newOneGetsAnId();
    void comesBackAsItWasTyped();
    void onlyWhatChangedIsWritten();
    void fieldsAreTakenBack();
    void refusals_data();
    void refusals();
    void waitsForTheGuardian_data();
    void waitsForTheGuardian();
    void loadsNeedNoAgreement();
    void aSampleTakesNobody();
    void sizesByDate();
    void sizesThatCannotBe();
    void vaultRefusesAndNothingChanges();
    void bookTakesItOnlyOnceItIsKept();
    void answerAfterTheEndIsDropped();
};

void KeepAthleteTest::newOneGetsAnId()
{
    Device device;
    int told = 0;
    const Subscription subscription = device.book.onChanged([&told] { ++told; });
    keepAthlete(device.keeping, named("Ines"), device.told());
    QVERIFY(device.last.kept());
    QVERIFY(!device.last.id.isNone());
    QCOMPARE(told, 1);
    QCOMPARE(device.book.athletes().size(), std::size_t(1));
    QCOMPARE(device.book.athlete(device.last.id)->name, std::string("Ines"));
    keepAthlete(device.keeping, named("Aroha"), device.told());
    QCOMPARE(device.book.athletes().front()->name, std::string("Aroha"));
}

void KeepAthleteTest::comesBackAsItWasTyped()
{
    Device device;
    Athlete athlete = named("Ines Okoro-Lindqvist", std::chrono::year(2010));
    athlete.squad = "Youth";
    athlete.agreement = GuardianAgreement{"her mother, by letter", day(2026, 9, 1)};
    athlete.notes = "Left wrist taped.\nGoalkeeper.";
    athlete.marks[LiftId{1}] = samples::marks(0.77, 1.27);
    athlete.marks[LiftId{14}].start = LiftStart::Floor;
    athlete.marks[LiftId{14}].top = metres(0.72);
    keepAthlete(device.keeping, athlete, device.told());
    QVERIFY(device.last.kept());
    athlete.id = device.last.id;
    QVERIFY(*device.book.athlete(athlete.id) == athlete);
    // a book opened from the entries says the same
    SeasonBook opened;
    opened.take(device.keeper.entries);
    QVERIFY(*opened.athlete(athlete.id) == athlete);
}

void KeepAthleteTest::onlyWhatChangedIsWritten()
{
    Device device;
    Athlete athlete = named("Ines", std::chrono::year(1999));
    athlete.squad = "Women";
    keepAthlete(device.keeping, athlete, device.told());
    QCOMPARE(device.keeper.entries.size(), std::size_t(3));
    athlete = *device.book.athlete(device.last.id);
    keepAthlete(device.keeping, athlete, device.told());
    QVERIFY(device.last.kept());
    QCOMPARE(device.keeper.entries.size(), std::size_t(3));
    athlete.squad = "Youth";
    keepAthlete(device.keeping, athlete, device.told());
    QCOMPARE(device.keeper.entries.size(), std::size_t(4));
    const journal::Body& body = device.keeper.entries.back().body;
    QVERIFY(body.kind == journal::Kind::FieldSet && body.fieldNumber == field::athleteSquadNumber && body.athlete == athlete.id);
    QVERIFY(body.replaces == std::vector{device.keeper.entries[1].id});
    QVERIFY(body.localDay == device.today);
    QCOMPARE(body.zone, std::string("Europe/Berlin"));
}

void KeepAthleteTest::fieldsAreTakenBack()
{
    Device device;
    Athlete athlete = named("Ines", std::chrono::year(1999));
    athlete.squad = "Women";
    athlete.notes = "Left-handed.";
    athlete.marks[LiftId{1}] = samples::marks(0.77, 1.27);
    keepAthlete(device.keeping, athlete, device.told());
    athlete = named("Ines");
    athlete.id = device.last.id;
    keepAthlete(device.keeping, athlete, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(*device.book.athlete(athlete.id) == athlete);
}

void KeepAthleteTest::refusals_data()
{
    QTest::addColumn<std::string>("name");
    QTest::addColumn<std::string>("squad");
    QTest::addColumn<int>("birthYear");
    QTest::addColumn<std::string>("guardian");
    QTest::addColumn<int>("agreedIn");
    QTest::addColumn<std::optional<Unfit>>("unfit");
    const auto row = [](const char* what, const std::string& name, const std::string& squad, int birthYear, const std::string& guardian, int agreedIn, std::optional<Unfit> unfit) {
        QTest::newRow(what) << name << squad << birthYear << guardian << agreedIn << unfit;
    };
    row("fine", "Ines", "Women", 2000, "her father", 2026, std::nullopt);
    row("no name", "", "", 2000, "her father", 2026, Unfit::NameMissing);
    row("a name of blanks", " \t ", "", 2000, "her father", 2026, Unfit::NameMissing);
    row("longest name", std::string(mostNameByteCount, 'n'), "", 2000, "her father", 2026, std::nullopt);
    row("too long a name", std::string(mostNameByteCount + 1, 'n'), "", 2000, "her father", 2026, Unfit::TextTooLong);
    row("half a letter", "In\xc3", "", 2000, "her father", 2026, Unfit::TextUnreadable);
    row("half a letter in the squad", "Ines", "\xff", 2000, "her father", 2026, Unfit::TextUnreadable);
    row("born this year", "Ines", "", 2026, "her father", 2026, std::nullopt);
    row("born next year", "Ines", "", 2027, "her father", 2026, Unfit::BirthYearUnlikely);
    row("earliest birth year", "Ines", "", 1900, "her father", 2026, std::nullopt);
    row("born too long ago", "Ines", "", 1899, "her father", 2026, Unfit::BirthYearUnlikely);
    row("nobody agreed", "Ines", "", 2010, " ", 2026, Unfit::AgreementUnfit);
    row("agreed next year", "Ines", "", 2010, "her father", 2027, Unfit::AgreementUnfit);
}

void KeepAthleteTest::refusals()
{
    QFETCH(std::string, name);
    QFETCH(std::string, squad);
    QFETCH(int, birthYear);
    QFETCH(std::string, guardian);
    QFETCH(int, agreedIn);
    QFETCH(std::optional<Unfit>, unfit);
    Device device;
    Athlete athlete = named(name, std::chrono::year(birthYear));
    athlete.squad = squad;
    athlete.agreement = GuardianAgreement{guardian, day(agreedIn, 1, 1)};
    keepAthlete(device.keeping, athlete, device.told());
    QCOMPARE(device.toldCount, 1);
    QVERIFY(device.last.unfit == unfit);
    QCOMPARE(device.keeper.askedCount, unfit ? 0 : 1);
    QCOMPARE(device.book.athletes().size(), std::size_t(unfit ? 0 : 1));
}

void KeepAthleteTest::waitsForTheGuardian_data()
{
    QTest::addColumn<int>("birthYear");
    QTest::addColumn<bool>("agreed");
    QTest::addColumn<std::optional<Unfit>>("unfit");
    const auto row = [](const char* what, int birthYear, bool agreed, std::optional<Unfit> unfit) { QTest::newRow(what) << birthYear << agreed << unfit; };
    row("birth year unknown", 0, false, Unfit::BirthYearFirst);
    row("birth year unknown, agreed", 0, true, Unfit::BirthYearFirst);
    row("fifteen", 2011, false, Unfit::AgreementFirst);
    row("fifteen, agreed", 2011, true, std::nullopt);
    row("eighteen some time this year", 2008, false, Unfit::AgreementFirst);
    row("eighteen some time this year, agreed", 2008, true, std::nullopt);
    row("eighteen last year", 2007, false, std::nullopt);
}

void KeepAthleteTest::waitsForTheGuardian()
{
    QFETCH(int, birthYear);
    QFETCH(bool, agreed);
    QFETCH(std::optional<Unfit>, unfit);
    Device device;
    Athlete athlete = named("Ines", birthYear ? std::optional(std::chrono::year(birthYear)) : std::nullopt);
    if (agreed)
        athlete.agreement = GuardianAgreement{"her mother", day(2026, 1, 2)};
    Athlete noted = athlete;
    noted.notes = "Asthma.";
    keepAthlete(device.keeping, noted, device.told());
    QVERIFY(device.last.unfit == unfit);
    keepAthlete(device.keeping, athlete, device.told());
    QVERIFY(device.last.kept());
    keepBodySize(device.keeping, device.last.id, massOf(61.5, device.today), device.told());
    QVERIFY(device.last.unfit == unfit);
}

void KeepAthleteTest::aSampleTakesNobody()
{
    Device device;
    Athlete athlete = named("Ines", std::chrono::year(1999));
    keepAthlete(device.keeping, athlete, device.told());
    athlete = *device.book.athlete(device.last.id);
    device.keeping.setSample(true);
    keepAthlete(device.keeping, named("Somebody real", std::chrono::year(1999)), device.told());
    QVERIFY(device.last.unfit == Unfit::SampleTakesNobody);
    for (std::string Athlete::* const word : {&Athlete::name, &Athlete::squad, &Athlete::notes}) {
        Athlete other = athlete;
        other.*word = "Somebody real";
        keepAthlete(device.keeping, other, device.told());
        QVERIFY(device.last.unfit == Unfit::SampleTakesNobody);
    }
    Athlete agreed = athlete;
    agreed.agreement = GuardianAgreement{"somebody real", day(2026, 1, 2)};
    keepAthlete(device.keeping, agreed, device.told());
    QVERIFY(device.last.unfit == Unfit::SampleTakesNobody);
    QCOMPARE(device.book.athletes().size(), std::size_t(1));
    QVERIFY(*device.book.athlete(athlete.id) == athlete);
    // numbers can be tried out
    athlete.marks[LiftId{1}] = samples::marks(0.7, 1.2);
    keepAthlete(device.keeping, athlete, device.told());
    QVERIFY(device.last.kept());
    keepBodySize(device.keeping, athlete.id, massOf(61.5, device.today), device.told());
    QVERIFY(device.last.kept());
    device.keeping.setSample(false);
    keepAthlete(device.keeping, named("Bo", std::chrono::year(1999)), device.told());
    QVERIFY(device.last.kept());
}

void KeepAthleteTest::loadsNeedNoAgreement()
{
    Device device;
    Athlete athlete = named("Ines", std::chrono::year(2012));
    athlete.squad = "Youth";
    athlete.marks[LiftId{1}] = samples::marks(0.7, 1.2);
    keepAthlete(device.keeping, athlete, device.told());
    QVERIFY(device.last.kept());
    QCOMPARE(device.book.athlete(device.last.id)->marks.size(), std::size_t(1));
}

void KeepAthleteTest::sizesByDate()
{
    Device device;
    keepAthlete(device.keeping, named("Ines", std::chrono::year(1999)), device.told());
    const RecordId id = device.last.id;
    keepBodySize(device.keeping, id, massOf(63.2, day(2026, 6, 1)), device.told());
    keepBodySize(device.keeping, id, {{}, day(2026, 3, 1), kilograms(61.5), metres(1.72)}, device.told());
    keepBodySize(device.keeping, id, {{}, day(2026, 9, 1), std::nullopt, metres(1.73)}, device.told());
    QVERIFY(device.last.kept());
    const Athlete& athlete = *device.book.athlete(id);
    QCOMPARE(athlete.sizes.size(), std::size_t(3));
    QVERIFY(!bodyMassOn(athlete, day(2026, 2, 28)));
    QVERIFY(bodyMassOn(athlete, day(2026, 3, 1)) == kilograms(61.5));
    QVERIFY(bodyMassOn(athlete, day(2026, 5, 31)) == kilograms(61.5));
    QVERIFY(bodyMassOn(athlete, day(2027, 1, 1)) == kilograms(63.2));
    QVERIFY(bodyHeightOn(athlete, day(2026, 8, 31)) == metres(1.72));
    QVERIFY(bodyHeightOn(athlete, day(2026, 9, 1)) == metres(1.73));
}

void KeepAthleteTest::sizesThatCannotBe()
{
    Device device;
    keepAthlete(device.keeping, named("Ines", std::chrono::year(1999)), device.told());
    const RecordId id = device.last.id;
    keepBodySize(device.keeping, id, {}, device.told());
    QVERIFY(device.last.unfit == Unfit::NothingMeasured);
    for (const double kg : {0.0, -60.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(), 1e300}) {
        keepBodySize(device.keeping, id, massOf(kg, device.today), device.told());
        QVERIFY(device.last.unfit == Unfit::QuantityUnfit);
    }
    keepBodySize(device.keeping, numberedids::numbered(5), massOf(60, device.today), device.told());
    QVERIFY(device.last.unfit == Unfit::AthleteUnknown);
    Athlete stranger = named("Nobody");
    stranger.id = numberedids::numbered(5);
    keepAthlete(device.keeping, stranger, device.told());
    QVERIFY(device.last.unfit == Unfit::AthleteUnknown);
    QVERIFY(device.book.athlete(id)->sizes.empty());
}

void KeepAthleteTest::vaultRefusesAndNothingChanges()
{
    Device device;
    keepAthlete(device.keeping, named("Ines"), device.told());
    const Athlete before = *device.book.athlete(device.last.id);
    device.keeper.refusal = vault::Refusal{vault::Code::DiskFullFreeSpace, 3'000'000, 400'000, 0};
    Athlete after = before;
    after.squad = "Women";
    keepAthlete(device.keeping, after, device.told());
    QVERIFY(!device.last.kept());
    QVERIFY(device.last.refusal == device.keeper.refusal);
    QVERIFY(*device.book.athlete(before.id) == before);
    QCOMPARE(device.keeping.deeds().size(), std::size_t(1));
    // room again: the same form is kept as it stands
    device.keeper.refusal.reset();
    keepAthlete(device.keeping, after, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(*device.book.athlete(before.id) == after);
}

void KeepAthleteTest::bookTakesItOnlyOnceItIsKept()
{
    Device device;
    device.keeper.later = true;
    keepAthlete(device.keeping, named("Ines"), device.told());
    QCOMPARE(device.toldCount, 0);
    QVERIFY(device.book.athletes().empty());
    device.keeper.answer();
    QCOMPARE(device.toldCount, 1);
    QCOMPARE(device.book.athletes().size(), std::size_t(1));
}

void KeepAthleteTest::answerAfterTheEndIsDropped()
{
    SeasonBook book;
    keeping::MemoryKeeper keeper;
    keeper.later = true;
    int told = 0;
    {
        SeasonKeeping brief(book, keeper, numberedids::counted(), [] { return Here{}; });
        keepAthlete(brief, named("Ines"), [&told](const Told&) { ++told; });
    }
    keeper.answer();
    QCOMPARE(told, 0);
    QVERIFY(book.athletes().empty());
}

QTEST_APPLESS_MAIN(KeepAthleteTest)
#include "test_keepathlete.moc"
