// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/barchanges.h"

#include "core/work/measuredkit.h"
#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <rapidcheck.h>

#include <QtTest>

#include <algorithm>
#endif

using namespace steelyard;

namespace {

Mass platesOn(const BarRecord& bar)
{
    return loadsOf(bar)->nearest(bar.wanted).plates();
}

/// On a scale in steps of 0.1 kg.
KnownIron known(IronSort sort, double markedKg, double readKg, int count)
{
    const IronMeasurement measured{sort, kilograms(markedKg), kilograms(readKg), kilograms(0.1), std::nullopt, count};
    return {samples::numbered(9), measured, *checked(measured)};
}

}

/// A bar is changed under what hangs on it.
class BarChangesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void platesStayWhenTheBarChanges();
    void platesStayWhenTheCollarsChange();
    void anyPlatesStayUnderAnyBar();
    void pairMoreOfWhatIsHere();
    void pairMoreOfSomethingNew();
    void pairMoreTellsPlatesApartByMass();
    void pairsStepFromNoneToTwenty();
    void oddPlateIsStepped();
    void noSuchRow();
    void weighedBarTakesTheScalesMass();
    void weighedPlatesGetARowOfTheirOwn();
    void weighedAgainIsTakenAnew();
    void platesByMarkAgain();
    void weighedPlatesThatWereNotHere();
};

void BarChangesTest::platesStayWhenTheBarChanges()
{
    const BarRecord bar = withBar(samples::bar(102.5), kilograms(15));
    QCOMPARE(bar.bar.si(), 15.0);
    QVERIFY(bar.barEntered);
    QCOMPARE(bar.wanted.si(), 97.5);
    QCOMPARE(platesOn(bar).si(), 82.5);
}

void BarChangesTest::platesStayWhenTheCollarsChange()
{
    const BarRecord bar = withCollars(samples::bar(102.5), kilograms(5));
    QCOMPARE(bar.collars.si(), 5.0);
    QVERIFY(!bar.barEntered);
    QCOMPARE(bar.wanted.si(), 107.5);
    QCOMPARE(platesOn(bar).si(), 82.5);
    QCOMPARE(withCollars(bar, Mass{}).wanted.si(), 102.5);
}

void BarChangesTest::anyPlatesStayUnderAnyBar()
{
    const auto holds = [] {
        const BarRecord from = samples::bar(20);
        const auto loads = loadsOf(from);
        const auto& all = loads->all();
        const auto at = *rc::gen::inRange<std::size_t>(0, all.size());
        BarRecord bar = from;
        bar.wanted = all[at].total;
        const int changes = *rc::gen::inRange(1, 6);
        for (int i = 0; i < changes; ++i) {
            // quarters of a kilogram, up to 60 kg
            const Mass mass = kilograms(*rc::gen::inRange(0, 241) / 4.0);
            bar = *rc::gen::arbitrary<bool>() ? withBar(bar, mass) : withCollars(bar, mass);
        }
        RC_ASSERT(platesOn(bar) == all[at].plates());
    };
    QVERIFY(rc::check("plates stay", holds));
}

void BarChangesTest::pairMoreOfWhatIsHere()
{
    const BarRecord bar = withPairMore(samples::bar(20), kilograms(20));
    QCOMPARE(bar.stock.size(), usualStock().size());
    QCOMPARE(bar.stock[1].type.mass.si(), 20.0);
    QCOMPARE(bar.stock[1].count, 4);
    QCOMPARE(bar.stock[0].count, 2);
}

void BarChangesTest::pairMoreOfSomethingNew()
{
    BarRecord bar = withPairMore(samples::bar(20), kilograms(0.5));
    QCOMPARE(bar.stock.size(), usualStock().size() + 1);
    QCOMPARE(bar.stock.back().type.mass.si(), 0.5);
    QCOMPARE(bar.stock.back().count, 2);
    // the nearest in mass lends its size
    QCOMPARE(bar.stock.back().type.diameter.si(), 0.160);
    QCOMPARE(bar.stock.back().type.thickness.si(), 0.014);

    bar = withPairMore(bar, kilograms(18));
    QCOMPARE(bar.stock[2].type.mass.si(), 18.0);
    QCOMPARE(bar.stock[2].type.diameter.si(), 0.450);
    QVERIFY(std::is_sorted(bar.stock.begin(), bar.stock.end(), [](const PlatesHere& a, const PlatesHere& b) { return a.type.mass > b.type.mass; }));
}

void BarChangesTest::pairMoreTellsPlatesApartByMass()
{
    // 45 lb is 20.412 kg: no 20 kg plate
    BarRecord bar = withPairMore(samples::bar(20), pounds(45));
    QCOMPARE(bar.stock.size(), usualStock().size() + 1);
    bar = withPairMore(bar, kilograms(20.41165665));
    QCOMPARE(bar.stock.size(), usualStock().size() + 1);
    QCOMPARE(bar.stock[1].count, 4);
}

