// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/bandlengths.h"

#include "core/work/measuredkit.h"
#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <algorithm>
#endif

using namespace steelyard;

namespace {

/// Reads the band of a curve that is known, at a length: what the coach does with plates.
BandHanging readAt(Length length)
{
    const double ratio = length.si();
    return {kilograms(4 * (ratio - 1 / (ratio * ratio)) + 6 * (1 - 1 / (ratio * ratio * ratio))), length, false, false};
}

}

/// Where a band should be read next, and how it pulls on the way back.
class BandLengthsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void firstSpreadThree();
    void thenAsFarAsItIsUsed();
    void thenWhereTheCurveIsWidest();
    void goodEnoughAsksNoMore();
    void neverMoreThanEight();
    void nothingWithoutARest();
    void pointsOnTheWayBackStayOffTheFit();
    void lessOnTheWayBack();
    void noWayBackWithoutLengthsInCommon();
};

void BandLengthsTest::firstSpreadThree()
{
    BandMeasurement band;
    band.rest = metres(1);
    for (const double expected : {1.25, 1.5, 2.0}) {
        const auto advice = nextLength(band, metres(2));
        QVERIFY(advice.has_value());
        QCOMPARE(advice->reason, LengthReason::Spread);
        VERIFY_NEAR(advice->length.si(), expected, 1e-12);
        band.hangings.push_back(readAt(advice->length));
    }
    // one near enough counts for the length that was asked for
    band.hangings = {readAt(metres(1.27))};
    VERIFY_NEAR(nextLength(band, metres(2))->length.si(), 1.5, 1e-12);
}

void BandLengthsTest::thenAsFarAsItIsUsed()
{
    const auto advice = nextLength(samples::band(), metres(2.2));
    QVERIFY(advice.has_value());
    QCOMPARE(advice->reason, LengthReason::Further);
    QCOMPARE(advice->length.si(), 2.2);
}

void BandLengthsTest::thenWhereTheCurveIsWidest()
{
    const BandMeasurement band = samples::band(1.0, {{5, 1.15}, {10, 1.40}, {17.5, 1.95}});
    const auto advice = nextLength(band, metres(2));
    QVERIFY(advice.has_value());
    QCOMPARE(advice->reason, LengthReason::Weakest);
    // by reading every length: nowhere that is not read yet is less sure
    const auto fit = bandFitFrom(band);
    const Force widest = bandGiveOrTake(*fit, advice->length);
    for (double length = 1.01; length < 2; length += 0.01) {
        const bool read = std::any_of(band.hangings.begin(), band.hangings.end(), [length](const BandHanging& h) { return std::abs(h.length->si() - length) < 0.05; });
        QVERIFY2(read || bandGiveOrTake(*fit, metres(length)) <= 1.03 * widest, qPrintable(QString::number(length)));
    }
}

void BandLengthsTest::goodEnoughAsksNoMore()
{
    QVERIFY(!nextLength(samples::band(), metres(1.95)));
    QVERIFY(nextLength(samples::band(), metres(1.95), 0.0001).has_value());
}

void BandLengthsTest::neverMoreThanEight()
{
    BandMeasurement band = samples::band();
    band.hangings.push_back({kilograms(6), metres(1.25), false, false});
    QVERIFY(nextLength(band, metres(2), 0.0001).has_value());
    band.hangings.push_back({kilograms(16), metres(1.6), false, false});
    QCOMPARE(pointsOnFit(band).size(), mostLengthCount);
    QVERIFY(!nextLength(band, metres(2), 0.0001));
    band.hangings.back().leftOut = true;
    QVERIFY(nextLength(band, metres(2), 0.0001).has_value());
}

void BandLengthsTest::nothingWithoutARest()
{
    BandMeasurement band;
    QVERIFY(!nextLength(band, metres(2)));
    band.rest = metres(2);
    QVERIFY(!nextLength(band, metres(2)));
    band.rest = metres(0);
    QVERIFY(!nextLength(band, metres(2)));
}

void BandLengthsTest::pointsOnTheWayBackStayOffTheFit()
{
    BandMeasurement band = samples::band();
    const auto before = bandFitFrom(band)->pull(metres(1.5));
    band.hangings.push_back({kilograms(10), metres(1.45), false, true});
    QCOMPARE(bandFitFrom(band)->pull(metres(1.5)).si(), before.si());
    QCOMPARE(pointsOnTheWayBack(band).size(), std::size_t{1});
    // nor is one odd because it was read on the way back
    QVERIFY(!oddHanging(band));
}

void BandLengthsTest::lessOnTheWayBack()
{
    BandMeasurement band;
    band.rest = metres(1);
    band.model = BandModel::Line;
    for (const double kg : {5.0, 10.0, 15.0}) {
        band.hangings.push_back({kilograms(kg), metres(1 + kg / 20), false, false});
        band.hangings.push_back({kilograms(kg), metres(1 + kg / 18), false, true});
    }
    // straight lines: 20 and 18 kg for each metre of stretch
    const auto back = wayBack(band);
    QVERIFY(back.has_value());
    VERIFY_NEAR_SHARE(back->lessShare(), 0.1, 1e-9);
    VERIFY_NEAR(back->length.si(), (1 + 5.0 / 18 + 1.75) / 2, 1e-12);
}

void BandLengthsTest::noWayBackWithoutLengthsInCommon()
{
    QVERIFY(!wayBack(samples::band()));
    BandMeasurement band = samples::band();
    band.hangings.push_back({kilograms(25), metres(2.5), false, true});
    band.hangings.push_back({kilograms(27), metres(2.6), false, true});
    QVERIFY(!wayBack(band));
}

QTEST_APPLESS_MAIN(BandLengthsTest)
#include "test_bandlengths.moc"
