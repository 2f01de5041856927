// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/strength/percentof.h"

#include "core/work/desk.h"
#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <cmath>
#endif

using namespace steelyard;

namespace {

constexpr std::chrono::sys_days when{std::chrono::year(2026) / 11 / 1};

StrengthTest tried(double kg, double jump)
{
    StrengthTest test;
    test.lift = LiftId{1};
    test.day = when;
    test.load = kilograms(kg);
    test.reps = 1;
    test.maximum = true;
    test.leastJump = Entered<Mass>(kilograms(jump));
    return test;
}

std::optional<DayMaximum> maximum(const StrengthTest& test) { return steelyard::maximumOn(std::vector{test}, test.lift, test.day); }

BarMarks marks(bool zone)
{
    BarMarks m = samples::marks(0.9, 1.5);
    if (zone) {
        m.zoneFrom = metres(1.0);
        m.zoneTo = metres(1.1);
    }
    return m;
}

SetupRecord chained(double kg) { return samples::setup(kg, {samples::hung(1, ChainPlacing{})}); }

}

/// What a set-up pulls, in per cent of a maximum.
class PercentOfTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void plainIron();
    void atEachPlace();
    void whyThereIsNone();
    void theDeskFillsItIn();
};

/// 70 kg of 100 ± u 2.5: 70 %, u 70·2.5/100 = 1.75 % everywhere.
void PercentOfTest::plainIron()
{
    SetupRecord setup = chained(70);
    setup.hung.clear();
    const auto all = percentsOf(weighUp(setup, {}, marks(true), {}), maximum(tried(100, 2.5)));
    QCOMPARE(all.size(), std::size_t(4));
    for (const PercentAt& one : all) {
        VERIFY_NEAR(one.reached.percent, 70, 1e-9);
        VERIFY_NEAR(one.reached.uPercent, 1.75, 1e-9);
    }
}

/// Two chains of 5.7 kg/m hang from the floor: 0.9·11.4 = 10.26 kg at the bottom, 17.1 at the top (all of 1.5 m), 13.68 on the mean.
void PercentOfTest::atEachPlace()
{
    const std::vector kit{samples::item(1, "Chains", samples::weighed())};
    const auto all = percentsOf(weighUp(chained(70), kit, marks(false), {}), maximum(tried(100, 2.5)));
    QCOMPARE(all.size(), std::size_t(3));
    QVERIFY(all[0].place == TargetPlace::Bottom && all[1].place == TargetPlace::Top && all[2].place == TargetPlace::Mean);
    VERIFY_NEAR(all[0].reached.percent, 80.26, 1e-6);
    VERIFY_NEAR(all[1].reached.percent, 87.1, 1e-6);
    VERIFY_NEAR(all[2].reached.percent, 83.68, 1e-6);
    QVERIFY(all[0].reached.uPercent > std::hypot(80.26 * 0.025, 0.0) - 1e-9);
}

void PercentOfTest::whyThereIsNone()
{
    const WeighedUp weighed = weighUp(chained(70), std::vector{samples::item(1, "Chains", samples::weighed())}, marks(false), {});
    QVERIFY(whyNoPercent(std::nullopt) == NoPercent::NotTested && percentsOf(weighed, std::nullopt).empty());
    StrengthTest chains = tried(100, 2.5), body = tried(10, 2.5);
    chains.conditions.hung = {Method::Chains};
    body.conditions.bodyMass = Entered<Mass>(kilograms(70));
    QVERIFY(whyNoPercent(maximum(chains)) == NoPercent::OtherConditions && percentsOf(weighed, maximum(chains)).empty());
    QVERIFY(whyNoPercent(maximum(body)) == NoPercent::BodyInIt && percentsOf(weighed, maximum(body)).empty());
    QVERIFY(!whyNoPercent(maximum(tried(100, 2.5))));
    QVERIFY(percentsOf(weighUp(chained(70), {}, {}, {}), maximum(tried(100, 2.5))).empty());
}

void PercentOfTest::theDeskFillsItIn()
{
    Desk desk(samples::counted());
    WantedPulls wanted;
    wanted.inPercent = true;
    wanted.percents = {{TargetPlace::Top, 80}};
    desk.want(wanted);
    QVERIFY(!desk.wantedOfMaximum().at(TargetPlace::Top));
    int told = 0;
    const Subscription listening = desk.onChanged([&] { ++told; });
    desk.setMaximum(maximum(tried(100, 2.5)), when);
    desk.setMaximum(maximum(tried(100, 2.5)), when);
    QCOMPARE(told, 1);
    QVERIFY(desk.wantedOfMaximum().at(TargetPlace::Top) == kilograms(80));
    QVERIFY(!desk.wanted().oneRepMax); // filled in, and not typed
    // what is typed goes before it
    wanted.oneRepMax = kilograms(120);
    desk.want(wanted);
    QVERIFY(desk.wantedOfMaximum().at(TargetPlace::Top) == kilograms(96));
    wanted.oneRepMax.reset();
    desk.want(wanted);
    StrengthTest chains = tried(100, 2.5);
    chains.conditions.hung = {Method::Chains};
    desk.setMaximum(maximum(chains), when);
    QVERIFY(!desk.wantedOfMaximum().oneRepMax && told == 2);
    desk.replaceAll({}, {}, chained(20));
    QVERIFY(!desk.maximum());
}

QTEST_APPLESS_MAIN(PercentOfTest)
#include "test_percentof.moc"
