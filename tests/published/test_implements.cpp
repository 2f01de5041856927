// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/implements/fillings.h"
#include "core/implements/keg.h"
#include "core/implements/sled.h"
#include "core/implements/sledline.h"
#include "core/implements/solids.h"
#include "core/implements/tyre.h"
#include "core/measure/roots.h"
#include "tests/published/rows.h"

using namespace steelyard;
using namespace steelyard::published;
using Numbers = Account::Numbers;

namespace {

Estimate<Mass> kg(double mass) { return exactly(kilograms(mass)); }
Estimate<Length> metresOf(const Row& row, const QString& name) { return exactly(metres(given(row, name))); }
Estimate<Density> densityOf(const Row& row) { return exactly(Density::fromSi(given(row, "rho"))); }
Haul haul(double friction, double angle) { return {exactly(friction), exactly(Angle{angle})}; }

double towed(const Row& row, double angle) { return sledPull(kg(given(row, "m")), haul(given(row, "mu"), angle))->number(); }

/// The tyre that all rows of flipping are about.
TyreFlip tyre() { return *TyreFlip::of({kg(232), exactly(metres(1.5)), exactly(metres(0.5))}); }
FlipPoint tilted(const Row& row) { return *tyre().at(Angle{given(row, "angle") * oneDegree.radians}); }

/// How the pull changes with the angle: its whole uncertainty, with its sign, when only the angle is uncertain.
double changeByAngle(double friction, double angle)
{
    const auto pull = *sledPull(kg(90), {exactly(friction), within(Angle{angle}, Angle{1})});
    return pull.uncertainty.effects().front().amount.front();
}

/// The ends of "1500-1600".
std::pair<double, double> endsOf(const Row& row)
{
    const QStringList ends = row.expected.section(' ', 0, 0).split('-');
    return {ends.at(0).toDouble(), ends.at(1).toDouble()};
}

}

class TestPublishedImplements : public QObject {
    Q_OBJECT
    STEELYARD_ROWS_TEST

public:
    TestPublishedImplements()
    {
        tyresAndSolids();
        kegsAndDensities();
        sleds();
        m_account.standsAside({"CARRY-29", "CARRY-30", "CARRY-31", "CARRY-32"}, "nobody counts strides here");
        m_account.standsAside({"CARRY-33", "CARRY-34", "CARRY-35"}, "loads of studies, for context");
        m_account.computes({"BELL-06", "BELL-07", "BELL-08", "BELL-09", "BELL-10", "BELL-11"},
            [](const Row& r) { return Numbers{given(r, "mass") / volumeOfBall(exactly(metres(0.21)))->number()}; });
        m_account.standsAside({"BELL-01", "BELL-02", "BELL-03", "BELL-04", "BELL-05"}, "sizes of bells, for whoever measures one");
        m_account.standsAside({"BELL-12", "BELL-13", "BELL-14", "BELL-15"}, "forces of swings, for context");
    }

private Q_SLOTS:
    /// The engine takes water as it comes: what it says has to hold at every temperature that has a row.
    void waterOfEveryTemperatureIsWithinItsRange()
    {
        const auto water = steelyard::densityOf(Filling::Water);
        const double half = std::sqrt(3) * water.u().si();
        int rows = 0;
        for (const Row& row : m_account.rows())
            if (row.quantity == QStringLiteral("air-free water")) {
                QVERIFY(std::abs(numbersIn(row.expected).front() - water.number()) <= half);
                ++rows;
            }
        QCOMPARE(rows, 5);
    }

