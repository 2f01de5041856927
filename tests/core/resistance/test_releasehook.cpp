// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/releasehook.h"
#include "tests/core/near.h"

#include <cmath>
#include <limits>
#include <numbers>
#include <random>
#include <rapidcheck.h>

using namespace steelyard;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

Uncertain<Length> length(double m, double u = 0) { return {metres(m), metres(u)}; }
Uncertain<Mass> mass(double kg, double u = 0) { return {kilograms(kg), kilograms(u)}; }
HookFit fit(double radius = 0.025, double drop = 0.012) { return {length(radius), length(drop)}; }
DepthSpread spread(double lowest, double sd, int reps, double u = 0) { return {metres(lowest), metres(u), metres(sd), reps}; }

Error outOfRange(const char* what) { return {Refusal::OutOfRange, what}; }

}

class TestReleaseHook : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void depthOfHerReps()
    {
        const std::vector<Height> depths{metres(0.50), metres(0.53), metres(0.51), metres(0.54)};
        const auto depth = *depthSpread(depths, metres(0.01));
        VERIFY_NEAR(depth.lowest.si(), 0.52, 1e-15);
        VERIFY_NEAR(depth.sd.si(), std::sqrt(0.001 / 3), 1e-15);
        QCOMPARE(depth.repsCount, 4);
        VERIFY_NEAR(depthMargin(depth).si(), 2 * std::sqrt(0.001 / 3), 1e-15);
        QCOMPARE(depthMargin(depthOnBox(length(0.5, 0.01))), Length{});
    }

    void depthRefusals()
    {
        const auto refused = [](std::vector<double> m, double u) {
            std::vector<Height> depths;
            for (const double d : m)
                depths.push_back(metres(d));
            return depthSpread(depths, metres(u)).error();
        };
        QCOMPARE(refused({0.5, 0.52}, 0.01), (Error{Refusal::TooFewPoints, "reps"}));
        QCOMPARE(refused({}, 0.01), (Error{Refusal::TooFewPoints, "reps"}));
        QCOMPARE(refused({0.5, 0.52, notANumber}, 0.01), outOfRange("depth"));
        QCOMPARE(refused({0.5, 0.52, -0.1}, 0.01), outOfRange("depth"));
        QCOMPARE(refused({0.5, 0.52, 0.51}, -0.01), outOfRange("uncertainty"));
        QCOMPARE(refused({0.5, 0.52, 0.51}, notANumber), outOfRange("uncertainty"));
    }

    /// Two SD leave 1 rep in 44 too shallow; 3 cm where the depth differs by 6.6 % of 52 cm, 1 in 5 (normal distribution, tables).
    void usualThreeCentimetresMissReps()
    {
        const double sd = 0.066 * 0.52;
        VERIFY_NEAR(1 - fractionBelow(length(0.5 + 2 * sd), spread(0.5, sd, 0)), 0.02275, 1e-5);
        VERIFY_NEAR(1 - fractionBelow(length(0.53), spread(0.5, sd, 0)), 0.1910, 1e-3);
        VERIFY_NEAR(fractionBelow(length(0.5), spread(0.5, sd, 0)), 0.5, 1e-15);
    }

    /// Two-sided 95 % points of Student's distribution, JCGM 100:2008, Table G.2: beyond one end lies 2.5 %.
    void fewRepsAreStudents_data()
    {
        QTest::addColumn<int>("reps");
        QTest::addColumn<double>("t");
        for (const auto& [reps, t] : {std::pair{3, 4.30}, {4, 3.18}, {5, 2.78}, {6, 2.57}, {11, 2.23}, {21, 2.09}})
            QTest::addRow("%d reps", reps) << reps << t;
    }
    void fewRepsAreStudents()
    {
        QFETCH(int, reps);
        QFETCH(double, t);
        const double sd = 0.02, next = sd * std::sqrt(1 + 1.0 / reps);
        // the table has two places
        const double slack = 0.005 * 0.1;
        VERIFY_NEAR(fractionBelow(length(0.5 + t * next), spread(0.5, sd, reps)), 0.975, slack);
        VERIFY_NEAR(fractionBelow(length(0.5 - t * next), spread(0.5, sd, reps)), 0.025, slack);
    }

    void whatIsReadCountsBesides()
    {
        VERIFY_NEAR(fractionBelow(length(0.52, 0.006), spread(0.5, 0, 0, 0.008)), (1 + std::erf(2 / std::numbers::sqrt2)) / 2, 1e-12);
        // an exact spread of many reps, and a reading's doubt of three times as much: nearly normal
        VERIFY_NEAR(fractionBelow(length(0.52), spread(0.5, 0.003, 200, 0.009)), (1 + std::erf(0.02 / std::hypot(0.003 * std::sqrt(1.005), 0.009) / std::numbers::sqrt2)) / 2, 1e-4);
    }

    void withNothingInDoubt()
    {
        QCOMPARE(fractionBelow(length(0.501), depthOnBox(length(0.5))), 1.0);
        QCOMPARE(fractionBelow(length(0.499), depthOnBox(length(0.5))), 0.0);
        QCOMPARE(fractionBelow(length(0.5), depthOnBox(length(0.5))), 0.0);
    }

    void lengthTouchAndFree()
    {
        const auto wanted = *hookLength(length(0.72, 0.01), length(0.03), fit());
        VERIFY_NEAR(wanted.value.si(), 0.787, 1e-15);
        QCOMPARE(wanted.u, metres(0.01));
        const auto heights = *hookHeights(length(0.787), fit());
        VERIFY_NEAR(heights.touch.value.si(), 0.762, 1e-15);
        VERIFY_NEAR(heights.free.value.si(), 0.75, 1e-15);
        const auto doubted = *hookHeights(length(0.787, 0.002), {length(0.025, 0.001), length(0.012, 0.002)});
        VERIFY_NEAR(doubted.touch.u.si(), std::hypot(0.002, 0.001), 1e-15);
        VERIFY_NEAR(doubted.free.u.si(), 0.003, 1e-15);
    }

    /// A hook of bottom + margin, measured as if it hung from the bar's centre, is free only 7 mm below her bottom.
    void measuredFromTheSeatItNeverLetsGo()
    {
        const auto heights = *hookHeights(length(0.75), fit());
        VERIFY_NEAR(heights.free.value.si(), 0.713, 1e-15);
        QCOMPARE(fractionBelow(heights.free, depthOnBox(length(0.72))), 0.0);
    }

    void settingIsLongEnough()
    {
        const std::vector<Length> holes{metres(0.85), metres(0.70), metres(0.75), metres(0.80)};
        QCOMPARE(*hookSetting(metres(0.787), holes), metres(0.80));
        QCOMPARE(*hookSetting(metres(0.75), holes), metres(0.75));
        QCOMPARE(*hookSetting(metres(0.1), holes), metres(0.70));
        QCOMPARE(hookSetting(metres(0.86), holes).error(), (Error{Refusal::NotThere, "hook length"}));
        QCOMPARE(hookSetting(metres(0.86), {}).error(), (Error{Refusal::NotThere, "hook length"}));
        QCOMPARE(hookSetting(metres(notANumber), holes).error(), (Error{Refusal::NotThere, "hook length"}));
    }

    void hookRefusals()
    {
        QCOMPARE(hookLength(length(0), length(0.03), fit()).error(), outOfRange("bottom"));
        QCOMPARE(hookLength(length(notANumber), length(0.03), fit()).error(), outOfRange("bottom"));
        QCOMPARE(hookLength(length(0.7), length(-0.01), fit()).error(), outOfRange("margin"));
        QCOMPARE(hookLength(length(0.7, -1), length(0.01), fit()).error(), outOfRange("bottom"));
        for (const double radius : {0.0, -0.01, notANumber}) {
            QCOMPARE(hookLength(length(0.7), length(0.03), fit(radius)).error(), outOfRange("sleeve radius"));
            QCOMPARE(hookHeights(length(0.7), fit(radius)).error(), outOfRange("sleeve radius"));
        }
        for (const double drop : {-0.01, notANumber})
            QCOMPARE(hookHeights(length(0.7), fit(0.025, drop)).error(), outOfRange("lip drop"));
        for (const double hook : {0.0, 0.037, notANumber})
            QCOMPARE(hookHeights(length(hook), fit()).error(), outOfRange("hook length"));
    }

    void tiltTakesFromTheMargin()
    {
        VERIFY_NEAR(endDrop(metres(1.6), Angle{oneDegree.radians}).si(), 0.02793, 1.5e-5);
        QCOMPARE(endDrop(metres(1.6), Angle{-oneDegree.radians}), endDrop(metres(1.6), oneDegree));
        const auto heights = *hookHeights(length(0.787, 0.002), fit());
        const auto tilted = *tiltedRelease(heights, metres(1.6), oneDegree);
        VERIFY_NEAR((tilted.firstFree.value - tilted.lastFree.value).si(), endDrop(metres(1.6), oneDegree).si(), 1e-15);
        VERIFY_NEAR(((tilted.firstFree.value + tilted.lastFree.value) / 2).si(), 0.75, 1e-15);
        QCOMPARE(tilted.lastFree.u, heights.free.u);
        QCOMPARE(tiltedRelease(heights, metres(0), oneDegree).error(), outOfRange("hook spacing"));
        QCOMPARE(tiltedRelease(heights, metres(1.6), Angle{1}).error(), outOfRange("tilt"));
        QCOMPARE(tiltedRelease(heights, metres(1.6), Angle{notANumber}).error(), outOfRange("tilt"));
    }

    void oneSideOn()
    {
        const auto on = *oneSideStaysOn(mass(72.5, 0.4), mass(21.95, 0.3), metres(1.6), metres(0.8));
        QCOMPARE(on.heavierBy.value, kilograms(21.95));
        VERIFY_NEAR(on.inAll.value.si(), 94.45, 1e-12);
        VERIFY_NEAR(on.inAll.u.si(), 0.5, 1e-15);
        VERIFY_NEAR(on.tipping.newtonMetres, 21.95 * 9.80665 * 0.8, 1e-9);
        VERIFY_NEAR(on.uTipping.newtonMetres, 0.3 * 9.80665 * 0.8, 1e-12);
        // the hook hangs as far outside the near hand as the far hand is from it: it weighs one and a half times and half the other way
        VERIFY_NEAR(on.nearHand->value.si(), 36.25 + 1.5 * 21.95, 1e-12);
        VERIFY_NEAR(on.farHand->value.si(), 36.25 - 0.5 * 21.95, 1e-12);
        VERIFY_NEAR(on.nearHand->u.si(), std::hypot(0.2, 0.45), 1e-15);
        VERIFY_NEAR(on.farHand->u.si(), std::hypot(0.2, 0.15), 1e-15);
        const auto shoulders = *oneSideStaysOn(mass(100), mass(20), metres(1.6));
        QVERIFY(!shoulders.nearHand && !shoulders.farHand);
    }

    void oneSideOnRefusals()
    {
        QCOMPARE(oneSideStaysOn(mass(0), mass(20), metres(1.6)).error(), outOfRange("bar"));
        QCOMPARE(oneSideStaysOn(mass(100), mass(notANumber), metres(1.6)).error(), outOfRange("hook"));
        QCOMPARE(oneSideStaysOn(mass(100), mass(20), metres(-1)).error(), outOfRange("hook spacing"));
        QCOMPARE(oneSideStaysOn(mass(100), mass(20), metres(1.6), metres(0)).error(), outOfRange("grip"));
    }

    /// Forces and moments about the far hand.
    void handsHoldTheBalance()
    {
        QVERIFY(rc::check("both hands hold all of it, and nothing turns about either", [] {
            const auto number = [](int from, int to) { return *rc::gen::inRange(from, to) / 100.0; };
            const double bar = number(2000, 20000), hook = number(300, 6000), spacing = number(100, 200), grip = number(30, 160);
            const auto on = *oneSideStaysOn(mass(bar), mass(hook), metres(spacing), metres(grip));
            const double near = on.nearHand->value.si(), far = on.farHand->value.si();
            RC_ASSERT(tests::near(near + far, bar + hook, 1e-9));
            RC_ASSERT(tests::near(near * grip, bar * grip / 2 + hook * (spacing / 2 + grip / 2), 1e-9));
        }));
    }

    void safeties()
    {
        const auto squat = *squatSafeties(length(0.62, 0.01));
        VERIFY_NEAR(squat.lowest.value.si(), 0.57, 1e-15);
        VERIFY_NEAR(squat.highest.value.si(), 0.60, 1e-15);
        QCOMPARE(squat.highest.u, metres(0.01));
        QCOMPARE(squatSafeties(length(0.05)).error(), outOfRange("bottom"));
        QCOMPARE(squatSafeties(length(notANumber)).error(), outOfRange("bottom"));

        const auto bench = *benchSafeties(length(0.72, 0.005), length(0.60, 0.01), metres(0.0145));
        VERIFY_NEAR(bench.lowest.value.si(), 0.6145 + 0.0196, 1e-6);
        VERIFY_NEAR(bench.highest.value.si(), 0.7345 - 0.0098, 1e-6);
        QCOMPARE(benchSafeties(length(0.61, 0.005), length(0.60, 0.01), metres(0.0145)).error(), (Error{Refusal::HeightsOutOfOrder, "throat"}));
        QCOMPARE(benchSafeties(length(0), length(0.60), metres(0.0145)).error(), outOfRange("chest"));
        QCOMPARE(benchSafeties(length(0.7), length(notANumber), metres(0.0145)).error(), outOfRange("throat"));
        QCOMPARE(benchSafeties(length(0.7), length(0.6), metres(0)).error(), outOfRange("shaft"));
    }

    void lengthAndHeightsAgree()
    {
        QVERIFY(rc::check("a hook made to its length is free a margin above her bottom, and more of it frees more reps", [] {
            const auto number = [](int from, int to) { return *rc::gen::inRange(from, to) / 1000.0; };
            const double bottom = number(150, 1200), margin = number(0, 120), radius = number(10, 60), drop = number(0, 40);
            const auto wanted = *hookLength(length(bottom), length(margin), fit(radius, drop));
            const auto heights = *hookHeights(wanted, fit(radius, drop));
            RC_ASSERT(tests::near(heights.free.value.si(), bottom + margin, 1e-12));
            RC_ASSERT(tests::near((heights.touch.value - heights.free.value).si(), drop, 1e-12));
            const DepthSpread depth = spread(bottom, number(1, 60), *rc::gen::inRange(3, 30), number(0, 10));
            const auto longer = *hookHeights(length(wanted.value.si() + 0.01), fit(radius, drop));
            const double share = fractionBelow(heights.free, depth);
            RC_ASSERT(share >= 0.5 - 1e-9 && share <= 1);
            RC_ASSERT(fractionBelow(longer.free, depth) >= share);
        }));
    }
};

QTEST_APPLESS_MAIN(TestReleaseHook)
#include "test_releasehook.moc"
