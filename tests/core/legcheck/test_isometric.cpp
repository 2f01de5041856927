// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/isometric.h"
#include "tests/core/legcheck/records.h"
#include "tests/core/near.h"

#include <limits>
#include <rapidcheck.h>

using namespace steelyard;
using tests::Trace;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN(), standing = 900;

Trace pullAt(double rate, double rise = 1800, double timeConstant = 0.11) { return Trace(rate).hold(standing, 1.2).pull(standing, rise, timeConstant, 3); }

Error refusalOf(const Trace& trace)
{
    const auto pull = isometricTry(trace.record());
    return pull ? Error{Refusal::OutOfRange, "not refused"} : pull.error();
}

}

class TestIsometric : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// F = W + A(1 − e^(−t/τ)): its impulse is A(t − τ(1 − e^(−t/τ))), the trapezoid off by under 1e-4 of it at 1000 a second.
    void closedForm()
    {
        QVERIFY(rc::check("force, its rate and its impulse at every time", [] {
            const double rise = *rc::gen::inRange(1000, 4000), tau = *rc::gen::inRange(50, 300) / 1000.0, rate = *rc::gen::element(1000.0, 2000.0, 1234.0);
            const IsometricTry pull = *isometricTry(pullAt(rate, rise, tau).record());
            RC_ASSERT(tests::near(pull.weighing.mean.si(), standing, 1e-9));
            RC_ASSERT(tests::near(pull.onset.count(), 1.2, 0.6 / rate));
            RC_ASSERT(tests::nearShare(pull.netPeak.si(), rise, 1e-4));
            RC_ASSERT(tests::near((pull.grossPeak - pull.netPeak).si(), standing, 1e-9));
            for (const auto& at : pull.at) {
                const double t = Seconds(at->after).count(), net = rise * (1 - std::exp(-t / tau));
                RC_ASSERT(tests::nearShare(at->gross.si() - standing, net, 2e-3));
                RC_ASSERT(tests::nearShare(at->development.si(), net / t, 2e-3));
                RC_ASSERT(tests::nearShare(at->netImpulse.si(), rise * (t - tau * (1 - std::exp(-t / tau))), 5e-3));
            }
        }));
    }

    /// 450 a second has no sample at 50 ms: 22.5 samples on, halfway between two.
    void betweenSamplesOnAStraightLine()
    {
        const ForceRecord record = pullAt(450).record();
        const IsometricTry pull = *isometricTry(record);
        const Force before = record.force[pull.onsetIndex + 22], behind = record.force[pull.onsetIndex + 23];
        VERIFY_NEAR(pull.at[0]->gross.si(), (before + behind).si() / 2, 1e-9);
    }

    void noStepBack()
    {
        const IsometricTry pull = *isometricTry(pullAt(1000).record());
        QCOMPARE(pull.onsetIndex, 1200u);
    }

    /// With noise the onset waits for 5 SD, and the peak's u is that of the weighing.
    void noise()
    {
        const IsometricTry pull = *isometricTry(pullAt(1000).shake(3).record());
        QVERIFY(pull.onsetIndex >= 1199u && pull.onsetIndex < 1203u);
        VERIFY_NEAR_SHARE(pull.uNetPeak.si(), 3.0015 / std::sqrt(1000.0), 1e-3);
    }

    /// Past it nothing is known.
    void endOfTheRecord()
    {
        const IsometricTry pull = *isometricTry(Trace(1000).hold(standing, 1.2).pull(standing, 1500, 0.1, 0.12).record());
        QVERIFY(pull.at[0] && pull.at[1] && !pull.at[2] && !pull.at[4]);
    }

    void refused()
    {
        QCOMPARE(refusalOf(Trace(1000)), (Error{Refusal::TooFewPoints, "force"}));
        QCOMPARE(refusalOf(Trace(1000).hold(standing, 1.05)), (Error{Refusal::TooFewPoints, "force"}));
        QCOMPARE(refusalOf(Trace(1000).hold(standing, 3)), (Error{Refusal::NoPull, "force"}));
        QCOMPARE(refusalOf(Trace(1000).hold(standing, 0.5).pull(standing, 1500, 0.1, 2)), (Error{Refusal::NotStill, "weighing"}));
        QCOMPARE(refusalOf(Trace(1000).hold(0, 3)), (Error{Refusal::NotStill, "weighing"}));
        QCOMPARE(refusalOf(Trace(1000).hold(standing, 1.2).push(standing, -60, 0.2).pull(standing, 1500, 0.1, 2)), (Error{Refusal::DipBeforePull, "force"}));
        // a little up and then down is a dip too
        QCOMPARE(refusalOf(Trace(1000).hold(standing, 1.2).push(standing, 20, 0.1).push(standing, -60, 0.2).pull(standing, 1500, 0.1, 2)), (Error{Refusal::DipBeforePull, "force"}));
        QCOMPARE(refusalOf(Trace(1000).hold(standing, 1.2).hold(100, 2)), (Error{Refusal::DipBeforePull, "force"}));
        ForceRecord record = pullAt(1000).record();
        record.force[7] = newtons(notANumber);
        QCOMPARE(isometricTry(record).error(), (Error{Refusal::NotFinite, "sample 8"}));
    }
};

QTEST_APPLESS_MAIN(TestIsometric)
#include "test_isometric.moc"