    void fillingsAreTheRangesOfTheHandbooks_data()
    {
        QTest::addColumn<QString>("id");
        QTest::addColumn<double>("middle");
        QTest::addColumn<double>("half");
        const auto row = [](const char* id, const Estimate<Density>& density) { QTest::newRow(id) << id << density.number() << std::sqrt(3) * density.u().si(); };
        row("DENS-07", steelyard::densityOf(Filling::DrySand));
        row("DENS-08", steelyard::densityOf(Filling::WetSand));
        row("DENS-09", concreteDensity());
        row("DENS-10", steelyard::densityOf(Filling::LeadShot));
        row("DENS-11", steelyard::densityOf(Filling::RubberCrumb));
    }
    void fillingsAreTheRangesOfTheHandbooks()
    {
        QFETCH(QString, id);
        QFETCH(double, middle);
        QFETCH(double, half);
        const auto at = std::find_if(m_account.rows().begin(), m_account.rows().end(), [&](const Row& r) { return r.id == id; });
        QVERIFY(at != m_account.rows().end());
        const auto [least, greatest] = endsOf(*at);
        QVERIFY(std::abs(middle - half - least) < 1e-9 && std::abs(middle + half - greatest) < 1e-9);
    }

private:
    void tyresAndSolids()
    {
        m_account.computes({"TYRE-05"}, [](const Row&) { return Numbers{tyre().at(Angle{0})->vertical.number()}; });
        m_account.computes({"TYRE-06", "TYRE-12"}, [](const Row& r) { return Numbers{tilted(r).vertical.number()}; });
        m_account.computes({"TYRE-07", "TYRE-13"}, [](const Row& r) { return Numbers{tilted(r).perpendicular.number()}; });
        m_account.computes({"TYRE-14"}, [](const Row&) { return Numbers{tyre().balance().number() / oneDegree.radians}; });
        m_account.computes({"TYRE-15"}, [](const Row&) { return Numbers{tyre().workToBalance().number()}; });
        m_account.standsAside({"TYRE-01", "TYRE-02", "TYRE-03", "TYRE-04"}, "tyres of studies, for context");

        const auto wood = [](const Row& r) { return steelyard::densityOf(Wood{exactly(given(r, "G")), exactly(given(r, "MC"))})->value; };
        m_account.computes({"WOOD-01"}, [wood](const Row& r) { return Numbers{wood(r).si()}; });
        m_account.computes({"WOOD-02"}, [wood](const Row& r) {
            const Length foot = 12 * inch;
            return Numbers{wood(r) / (pound / (foot * foot * foot))};
        });
        m_account.standsAside({"WOOD-04", "WOOD-05", "WOOD-06", "WOOD-07", "WOOD-08", "WOOD-09", "WOOD-10", "WOOD-11", "WOOD-12", "WOOD-13", "WOOD-14", "WOOD-15"},
            "species, for whoever knows what a log is of");
        m_account.standsAside({"WOOD-16"}, "the gravity that is asked for is the one at the same moisture");

        m_account.computes({"IMPL-01", "IMPL-02", "IMPL-03", "IMPL-04", "IMPL-05"}, [](const Row& r) { return Numbers{stoneMass(metresOf(r, "D"), densityOf(r))->number()}; });
        m_account.computes({"IMPL-06"},
            [](const Row& r) { return Numbers{productOf(densityOf(r), *volumeOf({metresOf(r, "L"), metresOf(r, "D"), metresOf(r, "D")})).number()}; });
        m_account.computes({"IMPL-07"},
            [](const Row& r) { return Numbers{productOf(densityOf(r), *volumeOf({metresOf(r, "L"), metresOf(r, "D1"), metresOf(r, "D2")})).number()}; });
    }

    void kegsAndDensities()
    {
        m_account.computes({"IMPL-11"}, [](const Row& r) {
            // water of 20 °C as DENS-03 has it
            const auto water = exactly(Density::fromSi(998.206745559617));
            const auto content = *contentByFill(exactly(given(r, "V") * litre), exactly(0.6));
            return Numbers{filledMass(kg(given(r, "tare")), content, water)->number()};
        });
        m_account.computes({"IMPL-12"},
            [](const Row& r) { return Numbers{contentLying({metresOf(r, "r"), metresOf(r, "length"), metresOf(r, "depth")})->value / litre}; });
        m_account.standsAside({"IMPL-08", "IMPL-09", "IMPL-10"}, "kegs are not standardised: the empty one is weighed");
        m_account.standsAside({"DENS-01", "DENS-02", "DENS-03", "DENS-04", "DENS-05", "DENS-07", "DENS-08", "DENS-09", "DENS-10", "DENS-11"}, "held as ranges, below");
        m_account.standsAside({"DENS-06"}, "for chains");
    }

    void sleds()
    {
        m_account.computes({"SLED-03", "SLED-06", "SLED-09"}, [](const Row& r) { return Numbers{towed(r, 0)}; });
        m_account.computes({"SLED-12", "SLED-14"}, [](const Row& r) { return Numbers{towed(r, given(r, "angle") * oneDegree.radians)}; });
        m_account.computes({"SLED-16"}, [](const Row& r) {
            const double friction = given(r, "mu");
            return Numbers{signChange([friction](double angle) { return changeByAngle(friction, angle); }, 0.01, 1.5) / oneDegree.radians};
        });
        // pull for each kilogram of the athlete, with a share of her mass on the sled
        m_account.computes({"SLED-19"}, [](const Row&) { return Numbers{frictionFromPull({kg(0.78), exactly(newtons(3.37))}, {})->number()}; });
        m_account.computes({"SLED-22"}, [](const Row&) { return Numbers{frictionFromPull({kg(0.82), exactly(newtons(3.62))}, {})->number()}; });
        m_account.computes({"SLED-32", "SLED-34"}, [](const Row& r) {
            const double free = given(r, "v0"), standstill = given(r, "load intercept");
            std::vector<SledRun> runs;
            for (const double share : {0.25, 0.5, 0.75})
                runs.push_back({kg(share * standstill), exactly(Speed::fromSi(free * (1 - share)))});
            return Numbers{LoadSpeedLine::of(runs)->loadFor(given(r, "Vdec") / 100)->number()};
        });
        m_account.standsAside({"SLED-01", "SLED-02", "SLED-04", "SLED-05", "SLED-07", "SLED-08", "SLED-10", "SLED-11"}, "friction of studies: a surface is measured where it is");
        m_account.standsAside({"SLED-18", "SLED-20", "SLED-21", "SLED-23", "SLED-24", "SLED-25", "SLED-26", "SLED-27"}, "loads of other athletes: a line is her own");
        m_account.standsAside({"SLED-28", "SLED-29", "SLED-30", "SLED-31"}, "classes of load, no formula");
    }

    Account m_account{"data/resistance.csv", {"TYRE", "WOOD", "DENS", "IMPL", "SLED", "CARRY", "BELL"}};
};

QTEST_APPLESS_MAIN(TestPublishedImplements)
#include "test_implements.moc"
