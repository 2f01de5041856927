// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/comparing.h"

#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <cmath>
#endif

using namespace steelyard;

namespace {

/// A twin one size off, as bands from one bag are.
BandMeasurement twin()
{
    return samples::band(1.01, {{5, 1.16}, {7.5, 1.27}, {10, 1.40}, {12.5, 1.58}, {15, 1.80}, {17.5, 2.06}});
}

}

/// Two measurements held against each other.
class ComparingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void twinsByTheirFits();
    void sameBandTwiceIsTooCloseToCall();
    void fewPointsCannotTell();
    void atTheLongestThatBothKnow();
    void nothingToCompare();
    void chainsByTheMetre();
    void gaugedChainsAreRarelyToldApart();
    void aidsAtTheLowestHeight();
    void whatIsOutOfUseOrLentPairsWithNothing();
};

void ComparingTest::whatIsOutOfUseOrLentPairsWithNothing()
{
    KitItem band = samples::item(1, "Band", samples::band());
    QVERIFY(mayPair(band));
    band.inspection = Inspection{KitFault::Cut, {}, {}};
    QVERIFY(!mayPair(band));
    band.inspection = Inspection{};
    band.lent = OnLoan{"the rowers"};
    QVERIFY(!mayPair(band));
    QVERIFY(!mayPair(samples::item(2, "Rack", RackMeasurement{metres(0.9), {}, 1, {}}, false)));
}

void ComparingTest::aidsAtTheLowestHeight()
{
    AidMeasurement worn = samples::aid();
    for (AidReading& r : worn.readings)
        r.mass = kilograms(0.6 * r.mass->si());
    const auto said = compared(samples::aid(), worn);
    QVERIFY(said.has_value());
    QCOMPARE(said->length, Length{});
    VERIFY_NEAR_SHARE(said->first.si(), 62.5 * 9.80665, 1e-12);
    VERIFY_NEAR_SHARE(said->share(), -0.4, 1e-12);
    // SciPy's u at the chest, and six tenths of it, in squares; 1.959964 for no lack of readings
    VERIFY_NEAR_SHARE(said->giveOrTake.si(), 1.959963984540054 * std::hypot(48.11532307081529, 0.6 * 48.11532307081529), 1e-10);
    QVERIFY(said->clear());
    // one that was not read at the chest is compared where both were
    worn.readings.erase(worn.readings.begin());
    QCOMPARE(compared(samples::aid(), worn)->length, metres(0.05));
    QVERIFY(!compared(samples::aid(), AidMeasurement{}));
    QVERIFY(!compared(Measured(samples::aid()), Measured(samples::band())));
    QVERIFY(canCompare(ItemKind::Aid) && !canCompare(ItemKind::Machine));
}

void ComparingTest::twinsByTheirFits()
{
    const auto said = compared(samples::band(), twin());
    QVERIFY(said.has_value());
    QCOMPARE(said->length.si(), 1.95);
    // NumPy 1.24 lstsq and SciPy 1.10 stats.t on the same points: pulls, and t95 by Welch-Satterthwaite of both fits
    VERIFY_NEAR_SHARE(said->first.si(), 171.67257512909634, 1e-9);
    VERIFY_NEAR_SHARE(said->second.si(), 161.69564411098818, 1e-9);
    VERIFY_NEAR_SHARE(said->giveOrTake.si(), 1.326306903145014, 1e-7);
    QVERIFY(said->clear());
    VERIFY_NEAR_SHARE(said->share(), 161.69564411098818 / 171.67257512909634 - 1, 1e-7);
    QVERIFY(std::abs(said->share()) > unevenPairShare);
}

void ComparingTest::sameBandTwiceIsTooCloseToCall()
{
    const auto said = compared(samples::band(), samples::band());
    QVERIFY(said.has_value());
    QCOMPARE(said->difference.si(), 0.0);
    QVERIFY(said->giveOrTake.si() > 0);
    QVERIFY(!said->clear());
}

void ComparingTest::fewPointsCannotTell()
{
    // two points and two coefficients: 5 % of the pull is believed and no less
    const auto few = samples::band(1.0, {{10, 1.37}, {15, 1.72}});
    const auto said = compared(few, samples::band(1.0, {{10, 1.39}, {15, 1.72}}));
    QVERIFY(said.has_value());
    QVERIFY(!said->clear());
    VERIFY_NEAR_SHARE(said->giveOrTake.si(), 1.959963984540054 * 0.05 * std::hypot(said->first.si(), said->second.si()), 1e-9);
}

void ComparingTest::atTheLongestThatBothKnow()
{
    const auto shorter = samples::band(1.0, {{5, 1.15}, {7.5, 1.245}, {10, 1.37}});
    QCOMPARE(compared(samples::band(), shorter)->length.si(), 1.37);
    QCOMPARE(compared(shorter, samples::band())->length.si(), 1.37);
    // one read only to where the other is at rest
    QVERIFY(!compared(shorter, samples::band(1.4, {{5, 1.6}, {7.5, 1.7}, {10, 1.9}})));
}

void ComparingTest::nothingToCompare()
{
    BandMeasurement bare;
    QVERIFY(!compared(bare, samples::band()));
    QVERIFY(!compared(samples::band(), bare));
    QVERIFY(!compared(Measured(samples::band()), Measured(samples::weighed())));
    QVERIFY(compared(Measured(samples::band()), Measured(twin())).has_value());
    QVERIFY(!compared(ChainMeasurement{}, samples::weighed()));
}

void ComparingTest::chainsByTheMetre()
{
    ChainMeasurement worn = samples::weighed();
    worn.mass = kilograms(8.25);
    const auto said = compared(Measured(samples::weighed()), Measured(worn));
    QVERIFY(said.has_value());
    VERIFY_NEAR(said->difference.si(), -0.2 * 9.80665, 1e-12);
    // each weighing is uncertain by 0.1/√12 kg over 1.5 m
    VERIFY_NEAR(said->giveOrTake.si(), 1.959963984540054 * std::sqrt(2.0) * 0.1 / std::sqrt(12.0) / 1.5 * 9.80665, 1e-9);
    QVERIFY(said->clear());
}

void ComparingTest::gaugedChainsAreRarelyToldApart()
{
    ChainMeasurement thinner = samples::gauged();
    thinner.wire = metres(0.0157);
    QVERIFY(!compared(samples::gauged(), thinner)->clear());
}

QTEST_APPLESS_MAIN(ComparingTest)
#include "test_comparing.moc"
