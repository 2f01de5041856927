// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/measure/uncertain.h"
#include "core/measure/uncertainty.h"
#include "tests/core/near.h"

#include <numbers>
#include <rapidcheck.h>

using namespace steelyard;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

Effect effect(std::uint64_t source, double amount, double freedom = knownExactly)
{
    return {SourceId{source}, {amount, 0, 0}, freedom};
}

Uncertainty sumOf(std::initializer_list<Effect> effects)
{
    Uncertainty sum;
    for (const Effect& e : effects)
        sum.add(e);
    return sum;
}

}

class TestUncertainty : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// JCGM 100:2008, 5.1.2 and 5.2.2.
    void sharedAddsStraightOwnInQuadrature_data()
    {
        QTest::addColumn<quint64>("first");
        QTest::addColumn<quint64>("second");
        QTest::addColumn<double>("a");
        QTest::addColumn<double>("b");
        QTest::addColumn<double>("u");
        QTest::newRow("one scale, one way") << quint64(7) << quint64(7) << 3.0 << 4.0 << 7.0;
        QTest::newRow("one scale, against each other") << quint64(7) << quint64(7) << 3.0 << -4.0 << 1.0;
        QTest::newRow("one scale, cancelling") << quint64(7) << quint64(7) << 3.0 << -3.0 << 0.0;
        QTest::newRow("two scales") << quint64(7) << quint64(8) << 3.0 << -4.0 << 5.0;
        QTest::newRow("each its own") << quint64(0) << quint64(0) << 3.0 << 4.0 << 5.0;
        QTest::newRow("one shared, one own") << quint64(7) << quint64(0) << 3.0 << 4.0 << 5.0;
    }
    void sharedAddsStraightOwnInQuadrature()
    {
        QFETCH(quint64, first);
        QFETCH(quint64, second);
        QFETCH(double, a);
        QFETCH(double, b);
        QFETCH(double, u);
        QCOMPARE(sumOf({effect(first, a), effect(second, b)}).standard(), u);
    }

    void componentsOfOneFitStayApart()
    {
        Uncertainty sum;
        sum.add({SourceId{1}, {1, 2, 2}, 4});
        QCOMPARE(sum.standard(), 3.0);
        sum.add({SourceId{1}, {-1, 2, 2}, 4});
        QCOMPARE(sum.standard(), std::sqrt(32.0));
        QCOMPARE(sum.effects().size(), 1u);
        QCOMPARE((Effect{SourceId{1}, {1, 2, 2}, 4}).standard(), 3.0);
    }

    void scalingCarriesTheSign()
    {
        Uncertainty sum, half;
        sum.add(effect(1, 3));
        sum.add(effect(0, 4));
        half.addScaled(sum, -1);
        half.add(effect(1, 3));
        QCOMPARE(half.standard(), 4.0);
        half.clear();
        QCOMPARE(half.standard(), 0.0);
    }

    void freedomOfASum_data()
    {
        QTest::addColumn<QVector<double>>("u");
        QTest::addColumn<QVector<double>>("freedom");
        QTest::addColumn<double>("expected");
        QTest::addColumn<double>("tolerance");
        const double inf = knownExactly;
        QTest::newRow("JCGM 100:2008 G.4.1, relative u in percent") << QVector{0.25, 0.57, 0.82} << QVector{9.0, 4.0, 14.0} << 19.0 << 0.05;
        QTest::newRow("JCGM 100:2008 H.1.6, from memory") << QVector{25.0, 9.7, 2.9, 16.6} << QVector{18.0, 25.6, 50.0, 2.0} << 16.7 << 0.1;
        QTest::newRow("one alone keeps its own") << QVector{2.0} << QVector{3.0} << 3.0 << 1e-12;
        QTest::newRow("two alike double it") << QVector{2.0, 2.0} << QVector{3.0, 3.0} << 6.0 << 1e-12;
        QTest::newRow("beside one known exactly") << QVector{1.0, 1.0} << QVector{4.0, inf} << 16.0 << 1e-12;
    }
    void freedomOfASum()
    {
        QFETCH(QVector<double>, u);
        QFETCH(QVector<double>, freedom);
        QFETCH(double, expected);
        QFETCH(double, tolerance);
        Uncertainty sum;
        for (int i = 0; i < u.size(); ++i)
            sum.add(effect(0, u[i], freedom[i]));
        VERIFY_NEAR(sum.degreesOfFreedom(), expected, tolerance);
    }

    void aJudgedFloorLosesNoFreedom()
    {
        Uncertainty floorOnly, both;
        floorOnly.add({SourceId{1}, {0, 0, 2}, 1});
        QCOMPARE(floorOnly.degreesOfFreedom(), knownExactly);
        both.add({SourceId{1}, {1, 0, 1}, 1});
        VERIFY_NEAR(both.degreesOfFreedom(), 4, 1e-12);
        QCOMPARE(Uncertainty{}.degreesOfFreedom(), knownExactly);
    }

    void sharersKeepTheFewestFreedom()
    {
        QCOMPARE(sumOf({effect(5, 1, 9), effect(5, 1, 2)}).degreesOfFreedom(), 2.0);
    }

    /// Student's t has closed quantiles for 1, 2 and 4 degrees of freedom; the others are Table G.2 of JCGM 100:2008.
    void coverageFactor_data()
    {
        QTest::addColumn<double>("freedom");
        QTest::addColumn<double>("k95");
        QTest::addColumn<double>("tolerance");
        const double a = 4 * 0.975 * 0.025, q = std::cos(std::acos(std::sqrt(a)) / 3) / std::sqrt(a);
        QTest::newRow("1, closed") << 1.0 << std::tan(std::numbers::pi * 0.475) << 1e-11;
        QTest::newRow("2, closed") << 2.0 << 0.95 * std::sqrt(2 / a) << 1e-13;
        QTest::newRow("4, closed") << 4.0 << 2 * std::sqrt(q - 1) << 1e-13;
        QTest::newRow("3, table") << 3.0 << 3.18 << 0.005;
        QTest::newRow("10, table") << 10.0 << 2.23 << 0.005;
        QTest::newRow("20, table") << 20.0 << 2.09 << 0.005;
        QTest::newRow("100, table") << 100.0 << 1.984 << 0.0005;
        QTest::newRow("infinite") << knownExactly << 1.959963984540054 << 1e-14;
        // z + (z³ + z)/4ν + …, Abramowitz & Stegun 26.7.5
        const double z = 1.959963984540054, next = (z * z * z + z) / 4;
        QTest::newRow("a thousand million") << 1e9 << z + next / 1e9 << 1e-14;
        QTest::newRow("twice that") << 2e9 << z + next / 2e9 << 1e-14;
        QTest::newRow("a million million") << 1e12 << z + next / 1e12 << 1e-14;
        QTest::newRow("a thousand million million") << 1e15 << z + next / 1e15 << 1e-14;
        QTest::newRow("past all") << 1e300 << z << 1e-14;
    }
    void coverageFactor()
    {
        QFETCH(double, freedom);
        QFETCH(double, k95);
        QFETCH(double, tolerance);
        VERIFY_NEAR(coverageFactor95(freedom), k95, tolerance);
    }

    void withoutFreedomNothingCanBeSaid()
    {
        for (const double freedom : {0.0, -1.0, notANumber}) {
            QCOMPARE(coverageFactor95(freedom), knownExactly);
            QCOMPARE(coverageFactor95ForPictures(freedom), knownExactly);
        }
    }

    void picturesFactorIsWithinItsPromise()
    {
        double worst = 0;
        for (double inverse = 1; inverse > 1e-7; inverse *= 0.9997)
            worst = std::max(worst, std::abs(coverageFactor95ForPictures(1 / inverse) - coverageFactor95(1 / inverse)));
        QVERIFY2(worst < 1e-5, qPrintable(QString::number(worst)));
        QCOMPARE(coverageFactor95ForPictures(knownExactly), coverageFactor95(knownExactly));
        QCOMPARE(coverageFactor95ForPictures(0.5), coverageFactor95(0.5));
    }

    void giveOrTakeTakesTheFewReadingsSeriously()
    {
        VERIFY_NEAR(sumOf({effect(0, 2, 1)}).giveOrTake(), 2 * 12.706204736174694, 1e-10);
        VERIFY_NEAR(sumOf({effect(0, 2)}).giveOrTake(), 2 * 1.959963984540054, 1e-14);
        QCOMPARE(Uncertainty{}.giveOrTake(), 0.0);
        QCOMPARE(sumOf({effect(3, 2, 1), effect(3, -2, 1)}).giveOrTake(), 0.0);
    }

    /// JCGM 100:2008, 4.3.7 and F.2.2.1: half-widths over √3, a step is twice its half-width.
    void scaleReading()
    {
        QCOMPARE(scaleReadingUncertainty(0.1, 0), 0.1 / std::sqrt(12.0));
        QCOMPARE(scaleReadingUncertainty(0, 0.3), 0.3 / std::sqrt(3.0));
        VERIFY_NEAR(scaleReadingUncertainty(0.2, 0.1), std::sqrt(0.04 / 12 + 0.01 / 3), 1e-17);
    }

    void neverNegativeAndNeverLessForOneMoreOfItsOwn()
    {
        QVERIFY(rc::check("u of a sum", [] {
            const auto amounts = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-1000, 1000));
            Uncertainty sum;
            double before = 0;
            for (const int a : amounts) {
                sum.add(effect(0, a));
                RC_ASSERT(sum.standard() >= before);
                before = sum.standard();
            }
            Uncertainty shared;
            double straight = 0;
            for (const int a : amounts) {
                shared.add(effect(9, a));
                straight += a;
            }
            RC_ASSERT(shared.standard() == std::abs(straight));
        }));
    }

    void quantityWithItsOwn()
    {
        VERIFY_NEAR(inSquares(kilograms(3), kilograms(4), kilograms(12)).si(), 13, 1e-15);
        QCOMPARE(inSquares(metres(2)), metres(2));
        VERIFY_NEAR((Uncertain<Mass>{kilograms(80), kilograms(0.5)}.giveOrTake().si()), 0.97998, 1e-5);
        constexpr double endless = std::numeric_limits<double>::infinity(), notANumber = std::numeric_limits<double>::quiet_NaN();
        QVERIFY((Uncertain<Mass>{kilograms(-3), {}}.isSound()));
        for (const auto& [value, u] : {std::pair{endless, 0.0}, {notANumber, 0.0}, {1.0, -1e-9}, {1.0, endless}, {1.0, notANumber}})
            QVERIFY((!Uncertain<Mass>{kilograms(value), kilograms(u)}.isSound()));
    }
};

QTEST_APPLESS_MAIN(TestUncertainty)
#include "test_uncertainty.moc"
