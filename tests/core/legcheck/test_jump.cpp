// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/jump.h"
#include "tests/core/near.h"
#include "tests/core/propagation.h"
#include "tests/core/refused.h"

#include <limits>
#include <rapidcheck.h>

using namespace steelyard;
using tests::Given;
using tests::whatOf;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN(), g = 9.80665;

}

class TestJump : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void uAgainstSmallSteps()
    {
        QVERIFY(rc::check("heights and reactive strength; half the flight at g is the take-off speed, and both heights are then one", [] {
            const Given flight{*rc::gen::inRange(100, 800) / 1000.0, 0.004}, contact{*rc::gen::inRange(120, 900) / 1000.0, 0.004};
            const auto height = *heightByFlight(tests::as<Seconds>(flight));
            RC_ASSERT(tests::nearShare(height.u().si(), tests::numericU([](const std::vector<double>& x) { return g * x[0] * x[0] / 8; }, {flight}), 1e-5));
            const Given speed{g * flight.value / 2, 0.03};
            const auto other = *heightByTakeoff(tests::as<Speed>(speed));
            RC_ASSERT(tests::nearShare(other.number(), height.number(), 1e-12));
            RC_ASSERT(tests::nearShare(other.u().si(), tests::numericU([](const std::vector<double>& x) { return x[0] * x[0] / (2 * g); }, {speed}), 1e-5));
            const Given high{height.number(), 0.01};
            const auto index = *reactiveStrength(tests::as<Length>(high), tests::as<Seconds>(contact));
            RC_ASSERT(tests::nearShare(index.u().si(), tests::numericU([](const std::vector<double>& x) { return x[0] / x[1]; }, {high, contact}), 1e-5));
        }));
    }

    /// 96 frames at 240 a second are 0.4 s; u = 1/(240·√6).
    void framesOfAFilm()
    {
        const auto time = *timeByFrames(96, hertz(240));
        VERIFY_NEAR_SHARE(time.number(), 0.4, 1e-14);
        VERIFY_NEAR_SHARE(time.u().count(), 1 / (240 * std::sqrt(6)), 1e-14);
        VERIFY_NEAR_SHARE(heightByFlight(time)->u().si(), g * 0.4 / 4 / (240 * std::sqrt(6)), 1e-12);
        QCOMPARE(whatOf(timeByFrames(-1, hertz(240))), std::string("frames"));
        QCOMPARE(whatOf(timeByFrames(10, hertz(0))), std::string("rate"));
        QCOMPARE(whatOf(timeByFrames(10, hertz(notANumber))), std::string("rate"));
    }

    void refused()
    {
        QCOMPARE(whatOf(heightByFlight(exactly(Seconds{-0.1}))), std::string("flight"));
        QCOMPARE(whatOf(heightByFlight(exactly(Seconds{2.1}))), std::string("flight"));
        QCOMPARE(whatOf(heightByFlight(exactly(Seconds{notANumber}))), std::string("flight"));
        QCOMPARE(whatOf(heightByFlight(exactly(Seconds{0.5}), Acceleration{})), std::string("gravity"));
        QCOMPARE(whatOf(heightByTakeoff(exactly(Speed::fromSi(11)))), std::string("take-off"));
        QCOMPARE(whatOf(heightByTakeoff(exactly(Speed::fromSi(-1)))), std::string("take-off"));
        QCOMPARE(whatOf(reactiveStrength(exactly(metres(-0.1)), exactly(Seconds{0.2}))), std::string("height"));
        QCOMPARE(whatOf(reactiveStrength(exactly(metres(0.3)), exactly(Seconds{0}))), std::string("time"));
        QCOMPARE(heightByFlight(exactly(Seconds{0}))->number(), 0.0);
    }
};

QTEST_APPLESS_MAIN(TestJump)
#include "test_jump.moc"