void BarChangesTest::pairsStepFromNoneToTwenty()
{
    BarRecord bar = samples::bar(20);
    bar = withPairsStepped(bar, 0, false);
    QCOMPARE(bar.stock[0].count, 0);
    bar = withPairsStepped(bar, 0, false);
    QCOMPARE(bar.stock[0].count, 0);
    for (int i = 1; i <= 20; ++i) {
        bar = withPairsStepped(bar, 0, true);
        QCOMPARE(bar.stock[0].count, 2 * i);
    }
    bar = withPairsStepped(bar, 0, true);
    QCOMPARE(bar.stock[0].count, 40);
}

void BarChangesTest::oddPlateIsStepped()
{
    BarRecord bar = samples::bar(20);
    bar.stock[3].count = 3;
    QCOMPARE(withPairsStepped(bar, 3, true).stock[3].count, 4);
    QCOMPARE(withPairsStepped(bar, 3, false).stock[3].count, 0);
}

void BarChangesTest::noSuchRow()
{
    const BarRecord bar = samples::bar(20);
    QVERIFY(withPairsStepped(bar, bar.stock.size(), true) == bar);
}

void BarChangesTest::weighedBarTakesTheScalesMass()
{
    const BarRecord bar = withWeighedBar(samples::bar(102.5), known(IronSort::Bar, 20, 20.3, 1));
    QCOMPARE(bar.bar.si(), 20.3);
    QVERIFY(bar.barEntered && bar.barWeighed);
    QVERIFY(bar.barWeighed->item == samples::numbered(9));
    VERIFY_NEAR(bar.barWeighed->u.si(), 0.1 / std::sqrt(12.0), 1e-12);
    QCOMPARE(platesOn(bar).si(), 82.5);
    QVERIFY(!withBar(bar, kilograms(20)).barWeighed);
}

void BarChangesTest::weighedPlatesGetARowOfTheirOwn()
{
    BarRecord six = samples::bar(60);
    six.stock[1].count = 6;
    const BarRecord bar = withWeighedPlates(six, known(IronSort::Plates, 20, 40.6, 2));
    QCOMPARE(bar.stock.size(), usualStock().size() + 1);
    QVERIFY(bar.stock[1].weighed && bar.stock[1].type.mass == kilograms(20.3) && bar.stock[1].count == 2);
    QCOMPARE(bar.stock[1].type.diameter.si(), 0.45);
    QVERIFY(markedMass(bar.stock[1]) == kilograms(20));
    QVERIFY(!bar.stock[2].weighed && bar.stock[2].type.mass == kilograms(20) && bar.stock[2].count == 4);
    // a pair more of them is of those that nobody has weighed
    QCOMPARE(withPairMore(bar, kilograms(20)).stock[2].count, 6);
    // all of them weighed: no row is left without any
    QCOMPARE(withWeighedPlates(samples::bar(60), known(IronSort::Plates, 20, 40.6, 2)).stock.size(), usualStock().size());
}

void BarChangesTest::weighedAgainIsTakenAnew()
{
    BarRecord six = samples::bar(60);
    six.stock[1].count = 6;
    const BarRecord bar = withWeighedPlates(withWeighedPlates(six, known(IronSort::Plates, 20, 40.6, 2)), known(IronSort::Plates, 20, 81.6, 4));
    QVERIFY(bar.stock[1].weighed && bar.stock[1].type.mass == kilograms(20.4) && bar.stock[1].count == 4);
    QCOMPARE(bar.stock[2].count, 2);
}

void BarChangesTest::platesByMarkAgain()
{
    BarRecord six = samples::bar(60);
    six.stock[1].count = 6;
    QVERIFY(!isTaken(six, samples::numbered(9)) && isTaken(withWeighedPlates(six, known(IronSort::Plates, 20, 40.6, 2)), samples::numbered(9)));
    QVERIFY(withPlatesByMark(withWeighedPlates(six, known(IronSort::Plates, 20, 40.6, 2)), samples::numbered(9)) == six);
    QVERIFY(withPlatesByMark(withWeighedPlates(samples::bar(60), known(IronSort::Plates, 20, 40.6, 2)), samples::numbered(9)) == samples::bar(60));
    QVERIFY(withPlatesByMark(six, samples::numbered(9)) == six);
}

void BarChangesTest::weighedPlatesThatWereNotHere()
{
    const BarRecord bar = withWeighedPlates(samples::bar(60), known(IronSort::Plates, 7.5, 15.2, 2));
    QCOMPARE(bar.stock.size(), usualStock().size() + 1);
    QCOMPARE(bar.stock[4].type.mass.si(), 7.6);
    QVERIFY((bar.stock[4].mark == AsTyped{"7.5", Unit::Kilogram}));
}

QTEST_APPLESS_MAIN(BarChangesTest)
#include "test_barchanges.moc"
