// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/strength/strengthcurve.h"
#include "tests/core/near.h"

#include <cmath>
#include <limits>
#include <vector>

using namespace steelyard;

namespace {

IsometricReading pulled(double height, double newton, double uScale = 0) { return {metres(height), newtons(newton), newtons(uScale)}; }

std::vector<IsometricReading> three() { return {pulled(0.8, 900), pulled(1.0, 1000), pulled(1.2, 1300)}; }

}

/// What she can hold goes through her own pulls and says how well it is known.
class TestStrengthCurve : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void throughHerPulls();
    void knowsNothingOutside();
    void triesAtOneHeightAreAveraged();
    void spreadIsHerOwnOnceItIsKnown();
    void scaleAndSpreadAddInSquares();
    void uncertaintyBetweenHeights();
    void refused_data();
    void refused();
};

void TestStrengthCurve::throughHerPulls()
{
    const auto readings = three();
    const auto curve = StrengthCurve::of(readings);
    QVERIFY(curve);
    for (const IsometricReading& reading : readings)
        VERIFY_NEAR(curve->at(reading.height)->si(), reading.pull.si(), 1e-9);
    // between two pulls it stays between them, as a curve that rises only where they do
    for (double h = 0.8; h < 1.0; h += 0.01)
        QVERIFY(curve->at(metres(h))->si() >= 900 - 1e-9 && curve->at(metres(h))->si() <= 1000 + 1e-9);
    // given in another order it is the same
    const std::vector<IsometricReading> other{readings[2], readings[0], readings[1]};
    QCOMPARE(StrengthCurve::of(other)->at(metres(1.1))->si(), curve->at(metres(1.1))->si());
}

void TestStrengthCurve::knowsNothingOutside()
{
    const auto curve = StrengthCurve::of(three());
    QCOMPARE(curve->lowest(), metres(0.8));
    QCOMPARE(curve->highest(), metres(1.2));
    QVERIFY(!curve->at(metres(0.79)) && !curve->at(metres(1.21)) && !curve->uAt(metres(0.79)));
}

void TestStrengthCurve::triesAtOneHeightAreAveraged()
{
    auto readings = three();
    readings.push_back(pulled(1.003, 1060));
    const auto curve = StrengthCurve::of(readings);
    QCOMPARE(curve->points().size(), 3u);
    VERIFY_NEAR(curve->points()[1].pull.si(), 1030, 1e-9);
    VERIFY_NEAR(curve->points()[1].height.si(), 1.0015, 1e-12);
    QCOMPARE(curve->points()[1].triesCount, 2);
    // six millimetres apart is another height
    readings.back().height = metres(1.006);
    QCOMPARE(StrengthCurve::of(readings)->points().size(), 4u);
}

/// Pooled by hand: 980 and 1020 are 2 % off their mean on either side, so (2 · 0.02²)/1; with three heights alike (6 · 0.02²)/3.
void TestStrengthCurve::spreadIsHerOwnOnceItIsKnown()
{
    auto readings = three();
    QCOMPARE(StrengthCurve::of(readings)->spreadRatio(), usualSpreadRatio);
    readings[1].pull = newtons(980);
    readings.push_back(pulled(1.0, 1020));
    QCOMPARE(StrengthCurve::of(readings)->repeatsCount(), 1);
    QCOMPARE(StrengthCurve::of(readings)->spreadRatio(), usualSpreadRatio);
    // wider than is usual: already from one repeat
    auto wide = readings;
    wide[1].pull = newtons(900);
    wide[3].pull = newtons(1100);
    VERIFY_NEAR(StrengthCurve::of(wide)->spreadRatio(), std::sqrt(2) * 0.1, 1e-12);
    readings[0].pull = newtons(882);
    readings.push_back(pulled(0.8, 918));
    readings[2].pull = newtons(1274);
    readings.push_back(pulled(1.2, 1326));
    const auto curve = StrengthCurve::of(readings);
    QCOMPARE(curve->repeatsCount(), 3);
    VERIFY_NEAR(curve->spreadRatio(), std::sqrt(2) * 0.02, 1e-12);
    VERIFY_NEAR(curve->points()[0].u.si(), 0.02 * 900, 1e-9);
}

void TestStrengthCurve::scaleAndSpreadAddInSquares()
{
    auto readings = three();
    readings[0].uScale = newtons(30);
    const auto curve = StrengthCurve::of(readings);
    VERIFY_NEAR(curve->points()[0].u.si(), std::hypot(30, 0.05 * 900), 1e-9);
    VERIFY_NEAR(curve->uAt(metres(0.8))->si(), std::hypot(30, 0.05 * 900), 1e-9);
}

/// Halfway between two heights a third is far away, and the two count by about half each: less than either alone.
void TestStrengthCurve::uncertaintyBetweenHeights()
{
    const std::vector<IsometricReading> even{pulled(0.8, 1000), pulled(1.0, 1000), pulled(1.2, 1000)};
    const auto curve = StrengthCurve::of(even);
    const double between = curve->uAt(metres(0.9))->si();
    QVERIFY(between < 50 && between > 25);
    for (double h = 0.8; h <= 1.2; h += 0.01)
        QVERIFY(curve->uAt(metres(h))->si() > 0);
    // one pull that is more lifts the curve there and leaves the other end alone
    const StrengthCurve more = curve->withMore(0, newtons(40));
    VERIFY_NEAR(more.at(metres(0.8))->si(), 1040, 1e-9);
    VERIFY_NEAR(more.at(metres(1.2))->si(), 1000, 1e-9);
    QCOMPARE(curve->withMore(9, newtons(40)).at(metres(0.9))->si(), curve->at(metres(0.9))->si());
}

void TestStrengthCurve::refused_data()
{
    QTest::addColumn<std::vector<IsometricReading>>("readings");
    QTest::addColumn<Refusal>("code");
    QTest::addColumn<QString>("what");
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    const auto row = [](const char* name, std::vector<IsometricReading> readings, Refusal code, const char* what) { QTest::newRow(name) << std::move(readings) << code << QString::fromLatin1(what); };
    row("none", {}, Refusal::TooFewPoints, "heights");
    row("two heights", {pulled(0.8, 900), pulled(1.0, 1000), pulled(1.002, 1010)}, Refusal::TooFewPoints, "heights");
    row("no pull", {pulled(0.8, 900), pulled(1.0, 0), pulled(1.2, 1300)}, Refusal::OutOfRange, "point 2");
    row("below the floor", {pulled(-0.1, 900), pulled(1.0, 1000), pulled(1.2, 1300)}, Refusal::OutOfRange, "point 1");
    row("uncertainty below nothing", {pulled(0.8, 900), pulled(1.0, 1000), pulled(1.2, 1300, -1)}, Refusal::OutOfRange, "point 3");
    row("not a number", {pulled(0.8, nan), pulled(1.0, 1000), pulled(1.2, 1300)}, Refusal::NotFinite, "point 1");
    row("endless", {pulled(0.8, 900), pulled(std::numeric_limits<double>::infinity(), 1000), pulled(1.2, 1300)}, Refusal::NotFinite, "point 2");
}

void TestStrengthCurve::refused()
{
    QFETCH(const std::vector<IsometricReading>, readings);
    QFETCH(const Refusal, code);
    QFETCH(const QString, what);
    const auto curve = StrengthCurve::of(readings);
    QVERIFY(!curve);
    QCOMPARE(curve.error().code, code);
    QCOMPARE(QString::fromStdString(curve.error().what), what);
}

QTEST_APPLESS_MAIN(TestStrengthCurve)
#include "test_strengthcurve.moc"
