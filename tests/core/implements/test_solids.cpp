// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/implements/fillings.h"
#include "core/implements/solids.h"
#include "tests/core/near.h"
#include "tests/core/propagation.h"
#include "tests/core/refused.h"

#include <numbers>
#include <rapidcheck.h>

using namespace steelyard;
using tests::whatOf;
using tests::Given;

namespace {

constexpr double pi = std::numbers::pi, notANumber = std::numeric_limits<double>::quiet_NaN();

TaperedRound round(double length, double first, double second)
{
    return {exactly(metres(length)), exactly(metres(first)), exactly(metres(second))};
}

Wood wood(double gravity, double moisture) { return {exactly(gravity), exactly(moisture)}; }

double milli(int from, int to) { return *rc::gen::inRange(from, to) * 1e-3; }

}

class TestSolids : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// Geometry: a cylinder, and a frustum as a cone less its tip.
    void frustum()
    {
        VERIFY_NEAR_SHARE(volumeOf(round(2, 0.3, 0.3))->value.si(), 2 * pi * 0.0225, 1e-14);
        const double whole = pi * 0.2 * 0.2 * 4 / 3, tip = pi * 0.1 * 0.1 * 2 / 3;
        VERIFY_NEAR_SHARE(volumeOf(round(2, 0.4, 0.2))->value.si(), whole - tip, 1e-14);
        QCOMPARE(volumeOf(round(2, 0.2, 0.4))->value, volumeOf(round(2, 0.4, 0.2))->value);
    }

    void ball()
    {
        VERIFY_NEAR_SHARE(volumeOfBall(exactly(metres(2)))->value.si(), 4 * pi / 3, 1e-15);
        const auto stone = *stoneMass(within(metres(0.4), metres(0.004)), densityBetween(Density::fromSi(2300), Density::fromSi(2500)));
        VERIFY_NEAR_SHARE(stone.u().si() / stone.value.si(), std::hypot(0.03, 100 / std::sqrt(3) / 2400), 1e-12);
    }

    /// Rings of a tape: 94.25 cm round is 30 cm through.
    void girth()
    {
        const auto diameter = diameterFromGirth(within(metres(0.3 * pi), metres(0.01)));
        VERIFY_NEAR_SHARE(diameter.value.si(), 0.3, 1e-15);
        VERIFY_NEAR_SHARE(diameter.u().si(), 0.01 / pi, 1e-15);
    }

    void woodIsAsHeavyAsItIsMoist()
    {
        VERIFY_NEAR_SHARE(densityOf(wood(0.4, 12))->value.si(), 448, 1e-15);
        QCOMPARE(densityOf(wood(0.4, 0))->value, Density::fromSi(400));
        QCOMPARE(gravityOfSpecies(0.4).u(), 0.04);
        const auto density = *densityOf({within(0.4, 0.04), within(12.0, 5.0)});
        VERIFY_NEAR_SHARE(density.u().si(), std::hypot(40 * 1.12, 4 * 5), 1e-14);
    }

    void fillings()
    {
        VERIFY_NEAR_SHARE(densityOf(Filling::DrySand).value.si(), 1550, 1e-15);
        VERIFY_NEAR_SHARE(densityOf(Filling::DrySand).u().si(), 50 / std::sqrt(3), 1e-15);
        for (const Filling filling : {Filling::Water, Filling::DrySand, Filling::WetSand, Filling::LeadShot, Filling::RubberCrumb})
            QVERIFY(densityOf(filling).u() > Density{} && densityOf(filling).u() < 0.1 * densityOf(filling).value);
        QVERIFY(densityOf(Filling::RubberCrumb).value < densityOf(Filling::Water).value && densityOf(Filling::WetSand).value < densityOf(Filling::LeadShot).value);
        VERIFY_NEAR_SHARE(concreteDensity().value.si(), 2350, 1e-15);
    }

    void againstSmallSteps()
    {
        QVERIFY(rc::check("u of a log and a stone; longer, thicker, denser is never lighter", [] {
            const Given l{milli(500, 4000), 0.01}, a{milli(100, 600), 0.005}, b{milli(100, 600), 0.006}, gravity{milli(200, 900), 0.05}, moist{milli(0, 90000), 4};
            const auto log = [&](double longer, double thicker, double denser, double wetter) {
                return *logMass({tests::as<Length>({l.value + longer, l.u}), tests::as<Length>({a.value + thicker, a.u}), tests::as<Length>(b)},
                                {tests::as<double>({gravity.value + denser, gravity.u}), tests::as<double>({moist.value + wetter, moist.u})});
            };
            const auto formula = [](const std::vector<double>& x) {
                return pi * x[0] / 3 * (x[1] * x[1] + x[1] * x[2] + x[2] * x[2]) / 4 * 1000 * x[3] * (1 + x[4] / 100);
            };
            const auto here = log(0, 0, 0, 0);
            RC_ASSERT(tests::nearShare(here.value.si(), formula({l.value, a.value, b.value, gravity.value, moist.value}), 1e-12));
            RC_ASSERT(tests::nearShare(here.u().si(), tests::numericU(formula, {l, a, b, gravity, moist}), 1e-6));
            RC_ASSERT(log(0.1, 0, 0, 0).value > here.value && log(0, 0.01, 0, 0).value > here.value);
            RC_ASSERT(log(0, 0, 0.1, 0).value > here.value && log(0, 0, 0, 5).value > here.value);
            const Given density{milli(1000000, 3000000), 60};
            const auto stone = *stoneMass(tests::as<Length>(a), tests::as<Density>(density));
            RC_ASSERT(tests::nearShare(stone.u().si(), tests::numericU([](const auto& x) { return x[1] * pi * std::pow(x[0], 3) / 6; }, {a, density}), 1e-6));
        }));
    }

    void refusals()
    {
        QCOMPARE(whatOf(volumeOf(round(0, 0.3, 0.3))), std::string("length"));
        QCOMPARE(whatOf(volumeOf(round(1, notANumber, 0.3))), std::string("first diameter"));
        QCOMPARE(whatOf(volumeOf(round(1, 0.3, -0.3))), std::string("second diameter"));
        QCOMPARE(whatOf(volumeOfBall(exactly(metres(0)))), std::string("diameter"));
        QCOMPARE(whatOf(densityOf(wood(0, 12))), std::string("specific gravity"));
        QCOMPARE(whatOf(densityOf(wood(1.6, 12))), std::string("specific gravity"));
        QCOMPARE(whatOf(densityOf(wood(0.4, -1))), std::string("moisture"));
        QCOMPARE(whatOf(densityOf(wood(0.4, 301))), std::string("moisture"));
        QCOMPARE(whatOf(logMass(round(1, 0.3, 0), wood(0.4, 12))), std::string("second diameter"));
        QCOMPARE(whatOf(logMass(round(1, 0.3, 0.3), wood(0.4, notANumber))), std::string("moisture"));
        QCOMPARE(whatOf(stoneMass(exactly(metres(-1)), exactly(Density::fromSi(2400)))), std::string("diameter"));
        QCOMPARE(whatOf(stoneMass(exactly(metres(0.4)), exactly(Density::fromSi(0)))), std::string("density"));
    }
};

QTEST_APPLESS_MAIN(TestSolids)
#include "test_solids.moc"
