// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/implements/tyre.h"
#include "core/implements/weighing.h"
#include "tests/core/near.h"
#include "tests/core/propagation.h"

#include <numbers>
#include <rapidcheck.h>

using namespace steelyard;
using tests::Given;

namespace {

constexpr double g = 9.80665, notANumber = std::numeric_limits<double>::quiet_NaN();

TyreFlip flip(double mass, double diameter, double width, double uMass = 0, double uDiameter = 0, double uWidth = 0)
{
    return *TyreFlip::of({tests::as<Mass>({mass, uMass}), tests::as<Length>({diameter, uDiameter}), tests::as<Length>({width, uWidth})});
}

double milli(int from, int to) { return *rc::gen::inRange(from, to) * 1e-3; }

}

class TestTyre : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// Moments about the far contact by hand: 62 kg at 0.70 m from the middle, ring of 0.55 m: 62 · 1.25/0.55.
    void massFromEdge()
    {
        const auto mass = *tyreMassFromEdge({*readingOf({kilograms(0.5), 0.01}, kilograms(62)), within(metres(0.70), metres(0.01)), within(metres(0.55), metres(0.01))});
        VERIFY_NEAR_SHARE(mass.value.si(), 62 * 1.25 / 0.55, 1e-15);
        const double uReading = std::sqrt(0.25 / 12 + 0.62 * 0.62 / 3);
        VERIFY_NEAR_SHARE(mass.u().si(), std::hypot(uReading * 1.25 / 0.55, 62 / 0.55 * 0.01, 62 * 0.70 / (0.55 * 0.55) * 0.01), 1e-14);
        QVERIFY(mass.value > kilograms(2 * 62));
    }

    void edgeAgainstSmallSteps()
    {
        QVERIFY(rc::check("u; a hook outside the ring is more than twice the reading; more is never less", [] {
            const Given r{milli(5000, 200000), 0.4}, a{milli(300, 900), 0.01}, b{milli(200, 900), 0.02};
            const auto mass = [&](double more) { return *tyreMassFromEdge({tests::as<Mass>({r.value + more, r.u}), tests::as<Length>(a), tests::as<Length>(b)}); };
            RC_ASSERT(tests::nearShare(mass(0).u().si(), tests::numericU([](const auto& x) { return x[0] * (x[1] + x[2]) / x[2]; }, {r, a, b}), 1e-6));
            RC_ASSERT((mass(0).value.si() > 2 * r.value) == (a.value > b.value));
            RC_ASSERT(mass(1).value > mass(0).value);
        }));
    }

    /// A tyre that is heavier on one side, lifted at both: moments give the readings, their mean the mass.
    void oppositeEdgesCancelWhatIsUneven()
    {
        const double m = 140, a = 0.7, b = 0.55, off = 0.04;
        const auto from = [&](double reading) { return tyreMassFromEdge({exactly(kilograms(reading)), exactly(metres(a)), exactly(metres(b))})->value.si(); };
        VERIFY_NEAR(from((m * (b + off) / (a + b) + m * (b - off) / (a + b)) / 2), m, 1e-12);
    }

    void edgeRefusals_data()
    {
        QTest::addColumn<double>("shown");
        QTest::addColumn<double>("lift");
        QTest::addColumn<double>("contact");
        QTest::addColumn<QString>("what");
        QTest::newRow("no reading") << 0.0 << 0.7 << 0.5 << "edge";
        QTest::newRow("reading not a number") << notANumber << 0.7 << 0.5 << "edge";
        QTest::newRow("lifted in the middle") << 60.0 << 0.0 << 0.5 << "lift point";
        QTest::newRow("no ring") << 60.0 << 0.7 << 0.0 << "far contact";
        QTest::newRow("ring below 0") << 60.0 << 0.7 << -0.5 << "far contact";
    }
    void edgeRefusals()
    {
        QFETCH(double, shown);
        QFETCH(double, lift);
        QFETCH(double, contact);
        QFETCH(QString, what);
        const auto mass = tyreMassFromEdge({exactly(kilograms(shown)), exactly(metres(lift)), exactly(metres(contact))});
        QVERIFY(!mass);
        QCOMPARE(mass.error(), (Error{Refusal::OutOfRange, what.toStdString()}));
    }

    void halfItsWeightFlatAndNothingAtBalance()
    {
        const TyreFlip tyre = flip(232, 1.5, 0.5);
        VERIFY_NEAR_SHARE(tyre.at(Angle{0})->vertical.value.si(), 232 * g / 2, 1e-15);
        QCOMPARE(tyre.at(Angle{0})->vertical.value, tyre.at(Angle{0})->perpendicular.value);
        VERIFY_NEAR(tyre.at(tyre.balance().value)->vertical.value.si(), 0, 1e-9);
        VERIFY_NEAR(tyre.at(tyre.balance().value)->perpendicular.value.si(), 0, 1e-9);
        QVERIFY(tyre.at(Angle{tyre.balance().value.radians + 0.01})->vertical.value < Force{});
        VERIFY_NEAR_SHARE(tyre.at(Angle{std::numbers::pi / 6})->edge.si(), 0.75, 1e-15);
        QVERIFY(!tyre.at(Angle{-0.01}) && !tyre.at(Angle{std::numbers::pi / 2}) && !tyre.at(Angle{notANumber}));
    }

    /// The vertical force moves its point by dh = D cosθ dθ; what it does on the way is the work.
    void workIsWhatTheForceDoes()
    {
        QVERIFY(rc::check("by many steps", [] {
            const double diameter = milli(600, 2000), width = milli(150, 600);
            const TyreFlip tyre = flip(milli(40000, 300000), diameter, width);
            const double end = tyre.balance().number();
            constexpr int steps = 2000;
            double work = 0;
            for (int i = 0; i < steps; ++i) {
                const double angle = end * (i + 0.5) / steps;
                work += tyre.at(Angle{angle})->vertical.value.si() * diameter * std::cos(angle) * end / steps;
            }
            RC_ASSERT(tests::nearShare(tyre.workToBalance().value.si(), work, 1e-5));
        }));
    }

    void uAgainstSmallSteps()
    {
        QVERIFY(rc::check("forces, balance and work; more mass is never less force; steeper is never more", [] {
            const Given m{milli(40000, 300000), 2}, d{milli(600, 2000), 0.01}, w{milli(150, 600), 0.02};
            const double angle = milli(0, 1500), t = std::tan(angle);
            const TyreFlip tyre = flip(m.value, d.value, w.value, m.u, d.u, w.u);
            const auto u = [&](const auto& formula) { return tests::numericU(formula, {m, d, w}); };
            const FlipPoint here = *tyre.at(Angle{angle});
            RC_ASSERT(tests::near(here.vertical.u().si(), u([&](const auto& x) { return x[0] * g / 2 * (1 - x[2] / x[1] * t); }), 1e-4));
            RC_ASSERT(tests::near(here.perpendicular.u().si(), u([&](const auto& x) { return x[0] * g / 2 * (std::cos(angle) - x[2] / x[1] * std::sin(angle)); }), 1e-4));
            RC_ASSERT(tests::nearShare(tyre.balance().u().radians, u([](const auto& x) { return std::atan(x[1] / x[2]); }), 1e-6));
            RC_ASSERT(tests::nearShare(tyre.workToBalance().u().si(), u([](const auto& x) { return x[0] * g * (std::hypot(x[1], x[2]) - x[2]) / 2; }), 1e-6));
            const FlipPoint heavier = *flip(m.value + 10, d.value, w.value).at(Angle{angle}), steeper = *tyre.at(Angle{std::min(1.55, angle + 0.05)});
            RC_ASSERT(here.vertical.value.si() < 0 || heavier.vertical.value >= here.vertical.value);
            RC_ASSERT(steeper.vertical.value <= here.vertical.value && steeper.perpendicular.value <= here.perpendicular.value);
        }));
    }

    void curveGoesFromFlatToBalance()
    {
        const TyreFlip tyre = flip(100, 1.2, 0.3, 2);
        const auto curve = tyre.curve(31);
        QCOMPARE(curve.size(), 31u);
        QCOMPARE(curve.front().angle, Angle{0});
        QCOMPARE(curve.back().angle, tyre.balance().value);
        VERIFY_NEAR(curve.front().vertical.u().si(), g, 1e-12);
        QCOMPARE(tyre.curve(0).size(), 2u);
        QCOMPARE(tyre.curve(5000).size(), 200u);
    }

    void flipRefusals()
    {
        const auto mass = exactly(kilograms(100));
        const auto size = exactly(metres(1));
        QCOMPARE(TyreFlip::of({exactly(kilograms(0)), size, size}).error(), (Error{Refusal::OutOfRange, "mass"}));
        QCOMPARE(TyreFlip::of({mass, exactly(metres(-1)), size}).error().what, std::string("diameter"));
        QCOMPARE(TyreFlip::of({mass, size, exactly(metres(notANumber))}).error().what, std::string("width"));
    }
};

QTEST_APPLESS_MAIN(TestTyre)
#include "test_tyre.moc"
