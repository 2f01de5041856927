// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/implements/cap.h"
#include "tests/core/near.h"

#include <rapidcheck.h>

using namespace steelyard;

namespace {

using Estimates = std::vector<Estimate<Mass>>;

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

Estimate<Mass> mass(double kg, double u = 0) { return within(kilograms(kg), kilograms(u)); }

std::optional<LoadCap> capOf(double lift, double shareOfLift = usualShareOfLift)
{
    return *LoadCap::of(Estimates{mass(lift)}, shareOfLift);
}

}

class TestCap : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void isOfTheLowestEstimateByItsLowerEnd()
    {
        VERIFY_NEAR_SHARE(LoadCap::of(Estimates{mass(150), mass(140), mass(145)})->mass().si(), 98, 1e-14);
        const double lower = 150 - 6 * coverageFactor95(knownExactly);
        VERIFY_NEAR_SHARE(LoadCap::of(Estimates{mass(150, 6), mass(140)}, 1)->mass().si(), lower, 1e-14);
        VERIFY_NEAR_SHARE(LoadCap::of(Estimates{mass(150, 6)}, 0.5)->mass().si(), lower / 2, 1e-14);
    }

    void capRefusals()
    {
        QCOMPARE(LoadCap::of({}).error(), (Error{Refusal::TooFewPoints, "lift"}));
        for (const auto& wrong : {mass(0), mass(-100), mass(notANumber), mass(100, 60)})
            QCOMPARE(LoadCap::of(Estimates{mass(150), wrong}).error(), (Error{Refusal::OutOfRange, "lift"}));
        for (const double share : {0.0, -0.7, 1.0000001, notANumber})
            QCOMPARE(LoadCap::of(Estimates{mass(150)}, share).error(), (Error{Refusal::OutOfRange, "share"}));
        QVERIFY(LoadCap::of(Estimates{mass(150)}, 1).ok());
    }

    void verdicts_data()
    {
        QTest::addColumn<double>("kg");
        QTest::addColumn<double>("u");
        QTest::addColumn<int>("verdict");
        QTest::newRow("well below") << 60.0 << 1.0 << int(CapVerdict::Under);
        QTest::newRow("at it, without doubt") << 70.0 << 0.0 << int(CapVerdict::Under);
        QTest::newRow("its give-or-take reaches over") << 69.0 << 0.6 << int(CapVerdict::MayBeOver);
        QTest::newRow("at it, with doubt") << 70.0 << 0.1 << int(CapVerdict::MayBeOver);
        QTest::newRow("its give-or-take does not") << 69.0 << 0.5 << int(CapVerdict::Under);
        QTest::newRow("over") << 70.01 << 0.0 << int(CapVerdict::Over);
        QTest::newRow("over, with doubt") << 90.0 << 30.0 << int(CapVerdict::Over);
    }
    void verdicts()
    {
        QFETCH(double, kg);
        QFETCH(double, u);
        QFETCH(int, verdict);
        const CapAnswer answer = heldAgainst(capOf(100), mass(kg, u));
        QCOMPARE(int(answer.verdict), verdict);
        QCOMPARE(answer.permits(), verdict == int(CapVerdict::Under));
        VERIFY_NEAR(answer.unfavourable->si(), kg + 1.959964 * u, 1e-5);
        VERIFY_NEAR(answer.room->si(), 70 - kg - 1.959964 * u, 1e-5);
    }

    void whatIsNotKnownIsGivenToNobody()
    {
        for (const auto& unknown : {std::optional<Estimate<Mass>>{}, std::optional(mass(notANumber)), std::optional(mass(60, notANumber)), std::optional(mass(0))}) {
            QCOMPARE(heldAgainst(capOf(100), unknown).verdict, CapVerdict::MassUnknown);
            QVERIFY(!heldAgainst(capOf(100), unknown).unfavourable && !heldAgainst(capOf(100), unknown).permits());
        }
        const CapAnswer noLift = heldAgainst({}, mass(20));
        QCOMPARE(noLift.verdict, CapVerdict::CapUnknown);
        QVERIFY(!noLift.permits() && noLift.unfavourable && !noLift.room);
    }

    void isMonotone()
    {
        QVERIFY(rc::check("heavier, less sure, a lower lift or share: never permitted where the other was not", [] {
            const auto pick = [](int from, int to) { return *rc::gen::inRange(from, to) * 0.5; };
            const double kg = pick(1, 400), u = pick(0, 20), lift = pick(100, 500), share = *rc::gen::inRange(1, 100) * 0.01;
            const auto permits = [](double m, double um, double l, double s) { return heldAgainst(capOf(l, s), mass(m, um)).permits(); };
            const bool here = permits(kg, u, lift, share);
            RC_ASSERT(here || !permits(kg + pick(0, 50), u, lift, share));
            RC_ASSERT(here || !permits(kg, u + pick(0, 9), lift, share));
            RC_ASSERT(here || !permits(kg, u, lift - pick(0, 50), share));
            RC_ASSERT(here || !permits(kg, u, lift, share / 2));
            RC_ASSERT(here == (kg + u * coverageFactor95(knownExactly) <= share * lift));
        }));
    }
};

QTEST_APPLESS_MAIN(TestCap)
#include "test_cap.moc"
