// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/sample/keepseason.h"
#include "core/work/implements/sledwork.h"
#include "core/work/implements/whatishere.h"
#include "core/work/strength/maxima.h"
#include "tests/core/sample/goldencells.h"
#include "tests/core/sample/marrowhill.h"
#include "tests/core/work/memorykeeper.h"

#include <QtTest>

#include <algorithm>
#include <cmath>
#endif

using namespace steelyard;

/// What lies at the pitches of the sample season, and a second opinion that worked it out from the files: to 1e-6 of each number, since
/// its derivatives are taken by small steps.
class GoldenImplementsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void agreeWithASecondOpinion_data();
    void agreeWithASecondOpinion();
    void nothingElseIsThere();
    void whatSheMayUse();

private:
    [[nodiscard]] const KitItem& item(const std::string& name) const;
    [[nodiscard]] const Athlete& person(const std::string& name) const;
    [[nodiscard]] const Venue& venue(const std::string& name) const;
    [[nodiscard]] const SledMeasurement& sled() const { return std::get<SledMeasurement>(item("Sled").measurement); }
    [[nodiscard]] SurfaceFriction friction(const std::string& name) const;
    [[nodiscard]] std::vector<SledRunTimed> wetRuns(const Athlete& athlete) const;
    void compare(double value, double u, const QStringList& cells) const;

    keeping::Device m_device;
    std::size_t m_massCount = 0;
};

const KitItem& GoldenImplementsTest::item(const std::string& name) const
{
    const auto kit = m_device.book.kit();
    return (*std::find_if(kit.begin(), kit.end(), [&](const KitRecord* one) { return one->item.name == name; }))->item;
}

const Athlete& GoldenImplementsTest::person(const std::string& name) const
{
    const auto people = m_device.book.athletes();
    return **std::find_if(people.begin(), people.end(), [&](const Athlete* one) { return one->name == name; });
}

const Venue& GoldenImplementsTest::venue(const std::string& name) const
{
    const auto venues = m_device.book.venues();
    return **std::find_if(venues.begin(), venues.end(), [&](const Venue* one) { return one->name == name; });
}

SurfaceFriction GoldenImplementsTest::friction(const std::string& name) const
{
    return *frictionOf(*lastSurface(m_device.book, venue("Far pitch").id, item("Sled").id, name), sled());
}

std::vector<SledRunTimed> GoldenImplementsTest::wetRuns(const Athlete& athlete) const
{
    return runsThatCount(m_device.book.runsOf(athlete.id), {item("Sled").id, venue("Far pitch").id, "grass, wet", SledWay::Tow}, marrowhill::today);
}

void GoldenImplementsTest::initTestCase()
{
    m_device.today = marrowhill::today;
    const auto trouble = sample::keepSeason(m_device.keeping, marrowhill::season(), {[this](std::chrono::sys_days day) { m_device.today = day; }, [] {}});
    QVERIFY2(!trouble, trouble ? trouble->what.c_str() : "");
    m_device.today = marrowhill::today;
}

void GoldenImplementsTest::agreeWithASecondOpinion_data()
{
    QTest::addColumn<QStringList>("cells");
    const auto lines = goldenCells(QStringLiteral(GOLDEN_FILE));
    QVERIFY(!lines.empty());
    m_massCount = 0;
    for (const QStringList& cells : lines) {
        QTest::newRow(qPrintable(cells.mid(0, 2).join(QLatin1Char(' ')))) << cells;
        m_massCount += cells[1] == QStringLiteral("mass_kg") ? 1 : 0;
    }
}

void GoldenImplementsTest::compare(double value, double u, const QStringList& cells) const
{
    const auto near = [](double mine, const QString& other) { return std::abs(mine - other.toDouble()) <= 1e-6 * std::abs(mine); };
    QVERIFY2(near(value, cells[2]), qPrintable(QString::number(value, 'g', 12)));
    if (!cells[3].isEmpty())
        QVERIFY2(near(u, cells[3]), qPrintable(QString::number(u, 'g', 12)));
}

