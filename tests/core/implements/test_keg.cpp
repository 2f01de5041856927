// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/implements/fillings.h"
#include "core/implements/keg.h"
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

LyingVessel vessel(double radius, double length, double depth, double uDepth = 0)
{
    return {exactly(metres(radius)), exactly(metres(length)), within(metres(depth), metres(uDepth))};
}

double segment(double r, double h) { return r * r * std::acos((r - h) / r) - (r - h) * std::sqrt(2 * r * h - h * h); }

double milli(int from, int to) { return *rc::gen::inRange(from, to) * 1e-3; }

}

class TestKeg : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void endsAndMiddleOfALyingKeg()
    {
        const double full = pi * 0.04 * 0.5;
        QCOMPARE(contentLying(vessel(0.2, 0.5, 0))->value, Volume{});
        VERIFY_NEAR_SHARE(contentLying(vessel(0.2, 0.5, 0.2))->value.si(), full / 2, 1e-14);
        VERIFY_NEAR_SHARE(contentLying(vessel(0.2, 0.5, 0.4))->value.si(), full, 1e-14);
        VERIFY_NEAR(fillShareLying(exactly(metres(0.2)), exactly(metres(0.4)))->value, 1, 1e-14);
        QVERIFY(fillShareLying(exactly(metres(0.2)), exactly(metres(0.1)))->value < 0.2);
    }

    /// What stands in the circle, counted in thin layers.
    void segmentByLayers()
    {
        QVERIFY(rc::check("chord times thickness", [] {
            const double r = milli(100, 300), h = r * milli(10, 1990);
            constexpr int layers = 4000;
            double area = 0;
            for (int i = 0; i < layers; ++i) {
                const double y = (i + 0.5) * h / layers - r;
                area += 2 * std::sqrt(r * r - y * y) * h / layers;
            }
            RC_ASSERT(tests::nearShare(contentLying(vessel(r, 1, h))->value.si(), area, 1e-4));
        }));
    }

    void uAgainstSmallSteps()
    {
        QVERIFY(rc::check("lying, by share and standing; deeper is never less", [] {
            const Given r{milli(150, 250), 0.002}, l{milli(300, 600), 0.005}, h{r.value * milli(300, 1700), 0.005};
            const auto lying = *contentLying({tests::as<Length>(r), tests::as<Length>(l), tests::as<Length>(h)});
            RC_ASSERT(tests::nearShare(lying.u().si(), tests::numericU([](const auto& x) { return x[1] * segment(x[0], x[2]); }, {r, l, h}), 1e-6));
            const auto share = *fillShareLying(tests::as<Length>(r), tests::as<Length>(h));
            RC_ASSERT(tests::nearShare(share.u(), tests::numericU([](const auto& x) { return segment(x[0], x[1]) / (pi * x[0] * x[0]); }, {r, h}), 1e-6));
            const auto standing = *contentStanding(tests::as<Length>(r), tests::as<Length>(h));
            RC_ASSERT(tests::nearShare(standing.u().si(), tests::numericU([](const auto& x) { return pi * x[0] * x[0] * x[1]; }, {r, h}), 1e-6));
            const double deeper = std::min(2 * r.value, h.value + 0.01);
            RC_ASSERT(contentLying({tests::as<Length>(r), tests::as<Length>(l), exactly(metres(deeper))})->value >= lying.value);
        }));
    }

    /// At the ends the slope is 0, and the depth is no better known than anywhere else.
    void fullAndEmptyKeepTheirDoubt()
    {
        for (const double depth : {0.0, 0.4}) {
            const double u = contentLying(vessel(0.2, 0.5, depth, 0.005))->u().si();
            VERIFY_NEAR_SHARE(u, 0.5 * 2 * std::sqrt(0.005 * 0.395) * 0.005, 1e-9);
        }
        QVERIFY(std::isfinite(contentLying(vessel(0.2, 0.5, 0.1, 9))->u().si()));
    }

    void byFillAndByLitres()
    {
        const auto content = *contentByFill(within(58.67 * litre, 0.2 * litre), within(0.6, 0.05));
        VERIFY_NEAR_SHARE(content.value / litre, 58.67 * 0.6, 1e-14);
        VERIFY_NEAR_SHARE(content.u() / litre, std::hypot(0.6 * 0.2, 58.67 * 0.05), 1e-14);
        const auto mass = *filledMass(within(kilograms(13.5), kilograms(0.1)), content, densityOf(Filling::Water));
        VERIFY_NEAR_SHARE(mass.value.si(), 13.5 + 0.997 * 58.67 * 0.6, 1e-14);
        VERIFY_NEAR_SHARE(mass.u().si(), std::sqrt(0.01 + std::pow(0.997 * content.u() / litre, 2) + std::pow(58.67e-3 * 0.6 * 3 / std::sqrt(3), 2)), 1e-12);
    }

    void heavierContentIsNeverLighter()
    {
        QVERIFY(rc::check("tare, content, density", [] {
            const auto mass = [](double tare, double litres, double density) {
                return *filledMass(within(kilograms(tare), kilograms(0.1)), within(litres * litre, 0.5 * litre), within(Density::fromSi(density), Density::fromSi(3)));
            };
            const double tare = milli(0, 20000), litres = milli(0, 80000), density = milli(400000, 7000000);
            const auto here = mass(tare, litres, density);
            RC_ASSERT(mass(tare + 1, litres, density).value >= here.value && mass(tare, litres + 1, density).value >= here.value);
            RC_ASSERT(mass(tare, litres, density + 10).value >= here.value);
            RC_ASSERT(here.u() >= kilograms(0.1));
        }));
    }

    void pressure()
    {
        QVERIFY(mayBeLifted(KegPressure::Released));
        QVERIFY(!mayBeLifted(KegPressure::NotKnown) && !mayBeLifted(KegPressure::Holding) && !mayBeLifted(KegPressure{}));
    }

    void refusals()
    {
        QCOMPARE(whatOf(contentLying(vessel(0, 0.5, 0))), std::string("radius"));
        QCOMPARE(whatOf(contentLying(vessel(0.2, 0, 0.1))), std::string("length"));
        QCOMPARE(whatOf(contentLying(vessel(0.2, 0.5, 0.41))), std::string("depth"));
        QCOMPARE(whatOf(contentLying(vessel(0.2, 0.5, -0.01))), std::string("depth"));
        QCOMPARE(whatOf(contentLying(vessel(notANumber, 0.5, 0.1))), std::string("radius"));
        QCOMPARE(whatOf(fillShareLying(exactly(metres(0.2)), exactly(metres(0.5)))), std::string("depth"));
        QCOMPARE(whatOf(fillShareLying(exactly(metres(0)), exactly(metres(0)))), std::string("radius"));
        QCOMPARE(whatOf(contentStanding(exactly(metres(0)), exactly(metres(0.5)))), std::string("radius"));
        QCOMPARE(whatOf(contentStanding(exactly(metres(0.2)), exactly(metres(-0.5)))), std::string("depth"));
        QCOMPARE(whatOf(contentByFill(exactly(Volume{}), exactly(0.5))), std::string("volume"));
        QCOMPARE(whatOf(contentByFill(exactly(litre), exactly(1.01))), std::string("fill"));
        const auto some = exactly(litre);
        const auto water = densityOf(Filling::Water);
        QCOMPARE(whatOf(filledMass(exactly(kilograms(-1)), some, water)), std::string("tare"));
        QCOMPARE(whatOf(filledMass(exactly(kilograms(1)), exactly(-1 * litre), water)), std::string("volume"));
        QCOMPARE(whatOf(filledMass(exactly(kilograms(1)), some, exactly(Density{}))), std::string("density"));
    }
};

QTEST_APPLESS_MAIN(TestKeg)
#include "test_keg.moc"
