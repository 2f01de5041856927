// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/strength/setupramp.h"

#include "core/work/weighup.h"
#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <rapidcheck.h>
#endif

using namespace steelyard;

namespace {

BarMarks marks(LiftStart start = LiftStart::OwnBottom)
{
    BarMarks m;
    m.start = start;
    if (start == LiftStart::OwnBottom)
        m.bottom = metres(0.9);
    m.top = metres(1.5);
    return m;
}

SetupRecord setup(double kg, bool chained)
{
    return samples::setup(kg, chained ? std::vector{samples::hung(1, ChainPlacing{})} : std::vector<HungRecord>{});
}

std::vector<KitItem> kit() { return {samples::item(1, "Chains", samples::weighed())}; }

double kg(const Reading& reading) { return asMass(reading.value).si(); }

Mass massOf(const std::vector<PlateType>& plates)
{
    Mass sum;
    for (const PlateType& plate : plates)
        sum = sum + plate.mass;
    return sum;
}

}

/// The way up to what hangs.
class SetupRampTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void plainIron();
    void chainsStay();
    void theChangesAddUp();
    void whatHangsIsTooMuch();
    void fromTheFloor();
    void sharesAreStepped();
    void refusals();
};

/// 40, 55, 70 and 85 % of 100 kg on plates that step by 2.5.
void SetupRampTest::plainIron()
{
    const auto ramp = setupRamp(setup(100, false), {}, marks(), RampWanted::usual());
    QVERIFY(ramp.ok());
    QCOMPARE(ramp->steps.size(), std::size_t(4));
    const std::vector<double> loads{40, 55, 70, 85};
    for (std::size_t i = 0; i < 4; ++i)
        VERIFY_NEAR(inKilograms(ramp->steps[i].load.total), loads[i], 1e-9);
    VERIFY_NEAR(kg(ramp->working), 100, 1e-9);
    VERIFY_NEAR(kg(ramp->least), 20, 1e-9);
    QVERIFY(ramp->steps[0].change.takeOff.empty());
}

/// Chains of 11.4 kg/m: 17.1 kg at the top. 100 of iron pull 117.1; 40 % of it are 46.84, so 29.74 of iron: 30.
void SetupRampTest::chainsStay()
{
    RampWanted wanted = RampWanted::usual();
    wanted.place = TargetPlace::Top;
    const auto ramp = setupRamp(setup(100, true), kit(), marks(), wanted);
    QVERIFY(ramp.ok());
    VERIFY_NEAR(kg(ramp->working), 117.1, 1e-6);
    VERIFY_NEAR(inKilograms(ramp->steps[0].load.total), 30, 1e-9);
    VERIFY_NEAR(kg(ramp->steps[0].step.reading), 47.1, 1e-6);
    QVERIFY(ramp->steps[0].step.reading.u > Force{});
    VERIFY_NEAR(kg(ramp->least), 37.1, 1e-6);
}

/// From a bare bar on, what is put on less what is taken off makes each load, and the working set at the end.
void SetupRampTest::theChangesAddUp()
{
    QVERIFY(rc::check("changes", [] {
        const double wanted = 20 + 2.5 * *rc::gen::inRange(1, 60);
        const bool chained = *rc::gen::arbitrary<bool>();
        const auto ramp = setupRamp(setup(wanted, chained), kit(), marks(), RampWanted::usual());
        RC_ASSERT(ramp.ok());
        Mass total = kilograms(20);
        const auto add = [&](const PlateChange& change, const PlateLoad& load) {
            total = total + 2 * (massOf(change.putOn) - massOf(change.takeOff));
            RC_ASSERT(std::abs(inKilograms(total - load.total)) < 1e-9);
        };
        for (const SetupRampStep& one : ramp->steps) {
            add(one.change, one.load);
            RC_ASSERT(one.load.total <= ramp->workingLoad.total);
        }
        add(ramp->toWorking, ramp->workingLoad);
    }));
}

/// 25 kg of iron with the chains pull 42.1 at the top, and the bare bar 37.1: 40 and 55 % of it cannot be hung.
void SetupRampTest::whatHangsIsTooMuch()
{
    RampWanted wanted = RampWanted::usual();
    wanted.place = TargetPlace::Top;
    const auto ramp = setupRamp(setup(25, true), kit(), marks(), wanted);
    QVERIFY(ramp.ok() && ramp->steps[0].step.isLeast && ramp->steps[1].step.isLeast && ramp->steps[1].step.isAsBefore);
    VERIFY_NEAR(inKilograms(ramp->steps[0].load.total), 20, 1e-9);
}

/// A deadlift starts at the plates' radius: a bar without any has no bottom, and each load its own.
void SetupRampTest::fromTheFloor()
{
    const auto ramp = setupRamp(setup(100, false), {}, marks(LiftStart::Floor), RampWanted::usual());
    QVERIFY(ramp.ok());
    QVERIFY(!ramp->leastLoad.eachSide.empty());
    QVERIFY(!setupRamp(setup(20, false), {}, marks(LiftStart::Floor), RampWanted::usual()));
}

void SetupRampTest::sharesAreStepped()
{
    const RampWanted usual = RampWanted::usual();
    QVERIFY((usual.percents == std::vector<int>{40, 55, 70, 85}));
    QCOMPARE(stepped(usual, 0, true).percents[0], 45);
    RampWanted close = usual;
    close.percents = {5, 10, 90, 95};
    QVERIFY(!canStep(close, 0, false) && !canStep(close, 0, true) && !canStep(close, 1, false) && canStep(close, 1, true));
    QVERIFY(!canStep(close, 3, true) && !canStep(close, 4, true) && stepped(close, 3, true) == close);
}

void SetupRampTest::refusals()
{
    RampWanted zone = RampWanted::usual();
    zone.place = TargetPlace::Zone;
    const auto none = setupRamp(setup(100, false), {}, marks(), zone);
    QVERIFY(!none && none.error().what == "sticking zone");
    QVERIFY(!setupRamp(setup(100, false), {}, {}, RampWanted::usual()));
    // chains that are not in the kit
    QVERIFY(!setupRamp(setup(100, true), {}, marks(), RampWanted::usual()));
    RampWanted falling = RampWanted::usual();
    falling.percents = {50, 40};
    QVERIFY(!setupRamp(setup(100, false), {}, marks(), falling));
}

QTEST_APPLESS_MAIN(SetupRampTest)
#include "test_setupramp.moc"
