// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/implements/sledline.h"
#include "tests/core/near.h"
#include "tests/core/propagation.h"
#include "tests/core/refused.h"

#include <rapidcheck.h>

using namespace steelyard;
using tests::whatOf;
using tests::Given;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

SledRun run(double mass, double speed, double uSpeed = 0, double uMass = 0)
{
    return {within(kilograms(mass), kilograms(uMass)), within(Speed::fromSi(speed), Speed::fromSi(uSpeed))};
}

Result<LoadSpeedLine> line(const std::vector<SledRun>& runs) { return LoadSpeedLine::of(runs); }

/// Load for a loss from masses and speeds by the textbook sums, masses first.
double loadBySums(const std::vector<double>& x, double loss)
{
    const std::size_t n = x.size() / 2;
    double m = 0, v = 0, mv = 0, mm = 0;
    for (std::size_t i = 0; i < n; ++i) {
        m += x[i] / static_cast<double>(n);
        v += x[n + i] / static_cast<double>(n);
    }
    for (std::size_t i = 0; i < n; ++i) {
        mv += (x[i] - m) * (x[n + i] - v);
        mm += (x[i] - m) * (x[i] - m);
    }
    const double slope = mv / mm;
    return -loss * (v - slope * m) / slope;
}

}

class TestSledLine : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// 30 m in 5 s by hand: u = √((0.05/5)² + (30 · 0.1/25)²).
    void aTimedRun()
    {
        const auto timed = *timedRun(exactly(kilograms(40)), within(metres(30), metres(0.05)), within(Seconds{5}, stopwatchU));
        QCOMPARE(timed.speed.value, Speed::fromSi(6));
        VERIFY_NEAR_SHARE(timed.speed.u().si(), std::hypot(0.01, 0.12), 1e-14);
        QCOMPARE(whatOf(timedRun(exactly(kilograms(0)), exactly(metres(30)), exactly(Seconds{5}))), std::string("mass"));
        QCOMPARE(whatOf(timedRun(exactly(kilograms(40)), exactly(metres(0)), exactly(Seconds{5}))), std::string("distance"));
        QCOMPARE(whatOf(timedRun(exactly(kilograms(40)), exactly(metres(30)), exactly(Seconds{0}))), std::string("time"));
    }

    void anExactLine()
    {
        const auto exact = *line({run(20, 7), run(40, 6), run(60, 5)});
        VERIFY_NEAR_SHARE(exact.freeSpeed().value.si(), 8, 1e-14);
        VERIFY_NEAR_SHARE(exact.loadFor(0.5)->value.si(), 80, 1e-14);
        VERIFY_NEAR_SHARE(exact.loadFor(1)->value.si(), 160, 1e-14);
        VERIFY_NEAR(exact.loadFor(0)->value.si(), 0, 1e-12);
        VERIFY_NEAR_SHARE(exact.speedAt(kilograms(80)).value.si(), 4, 1e-14);
        VERIFY_NEAR(exact.loadFor(0.5)->u().si(), 0, 1e-9);
        QVERIFY(exact.covers(kilograms(20)) && exact.covers(kilograms(60)) && !exact.covers(kilograms(80)));
        QVERIFY(exact.fallsClearly());
    }

    /// A loss of the fitted free speed: at that load the line is slower by just that share.
    void lossIsOfTheFittedFreeSpeed()
    {
        QVERIFY(rc::check("and more loss is never less load", [] {
            const auto noise = [] { return *rc::gen::inRange(-40, 41) * 1e-3; };
            const auto fitted = *line({run(20, 7 + noise()), run(40, 6.2 + noise()), run(60, 5.3 + noise()), run(75, 4.6 + noise())});
            const double loss = *rc::gen::inRange(0, 990) * 1e-3;
            const auto load = *fitted.loadFor(loss);
            RC_ASSERT(tests::nearShare(fitted.speedAt(load.value).value.si(), (1 - loss) * fitted.freeSpeed().value.si(), 1e-10));
            RC_ASSERT(fitted.loadFor(loss + 0.01)->value > load.value);
            RC_ASSERT(load.u().si() >= 0);
        }));
    }

    /// Watch and masses alone, on an exact line so that the fit brings nothing of its own, against small steps of the textbook sums.
    void whatTheWatchBrings()
    {
        QVERIFY(rc::check("u through the fit", [] {
            const double free = *rc::gen::inRange(5000, 9000) * 1e-3, slope = *rc::gen::inRange(10, 60) * 1e-3, loss = *rc::gen::inRange(50, 900) * 1e-3;
            std::vector<SledRun> runs;
            std::vector<Given> masses, speeds;
            for (const double mass : {20.0, 35.0, 55.0, 70.0}) {
                masses.push_back({mass, 0.5});
                speeds.push_back({free - slope * mass, 0.1});
                runs.push_back(run(mass, speeds.back().value, 0.1, 0.5));
            }
            auto inputs = masses;
            inputs.insert(inputs.end(), speeds.begin(), speeds.end());
            const double u = tests::numericU([loss](const auto& x) { return loadBySums(x, loss); }, inputs);
            RC_ASSERT(tests::nearShare(line(runs)->loadFor(loss)->u().si(), u, 1e-5));
        }));
    }

    /// Runs timed over one lane share its error: all speeds are off by one share, and the load for a loss is not off at all.
    void oneLaneForAllRunsCancels()
    {
        const auto lane = within(metres(20), metres(0.5), SourceId{3});
        std::vector<SledRun> runs;
        for (const double mass : {20.0, 40.0, 60.0})
            runs.push_back(*timedRun(exactly(kilograms(mass)), lane, exactly(Seconds{20 / (8 - 0.05 * mass)})));
        VERIFY_NEAR(line(runs)->loadFor(0.5)->u().si(), 0, 1e-9);
        VERIFY_NEAR_SHARE(line(runs)->freeSpeed().u().si(), 8 * 0.5 / 20, 1e-9);
    }

    void aSlopeWithinItsOwnDoubtIsSaid()
    {
        QVERIFY(line({run(20, 6), run(40, 5), run(60, 4.01)})->fallsClearly());
        QVERIFY(!line({run(20, 6), run(40, 5.4), run(60, 5.6)})->fallsClearly());
        QVERIFY(!line({run(20, 7, 2), run(40, 6, 2), run(60, 5, 2)})->fallsClearly());
    }

    void refusals()
    {
        QCOMPARE(line({run(20, 7), run(40, 6)}).error().code, Refusal::TooFewPoints);
        QCOMPARE(line({run(20, 7), run(20, 6), run(20, 5)}).error().code, Refusal::PointsNotApart);
        QCOMPARE(line({run(20, 5), run(40, 6), run(60, 7)}).error().code, Refusal::NotFalling);
        for (const double speed : {5.0, 7.0, 6.1})
            QCOMPARE(line({run(20, speed), run(40, speed), run(60, speed)}).error().code, Refusal::NotFalling);
        QCOMPARE(whatOf(line({run(0, 7), run(40, 6), run(60, 5)})), std::string("mass"));
        QCOMPARE(whatOf(line({run(20, 7), run(40, notANumber), run(60, 5)})), std::string("speed"));
        const auto good = line({run(20, 7), run(40, 6), run(60, 5)});
        for (const double loss : {-0.01, 1.01, notANumber})
            QCOMPARE(good->loadFor(loss).error(), (Error{Refusal::OutOfRange, "speed loss"}));
    }
};

QTEST_APPLESS_MAIN(TestSledLine)
#include "test_sledline.moc"