void GoldenImplementsTest::agreeWithASecondOpinion()
{
    QFETCH(QStringList, cells);
    QCOMPARE(cells.size(), 4);
    const std::string of = cells[0].toStdString();
    const QString what = cells[1];
    if (what == QStringLiteral("mass_kg")) {
        const ImplementMass mass = implementMass(item(of).measurement);
        QCOMPARE(mass.mass.has_value(), !cells[2].isEmpty());
        if (mass.mass)
            compare(mass.mass->number(), mass.mass->u().si(), cells);
        return;
    }
    if (what.startsWith(QStringLiteral("friction, "))) {
        const SurfaceFriction found = friction(what.mid(10).toStdString());
        return compare(found.friction.value, found.friction.u(), cells);
    }
    if (what.startsWith(QStringLiteral("tractor tyre"))) {
        const auto deadlift = knownMaximum(m_device.book, person(of).id, deadliftId, marrowhill::today);
        QVERIFY(deadlift);
        return compare(implementMass(item("Tractor tyre").measurement).mass->highest() / deadlift->lowest * 100, 0, cells);
    }
    const auto runs = wetRuns(person(of));
    const auto line = speedLineOf(runs, sled());
    QVERIFY(line);
    const auto load = loadForSpeedLoss(*line, sled(), 0.5);
    QVERIFY(load);
    const auto here = haulOn(friction("grass, wet"), sled(), runs.front().hip), there = haulOn(friction("grass, dry"), sled(), runs.front().hip);
    QVERIFY(here && there);
    if (what == QStringLiteral("half her speed, total_kg"))
        return compare(load->total.number(), load->total.u().si(), cells);
    if (what == QStringLiteral("half her speed, added_kg"))
        return compare(load->added.number(), load->added.u().si(), cells);
    if (what == QStringLiteral("half her speed, pull_n"))
        return compare(sledPull(load->total, *here)->number(), 0, cells);
    QCOMPARE(what, QStringLiteral("as hard on dry grass, total_kg"));
    compare(carriedTo(*load, *here, *there, sled())->total.number(), 0, cells);
}

void GoldenImplementsTest::nothingElseIsThere()
{
    const auto kit = m_device.book.kit();
    const auto count = std::count_if(kit.begin(), kit.end(), [](const KitRecord* record) { return isImplement(kindOf(record->item.measurement)); });
    QCOMPARE(static_cast<std::size_t>(count), m_massCount);
    QVERIFY(m_massCount >= 12);
}

void GoldenImplementsTest::whatSheMayUse()
{
    // at the pitch somebody finds each verdict, and each thing that is there
    const auto rows = whatIsHere(m_device.book, {person("Adaeze Thornbeck").id, venue("Far pitch").id, marrowhill::today, {}});
    QVERIFY(rows);
    const auto row = [&](const std::string& name) { return *std::find_if(rows->begin(), rows->end(), [&](const HereRow& one) { return one.name == name; }); };
    QVERIFY(row("Sled").permission == Permission::Permitted);
    QVERIFY(row("Handles, long").permission == Permission::Caution && row("Handles, long").held->value == kilograms(18.8));
    QVERIFY(row("Lorry tyre").permission == Permission::Not && row("Lorry tyre").mass.gap == MassGap::SaidUnknown);
    QVERIFY(row("Keg, blue rim").permission == Permission::Not && row("Keg, blue rim").mass.mass);
    QVERIFY(row("Keg, half of it water").permission == Permission::Caution);
    // who does not train uses nothing at all
    const auto none = whatIsHere(m_device.book, {person("Saoirse N'Gambaye").id, venue("Far pitch").id, marrowhill::today, {}});
    QVERIFY(none && std::all_of(none->begin(), none->end(), [](const HereRow& one) { return one.permission == Permission::Not; }));
    // a bell in no hand but one
    const auto home = whatIsHere(m_device.book, {person("Adaeze Thornbeck").id, venue("Weight room").id, marrowhill::today, {}});
    QVERIFY(home && home->size() == 3);
}

QTEST_APPLESS_MAIN(GoldenImplementsTest)
#include "test_goldenimplements.moc"
