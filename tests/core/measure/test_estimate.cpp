// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/measure/conditions.h"
#include "tests/core/near.h"
#include "tests/core/propagation.h"

#include <rapidcheck.h>

using namespace steelyard;
using tests::Given;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

Given anyGiven(int from, int to)
{
    return {*rc::gen::inRange(from, to) * 1e-3, *rc::gen::inRange(0, 500) * 1e-3};
}

}

class TestEstimate : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// t₉₅(1) = 12.706 (Student's table), so two readings that are 0.2 kg off make 2.5 kg.
    void endsAreTheGiveOrTake()
    {
        const auto mass = within(kilograms(80), kilograms(0.2), ownSource, 1);
        VERIFY_NEAR(mass.giveOrTake().si(), 0.2 * 12.7062, 1e-5);
        QCOMPARE(mass.lowest().si(), 80 - mass.giveOrTake().si());
        QCOMPARE(mass.highest().si(), 80 + mass.giveOrTake().si());
        QCOMPARE(mass.degreesOfFreedom(), 1.0);
        QCOMPARE(exactly(kilograms(80)).highest(), kilograms(80));
        QVERIFY(exactly(kilograms(80)).uncertainty.effects().empty());
        QVERIFY(within(kilograms(80), kilograms(0)).uncertainty.effects().empty());
    }

    void holdsWhatHasNoUnitToo()
    {
        QCOMPARE(within(Angle{0.5}, Angle{0.1}).u(), Angle{0.1});
        QCOMPARE(within(Seconds{20}, Seconds{0.1}).u(), Seconds{0.1});
        QCOMPARE(within(0.4, 0.04).highest(), 0.4 + 0.04 * coverageFactor95(knownExactly));
    }

    void whatIsSharedAddsStraight()
    {
        const auto one = within(kilograms(20), kilograms(0.3), SourceId{4}), other = within(kilograms(10), kilograms(0.4), SourceId{4}),
                   apart = within(kilograms(10), kilograms(0.4));
        VERIFY_NEAR_SHARE(sumOf(one, other).u().si(), 0.7, 1e-15);
        VERIFY_NEAR_SHARE(sumOf(one, apart).u().si(), 0.5, 1e-15);
        VERIFY_NEAR_SHARE(sumOf(one, times(other, -1)).u().si(), 0.1, 1e-14);
        QCOMPARE(sumOf(one, times(other, -1)).value, kilograms(10));
        QCOMPARE(times(one, 5).u().si(), 1.5);
    }

    /// Against derivatives taken by small steps.
    void productsAndQuotients()
    {
        QVERIFY(rc::check("u of what two make", [] {
            const Given a = anyGiven(1, 9000), b = anyGiven(100, 9000);
            const auto mass = tests::as<Mass>(a), other = tests::as<Mass>(b);
            const auto length = tests::as<Length>(b);
            const auto u = [&](const auto& formula) { return tests::numericU(formula, {a, b}); };
            RC_ASSERT(tests::near(productOf(mass, length).u().si(), u([](const auto& x) { return x[0] * x[1]; }), 1e-6));
            RC_ASSERT(tests::near(quotientOf(mass, other).u(), u([](const auto& x) { return x[0] / x[1]; }), 1e-5));
            RC_ASSERT(tests::near(speedOf(tests::as<Length>(a), tests::as<Seconds>(b)).u().si(), u([](const auto& x) { return x[0] / x[1]; }), 1e-5));
            RC_ASSERT(quotientOf(mass, other).u() >= 0);
        }));
    }

    void conditionsNameWhatIsBroken()
    {
        QVERIFY(!broken({}) && !broken({{true, "a"}, {true, "b"}}));
        QCOMPARE(*broken({{true, "a"}, {false, "b"}, {false, "c"}}), (Error{Refusal::OutOfRange, "b"}));
        QVERIFY(isPositive(exactly(kilograms(1))) && !isPositive(exactly(kilograms(0))) && !isPositive(exactly(kilograms(-1))));
        QVERIFY(isNotNegative(exactly(kilograms(0))) && !isNotNegative(exactly(kilograms(-1))));
        QVERIFY(isCount(0) && isCount(100'000) && !isCount(-1) && !isCount(100'001));
        QVERIFY(!isFinite(exactly(kilograms(notANumber))) && !isPositive(exactly(kilograms(std::numeric_limits<double>::infinity()))));
        QVERIFY(!isFinite(within(kilograms(1), kilograms(notANumber))) && isFinite(exactly(kilograms(-1))));
    }
};

QTEST_APPLESS_MAIN(TestEstimate)
#include "test_estimate.moc"
