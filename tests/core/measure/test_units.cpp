// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/measure/units.h"
#include "core/resistance/constant.h"
#include "tests/core/near.h"

#include <rapidcheck.h>

using namespace steelyard;

namespace {

double anyMass() { return *rc::gen::inRange(-1'000'000'000, 1'000'000'000) * 1e-6; }

}

class TestUnits : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// International yard and pound agreement (1959); standard gravity, 3rd CGPM (1901).
    void poundsAreExact_data()
    {
        QTest::addColumn<double>("lb");
        QTest::addColumn<double>("kg");
        QTest::newRow("one pound") << 1.0 << 0.45359237;
        QTest::newRow("a plate") << 45.0 << 20.41165665;
        QTest::newRow("a hundred kilograms") << 220.46226218487758 << 100.0;
        QTest::newRow("nothing") << 0.0 << 0.0;
    }
    void poundsAreExact()
    {
        QFETCH(double, lb);
        QFETCH(double, kg);
        VERIFY_NEAR_SHARE(inKilograms(pounds(lb)), kg, 1e-15);
        VERIFY_NEAR_SHARE(inPounds(kilograms(kg)), lb, 1e-15);
    }

    void dimensionsMultiplyAndDivide()
    {
        const Force f = kilograms(2) * standardGravity;
        static_assert(std::is_same_v<decltype(newtons(1) * metres(1)), Energy>);
        static_assert(std::is_same_v<decltype(kilograms(1) / metres(1)), LinearDensity>);
        static_assert(std::is_same_v<decltype(newtons(1) / metres(1)), Stiffness>);
        static_assert(std::is_same_v<decltype(kilograms(1) / kilograms(1)), double>);
        QCOMPARE(f, newtons(19.6133));
        QCOMPARE((f * metres(0.5)).si(), 9.80665);
        QCOMPARE(weight(kilograms(2)), f);
        QCOMPARE(asMass(f), kilograms(2));
        QCOMPARE(-f + f, Force{});
        QVERIFY(kilograms(2) > kilograms(1) && metres(-1) < Length{});
    }

    void pulleyDividesTheStack_data()
    {
        QTest::addColumn<double>("ratio");
        QTest::addColumn<double>("kg");
        QTest::newRow("straight") << 1.0 << 40.0;
        QTest::newRow("two to one") << 2.0 << 20.0;
        QTest::newRow("geared up") << 0.5 << 80.0;
        QTest::newRow("no ratio") << 0.0 << 40.0;
        QTest::newRow("absurd ratio") << -3.0 << 40.0;
    }
    void pulleyDividesTheStack()
    {
        QFETCH(double, ratio);
        QFETCH(double, kg);
        QCOMPARE(behindPulley(kilograms(40), ratio), kilograms(kg));
    }

    void thereAndBackKeepsTheValue()
    {
        QVERIFY(rc::check("kg to lb to kg, and mass to weight to mass, to the last bit but one", [] {
            const double kg = anyMass();
            RC_ASSERT(tests::nearShare(inKilograms(pounds(inPounds(kilograms(kg)))), kg, 4e-16));
            RC_ASSERT(tests::nearShare(asMass(weight(kilograms(kg))).si(), kg, 4e-16));
        }));
    }
};

QTEST_APPLESS_MAIN(TestUnits)
#include "test_units.moc"
