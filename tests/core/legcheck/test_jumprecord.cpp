// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/jumprecord.h"
#include "tests/core/legcheck/records.h"
#include "tests/core/near.h"

#include <algorithm>
#include <limits>
#include <rapidcheck.h>

using namespace steelyard;
using tests::Trace;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN(), g = 9.80665, standing = 700;

/// Stands, dips, pushes, flies and lands.
Trace jumpAt(double rate, double stand = 1.5, double flight = 0.45)
{
    return Trace(rate).hold(standing, stand).push(standing, -200, 0.3).push(standing, 1100, 0.3).hold(0, flight).push(standing, 1500, 0.2).hold(standing, 0.5);
}

Error refusalOf(const Trace& trace, ShortWeighing shortWeighing = ShortWeighing::No)
{
    const auto jump = forceJump(trace.record(), shortWeighing);
    return jump ? Error{Refusal::OutOfRange, "not refused"} : jump.error();
}

ForceRecord with(ForceRecord record, std::size_t index, double force)
{
    record.force[index] = newtons(force);
    return record;
}

}

class TestJumpRecord : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// Onset at 1.5 s less 30 ms; net impulse (1100 − 200)·0.3·2/π.
    void stepsOfAJump()
    {
        const ForceJump jump = *forceJump(jumpAt(1000).record());
        VERIFY_NEAR(jump.body.number(), standing / g, 1e-9);
        QCOMPARE(jump.onsetIndex, 1470u);
        QCOMPARE(jump.takeoffIndex, 2100u);
        QCOMPARE(*jump.landingIndex, 2550u);
        VERIFY_NEAR(jump.timeToTakeoff().count(), 0.63, 1e-12);
        VERIFY_NEAR_SHARE(jump.flightHeight->number(), g * 0.45 * 0.45 / 8, 1e-12);
        const double speed = 900 * 0.3 * 2 / std::numbers::pi / (standing / g);
        VERIFY_NEAR_SHARE(jump.takeoffSpeed.number(), speed, 1e-3);
        VERIFY_NEAR_SHARE(jump.impulseHeight->number(), jump.takeoffSpeed.number() * jump.takeoffSpeed.number() / (2 * g), 1e-12);
        QVERIFY(!jump.weighing.isShort);
        QCOMPARE(jump.weighing.firstIndex, 0u);
        // each end of the flight within its sample
        VERIFY_NEAR_SHARE(jump.flightHeight->u().si(), g * 0.45 / 4 / (1000 * std::sqrt(6)), 1e-9);
    }

    /// What an empty plate shows is taken off first, and nothing but it changes.
    void offsetOfThePlate()
    {
        QVERIFY(rc::check("any offset, any rate", [] {
            const double rate = *rc::gen::element(100.0, 450.0, 600.0, 1000.0, 2000.0), off = *rc::gen::inRange(-450, 450) / 10.0;
            const ForceJump plain = *forceJump(jumpAt(rate).record()), moved = *forceJump(jumpAt(rate).offset(off).record());
            RC_ASSERT(tests::near(moved.offset.si(), off, 1e-9));
            RC_ASSERT((moved.onsetIndex == plain.onsetIndex && moved.takeoffIndex == plain.takeoffIndex && moved.landingIndex == plain.landingIndex));
            RC_ASSERT(tests::nearShare(moved.takeoffSpeed.number(), plain.takeoffSpeed.number(), 1e-9));
            RC_ASSERT(tests::nearShare(moved.body.number(), plain.body.number(), 1e-9));
        }));
    }

    /// Stepping on and off is no flight before a jump, and the empty plate before is no weighing.
    void steppingOnAndOff()
    {
        Trace whole(1000);
        whole.hold(0, 2).push(0, 500, 0.4).hold(standing, 1.5).push(standing, 1000, 0.3).hold(0, 0.4).push(standing, 900, 0.3).hold(standing, 0.3).hold(0, 1);
        const ForceJump jump = *forceJump(whole.record());
        QVERIFY(jump.takeoff.count() > 4.1 && jump.takeoff.count() < 4.3);
        VERIFY_NEAR(jump.body.number(), standing / g, 1e-9);
        QCOMPARE(jump.weighing.firstIndex, 2400u);
    }

    /// The quietest second counts, not the first.
    void quietestSecondIsTheWeight()
    {
        const Trace restless = Trace(1000).hold(standing, 1).shake(8);
        ForceRecord record = restless.record();
        const ForceRecord rest = jumpAt(1000).record();
        record.force.insert(record.force.end(), rest.force.begin(), rest.force.end());
        const ForceJump jump = *forceJump(record);
        QCOMPARE(jump.weighing.firstIndex, 1000u);
        QCOMPARE(jump.weighing.sd, Force{});
        QCOMPARE(jump.onsetIndex, 2470u);
    }

    void noiseMovesOnsetAndTakeoffLittle()
    {
        const ForceJump plain = *forceJump(jumpAt(1000).record()), shaken = *forceJump(jumpAt(1000).shake(1.5).record());
        QVERIFY(shaken.onsetIndex >= plain.onsetIndex && shaken.onsetIndex < plain.onsetIndex + 30);
        QVERIFY(std::abs(static_cast<double>(shaken.takeoffIndex) - static_cast<double>(plain.takeoffIndex)) <= 1);
        VERIFY_NEAR_SHARE(shaken.impulseHeight->number(), plain.impulseHeight->number(), 0.02);
        QVERIFY(shaken.takeoffSpeed.u().si() > 0);
    }

    /// A plate rings when it is left: a peak over the threshold just after take-off is no landing.
    void ringingIsNoLanding()
    {
        const auto record = jumpAt(1000).record();
        const ForceJump jump = *forceJump(with(record, 2110, 30));
        QCOMPARE(*jump.landingIndex, 2550u);
        QCOMPARE(jump.takeoffIndex, 2100u);
    }

    void endsInFlight()
    {
        const Trace trace = Trace(1000).hold(standing, 1.2).push(standing, 1100, 0.3).hold(0, 0.3);
        const ForceJump jump = *forceJump(trace.record());
        QVERIFY(!jump.landing && !jump.landingIndex && !jump.flightHeight);
        QVERIFY(jump.impulseHeight);
    }

    /// The mean of the weighing is off by 0.1 %: the speed follows by its own derivative.
    void uOfTheSpeedFollowsTheWeight()
    {
        const ForceJump jump = *forceJump(jumpAt(1000).shake(2).record());
        const double u = jump.weighing.sd.si() / std::sqrt(1000.0) / g;
        VERIFY_NEAR_SHARE(jump.body.u().si(), u, 1e-12);
        const double stretch = 0.001 * static_cast<double>(jump.takeoffIndex - 1 - jump.onsetIndex);
        VERIFY_NEAR_SHARE(jump.takeoffSpeed.u().si(), u * (jump.takeoffSpeed.number() + g * stretch) / jump.body.number(), 1e-9);
    }

    void shortWeighingOnlyWhenAllowed()
    {
        const Trace trace = jumpAt(1000, 0.3);
        QCOMPARE(refusalOf(trace), (Error{Refusal::TooFewPoints, "weighing"}));
        // a second of load, and all of the jump in it
        QCOMPARE(refusalOf(jumpAt(1000, 0.45)), (Error{Refusal::NotStill, "weighing"}));
        QVERIFY(forceJump(jumpAt(1000, 0.45).record(), ShortWeighing::Allowed)->weighing.isShort);
        const ForceJump jump = *forceJump(trace.record(), ShortWeighing::Allowed);
        QVERIFY(jump.weighing.isShort);
        QCOMPARE(jump.weighing.samplesCount, 100u);
        // allowed, and not needed
        QVERIFY(!forceJump(jumpAt(1000).record(), ShortWeighing::Allowed)->weighing.isShort);
    }

    void notStillIsRefused()
    {
        // 15 N of 700 is over 2 %
        const Error notStill{Refusal::NotStill, "weighing"};
        ForceRecord record = Trace(1000).hold(standing, 1.5).shake(15).record();
        const ForceRecord rest = jumpAt(1000, 0).record();
        record.force.insert(record.force.end(), rest.force.begin(), rest.force.end());
        QCOMPARE(forceJump(record).error(), notStill);
        QCOMPARE(forceJump(record, ShortWeighing::Allowed).error(), notStill);
    }

    void refused()
    {
        QCOMPARE(refusalOf(Trace(1000)), (Error{Refusal::TooFewPoints, "force"}));
        QCOMPARE(refusalOf(Trace(1000).hold(standing, 0.1)), (Error{Refusal::TooFewPoints, "force"}));
        QCOMPARE(refusalOf(Trace(1000).hold(standing, 3)), (Error{Refusal::NoFlight, "force"}));
        QCOMPARE(refusalOf(Trace(1000).hold(0, 3)), (Error{Refusal::NoFlight, "force"}));
        // a hop of less than a tenth of a second
        QCOMPARE(refusalOf(Trace(1000).hold(standing, 1.5).hold(0, 0.09).hold(standing, 1)), (Error{Refusal::NoFlight, "force"}));
        QCOMPARE(refusalOf(Trace(10).hold(standing, 3)), (Error{Refusal::OutOfRange, "rate"}));
        QCOMPARE(forceJump({hertz(notANumber), {newtons(1)}}).error(), (Error{Refusal::NotFinite, "rate"}));
        QCOMPARE(forceJump(with(jumpAt(1000).record(), 41, notANumber)).error(), (Error{Refusal::NotFinite, "sample 42"}));
        QCOMPARE(forceJump(with(jumpAt(1000).record(), 41, 2e5)).error(), (Error{Refusal::OutOfRange, "sample 42"}));
        QCOMPARE(forceJump(jumpAt(1000).record(), ShortWeighing::No, Acceleration{}).error(), (Error{Refusal::OutOfRange, "gravity"}));
        // whoever steps off has not jumped: nothing moved before the plate was empty
        QCOMPARE(refusalOf(Trace(1000).hold(standing, 1.5).hold(0, 1)), (Error{Refusal::NoFlight, "force"}));
    }

    void anyRecordIsAnsweredOrRefused()
    {
        QVERIFY(rc::check("random pieces of force", [] {
            Trace trace(*rc::gen::element(50.0, 100.0, 333.0));
            for (int i = *rc::gen::inRange(0, 9); i > 0; --i)
                trace.hold(*rc::gen::inRange(-100, 2000), *rc::gen::inRange(0, 150) / 100.0);
            trace.shake(*rc::gen::inRange(0, 20));
            const auto jump = forceJump(trace.record(), *rc::gen::element(ShortWeighing::No, ShortWeighing::Allowed));
            if (!jump) {
                RC_ASSERT(!jump.error().what.empty());
                return;
            }
            RC_ASSERT((jump->onsetIndex < jump->takeoffIndex && std::isfinite(jump->takeoffSpeed.number())));
            RC_ASSERT((!jump->landingIndex || *jump->landingIndex > jump->takeoffIndex));
            RC_ASSERT(jump->weighing.endIndex() <= jump->takeoffIndex);
        }));
    }
};

QTEST_APPLESS_MAIN(TestJumpRecord)
#include "test_jumprecord.moc"
