// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/agreement.h"
#include "tests/core/near.h"
#include "tests/core/refused.h"

#include <algorithm>
#include <limits>
#include <rapidcheck.h>

using namespace steelyard;
using tests::whatOf;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
using Days = std::vector<std::optional<Leg>>;
constexpr auto left = Leg::Left, right = Leg::Right;

CountTable anyTable(std::size_t size)
{
    CountTable table(size, std::vector<double>(size));
    for (auto& row : table)
        for (double& entry : row)
            entry = *rc::gen::inRange(0, 20);
    return table;
}

}

class TestAgreement : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void sameSide()
    {
        const auto most = sameSideOf(Days{right, right, left, std::nullopt, right});
        QCOMPARE(most.leg, std::optional(right));
        QCOMPARE(most.sameCount, 3u);
        QCOMPARE(most.daysCount, 5u);
        // three or four of four tosses, either way: 2·(4 + 1)/16
        VERIFY_NEAR(most.chanceProbability, 0.625, 1e-15);
        const auto even = sameSideOf(Days{right, left});
        QVERIFY(!even.leg);
        QCOMPARE(even.sameCount, 1u);
        QCOMPARE(even.chanceProbability, 1.0);
        QCOMPARE(sameSideOf(Days{}).daysCount, 0u);
        QVERIFY(!sameSideOf(Days{std::nullopt, std::nullopt}).leg);
        QCOMPARE(sameSideOf(Days(5, left)).chanceProbability, 0.0625);
    }

    void kappaOfChanceAndOfFullAgreement()
    {
        VERIFY_NEAR((*kappaOf({{5, 5}, {5, 5}}))->coefficient, 0, 1e-15);
        VERIFY_NEAR((*kappaOf({{7, 0}, {0, 3}}))->coefficient, 1, 1e-15);
        VERIFY_NEAR(*(*kappaOf({{7, 0}, {0, 3}}))->uCoefficient, 0, 1e-7);
        VERIFY_NEAR((*kappaOf({{0, 5}, {5, 0}}))->coefficient, -1, 1e-15);
        QVERIFY(!*kappaOf({{12, 0}, {0, 0}}));
        // shares have no count, so no error of their own
        QVERIFY(!(*kappaOf({{0.5, 0.1}, {0.1, 0.3}}))->uCoefficient);
    }

    void kappaHolds()
    {
        QVERIFY(rc::check("at most 1, the same with the days exchanged, and four times the counts halve its error", [] {
            const std::size_t size = *rc::gen::inRange<std::size_t>(2, 5);
            CountTable table = anyTable(size), turned = table, more = table;
            const auto made = kappaOf(table);
            RC_PRE((made.ok() && made->has_value()));
            for (std::size_t i = 0; i < size; ++i)
                for (std::size_t j = 0; j < size; ++j) {
                    turned[i][j] = table[j][i];
                    more[i][j] = 4 * table[i][j];
                }
            const Kappa kappa = **made;
            RC_ASSERT((kappa.coefficient <= 1 + 1e-12 && kappa.coefficient >= -1 - 1e-12));
            RC_ASSERT(tests::near((*kappaOf(turned))->coefficient, kappa.coefficient, 1e-12));
            RC_ASSERT(tests::near((*kappaOf(more))->coefficient, kappa.coefficient, 1e-12));
            if (kappa.uCoefficient && *kappa.uCoefficient > 1e-6)
                RC_ASSERT(tests::nearShare(*(*kappaOf(more))->uCoefficient, *kappa.uCoefficient / 2, 1e-6));
        }));
    }

    void refused()
    {
        QCOMPARE(kappaOf({}).error(), (Error{Refusal::TooFewPoints, "table"}));
        QCOMPARE(kappaOf({{3}}).error(), (Error{Refusal::TooFewPoints, "table"}));
        QCOMPARE(kappaOf({{0, 0}, {0, 0}}).error(), (Error{Refusal::TooFewPoints, "table"}));
        QCOMPARE(kappaOf({{1, 2}, {3}}).error(), (Error{Refusal::OutOfRange, "table row 2"}));
        QCOMPARE(kappaOf({{1, -2}, {3, 4}}).error(), (Error{Refusal::OutOfRange, "table row 1"}));
        QCOMPARE(kappaOf({{1, 2}, {3, notANumber}}).error(), (Error{Refusal::NotFinite, "table row 2"}));
        QCOMPARE(kappaOf(CountTable(51, std::vector<double>(51, 1))).error().code, Refusal::TooMany);
        QCOMPARE(fleissKappaCoefficient({{3, 3}}).error(), (Error{Refusal::TooFewPoints, "table"}));
        QCOMPARE(fleissKappaCoefficient({{1, 0}, {0, 1}}).error(), (Error{Refusal::TooFewPoints, "table"}));
        QCOMPARE(fleissKappaCoefficient({{3, 1}, {2, 1}}).error(), (Error{Refusal::OutOfRange, "table row 2"}));
    }

    void fleissOverManyDays()
    {
        VERIFY_NEAR(**fleissKappaCoefficient({{4, 0}, {0, 4}, {4, 0}}), 1, 1e-14);
        QVERIFY(!*fleissKappaCoefficient({{4, 0}, {4, 0}}));
        QVERIFY(**fleissKappaCoefficient({{2, 2}, {2, 2}}) < 0);
    }
};

QTEST_APPLESS_MAIN(TestAgreement)
#include "test_agreement.moc"
