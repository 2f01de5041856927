// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/measure/rounding.h"
#include "tests/core/near.h"

#include <limits>
#include <rapidcheck.h>

using namespace steelyard;

namespace {

constexpr double inf = std::numeric_limits<double>::infinity();

}

class TestRounding : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// JCGM 100:2008, 7.2.6: no more than two figures of the give-or-take, the value to the same place.
    void roundsTogether_data()
    {
        QTest::addColumn<double>("value");
        QTest::addColumn<double>("give");
        QTest::addColumn<double>("roundValue");
        QTest::addColumn<double>("roundGive");
        QTest::addColumn<int>("decimals");
        QTest::newRow("one figure") << 84.237 << 0.43 << 84.2 << 0.4 << 1;
        QTest::newRow("two figures after a 1") << 84.237 << 0.143 << 84.24 << 0.14 << 2;
        QTest::newRow("just below 2") << 84.237 << 0.194 << 84.24 << 0.19 << 2;
        QTest::newRow("rounds up into the next place") << 84.237 << 0.0996 << 84.24 << 0.10 << 2;
        QTest::newRow("whole") << 84.6 << 3.2 << 85.0 << 3.0 << 0;
        QTest::newRow("above ten") << 1234.5 << 12.6 << 1235.0 << 13.0 << 0;
        QTest::newRow("hundreds") << 1234.5 << 126.0 << 1230.0 << 130.0 << 0;
        QTest::newRow("thousands") << 1234.5 << 3100.0 << 1000.0 << 3000.0 << 0;
        QTest::newRow("a power of ten") << 1.00449 << 0.001 << 1.0045 << 0.001 << 4;
        QTest::newRow("negative") << -2.349 << 0.25 << -2.3 << 0.3 << 1;
        QTest::newRow("larger than the value") << 0.2 << 5.0 << 0.0 << 5.0 << 0;
        QTest::newRow("no give-or-take") << 84.237 << 0.0 << 84.2 << 0.0 << 1;
        QTest::newRow("give-or-take below noise") << 84.237 << 1e-200 << 84.2 << 1e-200 << 1;
        QTest::newRow("unknown give-or-take") << 84.237 << inf << 84.2 << inf << 1;
        QTest::newRow("absurd give-or-take") << 84.2 << 1.7e308 << 0.0 << 1.7e308 << 0;
        QTest::newRow("absurd value") << 1e300 << 1e-11 << 1e300 << 1e-11 << 12;
        QTest::newRow("endless value") << inf << 1.0 << inf << 1.0 << 1;
    }
    void roundsTogether()
    {
        QFETCH(double, value);
        QFETCH(double, give);
        QFETCH(double, roundValue);
        QFETCH(double, roundGive);
        QFETCH(int, decimals);
        const Rounded r = roundTogether(value, give, 1);
        QCOMPARE(r.value, roundValue);
        QCOMPARE(r.give, roundGive);
        QCOMPARE(r.decimals, decimals);
    }

    void staysWithinTheGiveOrTake()
    {
        QVERIFY(rc::check("a rounded value moves by at most half the last place, and the give-or-take by a quarter", [] {
            const double value = *rc::gen::inRange(-1'000'000, 1'000'000) * 1e-3, give = *rc::gen::inRange(1, 1'000'000) * 1e-4;
            const Rounded r = roundTogether(value, give, 1);
            RC_ASSERT(std::abs(r.value - value) <= 0.25 * give + 1e-9);
            RC_ASSERT(std::abs(r.give - give) <= 0.25 * give + 1e-9);
            RC_ASSERT(r.decimals >= 0);
        }));
    }
};

QTEST_APPLESS_MAIN(TestRounding)
#include "test_rounding.moc"
