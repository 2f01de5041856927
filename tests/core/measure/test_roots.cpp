// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/measure/roots.h"
#include "tests/core/near.h"

#include <numbers>
#include <rapidcheck.h>

using namespace steelyard;

class TestRoots : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void findsTheSignChange()
    {
        VERIFY_NEAR(signChange([](double x) { return x * x - 2; }, 0, 2), std::numbers::sqrt2, 1e-14);
        VERIFY_NEAR(signChange([](double x) { return std::cos(x); }, 1, 2), std::numbers::pi / 2, 1e-14);
        VERIFY_NEAR(signChange([](double x) { return 2 - x * x * x; }, -5, 5), std::cbrt(2.0), 1e-14);
    }

    void takesAnEndThatIsZero()
    {
        QCOMPARE(signChange([](double x) { return x - 1; }, 1, 2), 1.0);
        QCOMPARE(signChange([](double x) { return x - 2; }, 1, 2), 2.0);
    }

    void findsAJump()
    {
        VERIFY_NEAR(signChange([](double x) { return x < 0.3 ? -1.0 : 1.0; }, 0, 1), 0.3, 1e-14);
    }

    void anyLine()
    {
        QVERIFY(rc::check("the root of a straight line", [] {
            const double root = *rc::gen::inRange(1, 1000) * 1e-3, slope = *rc::gen::inRange(1, 1000) * 0.01;
            RC_ASSERT(tests::near(signChange([&](double x) { return slope * (x - root); }, 0, 1), root, 1e-14));
        }));
    }
};

QTEST_APPLESS_MAIN(TestRoots)
#include "test_roots.moc"
