// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/implements/sled.h"
#include "core/implements/weighing.h"
#include "tests/core/near.h"
#include "tests/core/propagation.h"
#include "tests/core/refused.h"

#include <numbers>
#include <rapidcheck.h>

using namespace steelyard;
using tests::whatOf;
using tests::Given;

namespace {

constexpr double g = 9.80665, notANumber = std::numeric_limits<double>::quiet_NaN();

Haul haul(double friction, double angle, SledWay way = SledWay::Tow, double uFriction = 0, double uAngle = 0)
{
    return {within(friction, uFriction), within(Angle{angle}, Angle{uAngle}), way};
}

Estimate<Mass> kg(double mass, double u = 0) { return within(kilograms(mass), kilograms(u)); }
Estimate<Force> pullOfNewtons(double force, double u = 0) { return within(newtons(force), newtons(u)); }
Estimate<Angle> radians(double angle, double u = 0) { return within(Angle{angle}, Angle{u}); }

double milli(int from, int to) { return *rc::gen::inRange(from, to) * 1e-3; }

}

class TestSled : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// Two balances of force, level and upright: they have nothing of the formula.
    void forcesBalance()
    {
        QVERIFY(rc::check("friction times what the ground carries is what pulls along it", [] {
            const double mass = milli(10000, 250000), friction = milli(50, 900), angle = milli(0, 700);
            const auto way = *rc::gen::element(SledWay::Tow, SledWay::Push);
            const Haul on = haul(friction, angle, way);
            RC_PRE(!locks(on));
            const double force = sledPull(kg(mass), on)->value.si(), upright = (way == SledWay::Tow ? -1 : 1) * force * std::sin(angle);
            RC_ASSERT(tests::nearShare(force * std::cos(angle), friction * (mass * g + upright), 1e-10));
            RC_ASSERT(tests::nearShare(sledMassFor(pullOfNewtons(force), on)->value.si(), mass, 1e-10));
            if (way == SledWay::Tow)
                RC_ASSERT(tests::nearShare(frictionFromPull({kg(mass), pullOfNewtons(force)}, radians(angle))->value, friction, 1e-10));
        }));
    }

    void uAgainstSmallSteps()
    {
        QVERIFY(rc::check("pull, mass and friction; more mass or friction is never less pull", [] {
            const Given m{milli(10000, 250000), 0.5}, friction{milli(100, 700), 0.02}, angle{milli(0, 600), 0.02};
            const double sign = *rc::gen::element(1.0, -1.0);
            const Haul on = haul(friction.value, angle.value, sign > 0 ? SledWay::Tow : SledWay::Push, friction.u, angle.u);
            RC_PRE(!locks(haul(friction.value + 0.1, angle.value, on.way, friction.u)));
            const auto force = [sign](const std::vector<double>& x) { return x[1] * x[0] * g / (std::cos(x[2]) + sign * x[1] * std::sin(x[2])); };
            const auto pull = *sledPull(tests::as<Mass>(m), on);
            RC_ASSERT(tests::nearShare(pull.u().si(), tests::numericU(force, {m, friction, angle}), 1e-5));
            const Given t{pull.value.si(), 4};
            const auto mass = [sign](const std::vector<double>& x) { return x[0] * (std::cos(x[2]) + sign * x[1] * std::sin(x[2])) / (x[1] * g); };
            RC_ASSERT(tests::nearShare(sledMassFor(tests::as<Force>(t), on)->u().si(), tests::numericU(mass, {t, friction, angle}), 1e-5));
            RC_ASSERT(sledPull(kg(m.value + 5), on)->value >= pull.value);
            RC_ASSERT(sledPull(kg(m.value), haul(friction.value + 0.05, angle.value, on.way))->value >= pull.value);
            const Given towed{m.value * g * friction.value / 2, 5};
            const auto mu = [](const std::vector<double>& x) { return x[0] * std::cos(x[2]) / (x[1] * g - x[0] * std::sin(x[2])); };
            RC_ASSERT(tests::nearShare(frictionFromPull({tests::as<Mass>(m), tests::as<Force>(towed)}, tests::as<Angle>(angle))->u(), tests::numericU(mu, {towed, m, angle}), 1e-5));
        }));
    }

    /// cosα = μ sinα at 45° and μ = 1.
    void aPushThatLocksIsRefused()
    {
        const double steep = std::numbers::pi / 4;
        QVERIFY(locks(haul(1.001, steep, SledWay::Push)) && !locks(haul(0.999, steep, SledWay::Push)) && !locks(haul(5, steep, SledWay::Tow)));
        QVERIFY(!locks(haul(5, 0, SledWay::Push)));
        // the friction may be higher than it was found
        QVERIFY(locks(haul(0.9, steep, SledWay::Push, 0.06)) && !locks(haul(0.9, steep, SledWay::Push, 0.05)));
        QCOMPARE(sledPull(kg(100), haul(1.001, steep, SledWay::Push)).error(), (Error{Refusal::OutOfRange, "push angle"}));
        QCOMPARE(sledMassFor(pullOfNewtons(100), haul(1.001, steep, SledWay::Push)).error(), (Error{Refusal::OutOfRange, "push angle"}));
    }

    void pulledAsHardElsewhere()
    {
        const Haul turf = haul(0.45, 0.25), wet = haul(0.25, 0.25);
        const auto away = *sameElsewhere(kg(100), turf, wet);
        VERIFY_NEAR_SHARE(sledPull(away, wet)->value.si(), sledPull(kg(100), turf)->value.si(), 1e-13);
        QVERIFY(away.value > kilograms(170));
        VERIFY_NEAR_SHARE(sameElsewhere(kg(100), turf, turf)->value.si(), 100, 1e-14);
        // the same strap here and there: its angle's error goes both ways
        Haul shared = haul(0.45, 0.25);
        shared.angle = within(Angle{0.25}, Angle{0.05}, SourceId{6});
        VERIFY_NEAR(sameElsewhere(kg(100), shared, shared)->u().si(), 0, 1e-12);
        QCOMPARE(whatOf(sameElsewhere(kg(0), turf, wet)), std::string("mass"));
        QCOMPARE(whatOf(sameElsewhere(kg(100), turf, haul(0, 0.25))), std::string("friction"));
    }

    /// Level pulls of exactly μMg have no scatter; off by ±1 % at two equal loads of the fit they have.
    void frictionFromSeveralPulls()
    {
        const std::vector<TowReading> exact{{kg(40), pullOfNewtons(0.4 * 40 * g)}, {kg(80), pullOfNewtons(0.4 * 80 * g)}, {kg(60), pullOfNewtons(0.4 * 60 * g)}};
        const auto surface = *frictionFromPulls(exact, radians(0));
        VERIFY_NEAR_SHARE(surface.friction.value, 0.4, 1e-14);
        VERIFY_NEAR(surface.friction.u(), 0, 1e-12);
        QCOMPARE(surface.lightest, kilograms(40));
        QVERIFY(surface.covers(kilograms(80)) && surface.covers(kilograms(40)) && !surface.covers(kilograms(81)) && !surface.covers(kilograms(39)));

        // by hand: x = 1, 2 (times 40 g), y = 0.5, 0.75: μ = 2/5, residuals 0.1 and −0.05, s² = 0.0125, se = √(0.0125/5)
        const std::vector<TowReading> two{{kg(40), pullOfNewtons(0.5 * 40 * g)}, {kg(80), pullOfNewtons(0.75 * 40 * g)}};
        const auto scattered = frictionFromPulls(two, radians(0))->friction;
        VERIFY_NEAR_SHARE(scattered.value, 0.4, 1e-14);
        VERIFY_NEAR_SHARE(scattered.u(), std::sqrt(0.0125 / 5), 1e-12);
        VERIFY_NEAR_SHARE(scattered.degreesOfFreedom(), 1, 1e-12);
        QVERIFY(scattered.giveOrTake() > 0.6);
    }

    /// A scale that is off by a share is off by it at every reading, and so is the friction; steps are not.
    void whatReadingsBring()
    {
        const Scale hanging{kilograms(0), 0.03, {}, SourceId{2}};
        std::vector<TowReading> readings;
        for (const double mass : {40.0, 60.0, 80.0})
            readings.push_back({kg(mass), pullOf(*readingOf(hanging, kilograms(0.4 * mass)))});
        VERIFY_NEAR_SHARE(frictionFromPulls(readings, radians(0))->friction.u(), 0.4 * 0.03 / std::sqrt(3), 1e-9);
        for (TowReading& reading : readings)
            reading.pull = pullOfNewtons(reading.pull.value.si(), 6);
        const double squares = (40.0 * 40 + 60 * 60 + 80 * 80) * g * g;
        VERIFY_NEAR_SHARE(frictionFromPulls(readings, radians(0))->friction.u(), 6 / std::sqrt(squares), 1e-9);
    }

    void uOfSeveralAgainstSmallSteps()
    {
        QVERIFY(rc::check("slanted, with doubt in pulls, masses and angle", [] {
            std::vector<Given> x;
            std::vector<TowReading> readings;
            const Given angle{milli(0, 500), 0.03};
            for (const double mass : {40.0, 65.0, 90.0}) {
                const Given m{mass, 0.4}, t{sledPull(kg(mass), haul(0.4, angle.value))->value.si(), 5};
                x.push_back(m);
                x.push_back(t);
                readings.push_back({tests::as<Mass>(m), tests::as<Force>(t)});
            }
            x.push_back(angle);
            const auto mu = [](const std::vector<double>& v) {
                double products = 0, squares = 0;
                for (std::size_t i = 0; i + 1 < v.size(); i += 2) {
                    const double normal = v[i] * g - v[i + 1] * std::sin(v.back());
                    products += normal * v[i + 1] * std::cos(v.back());
                    squares += normal * normal;
                }
                return products / squares;
            };
            RC_ASSERT(tests::nearShare(frictionFromPulls(readings, tests::as<Angle>(angle))->friction.u(), tests::numericU(mu, x), 1e-5));
        }));
    }

    void severalRefusals()
    {
        const TowReading good{kg(40), pullOfNewtons(100)}, same{kg(40), pullOfNewtons(120)}, lifted{kg(40), pullOfNewtons(900)};
        const auto asked = [](const std::vector<TowReading>& readings, double angle) { return frictionFromPulls(readings, radians(angle)); };
        QCOMPARE(asked({good}, 0).error().code, Refusal::TooFewPoints);
        QCOMPARE(asked({}, 0).error().code, Refusal::TooFewPoints);
        QCOMPARE(asked({good, same}, 0).error().code, Refusal::PointsNotApart);
        QCOMPARE(asked({good, lifted}, 0.5).error(), (Error{Refusal::OutOfRange, "pull"}));
        QCOMPARE(whatOf(asked({good, {kg(0), pullOfNewtons(1)}}, 0)), std::string("mass"));
        QCOMPARE(whatOf(asked({good, {kg(50), pullOfNewtons(notANumber)}}, 0)), std::string("pull"));
        QCOMPARE(whatOf(asked({good, {kg(50), pullOfNewtons(120)}}, 1.6)), std::string("angle"));
    }

    void haulRefusals()
    {
        QCOMPARE(whatOf(sledPull(kg(0), haul(0.4, 0))), std::string("mass"));
        QCOMPARE(whatOf(sledPull(kg(10), haul(-0.4, 0))), std::string("friction"));
        QCOMPARE(whatOf(sledPull(kg(10), haul(0.4, -0.1))), std::string("angle"));
        QCOMPARE(whatOf(sledPull(kg(10), haul(0.4, std::numbers::pi / 2))), std::string("angle"));
        QCOMPARE(whatOf(sledMassFor(pullOfNewtons(0), haul(0.4, 0))), std::string("pull"));
        QCOMPARE(whatOf(frictionFromPull({kg(10), pullOfNewtons(-1)}, radians(0))), std::string("pull"));
        QCOMPARE(whatOf(frictionFromPull({kg(10), pullOfNewtons(200)}, radians(0.9))), std::string("pull"));
    }

    /// A strap of 5 m from 1 m down to 0.2 m: sin α = 0.16.
    void angleOfTheStrap()
    {
        const Given strap{5, 0.05}, hip{1, 0.02}, hitch{0.2, 0.01};
        const auto angle = *towAngle(tests::as<Length>(strap), tests::as<Height>(hip), tests::as<Height>(hitch));
        VERIFY_NEAR_SHARE(std::sin(angle.value.radians), 0.16, 1e-14);
        VERIFY_NEAR_SHARE(angle.u().radians, tests::numericU([](const auto& x) { return std::asin((x[1] - x[2]) / x[0]); }, {strap, hip, hitch}), 1e-6);
        const auto at = [](double s, double h, double low) { return towAngle(exactly(metres(s)), exactly(metres(h)), exactly(metres(low))); };
        QCOMPARE(at(5, 0.2, 0.2)->value, Angle{0});
        QCOMPARE(whatOf(at(0, 1, 0.2)), std::string("strap"));
        QCOMPARE(whatOf(at(0.8, 1, 0.2)), std::string("strap"));
        QCOMPARE(whatOf(at(5, 0.1, 0.2)), std::string("hip"));
        QCOMPARE(whatOf(at(5, 1, -0.2)), std::string("hitch"));
        QCOMPARE(whatOf(at(5, notANumber, 0.2)), std::string("hip"));
    }
};

QTEST_APPLESS_MAIN(TestSled)
#include "test_sled.moc"
