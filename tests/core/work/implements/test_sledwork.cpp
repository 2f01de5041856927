// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/implements/implementmass.h"
#include "core/work/implements/sledwork.h"
#include "tests/core/near.h"
#include "tests/core/refused.h"
#include "tests/core/work/implements/pitch.h"

#include <QtTest>

#include <rapidcheck.h>
#endif

using namespace steelyard;
using namespace pitch;
using steelyard::tests::whatOf;

namespace {

const RecordId here = numberedids::numbered(2), theSled = numberedids::numbered(7), her = numberedids::numbered(8);

/// A sled that weighs what it does without doubt, at a strap of 15°: hip at hook + strap·sin 15°.
SledMeasurement exactSled()
{
    SledMeasurement m = borrowed::sled(25);
    m.whole.step = kilograms(0);
    return m;
}

Entered<Height> hipAt(const SledMeasurement& sled, double degrees)
{
    return metres(sled.hook->si() + sled.strap->si() * std::sin(degrees * oneDegree.radians));
}

std::vector<SledRunTimed> runsOfTheExample()
{
    std::vector<SledRunTimed> runs;
    for (const auto& [total, speed] : {std::pair(25.0, 6.48), {50.0, 5.52}, {75.0, 4.63}}) {
        runs.push_back(borrowed::run(her, here, theSled, total - 25, speed));
        // to the millisecond a time says less than the example's speed, so the lane is as long as it has to be
        runs.back().time = std::chrono::milliseconds(4000);
        runs.back().distance = metres(4 * speed);
    }
    return runs;
}

}

/// Friction found at a pitch, the pull on it, and a load for a speed loss carried from one surface to another.
class SledWorkTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // pulled level at 45 % of its weight a sled has a friction of 0.45: μ = T/(Mg)
    void friction()
    {
        const auto level = frictionOf(borrowed::surface(here, theSled), exactSled());
        QVERIFY(level);
        VERIFY_NEAR_SHARE(level->friction.value, 0.45, 1e-12);
        QVERIFY(level->lightest == kilograms(45) && level->heaviest == kilograms(85) && level->covers(kilograms(60)) && !level->covers(kilograms(90)));
        QVERIFY(level->friction.u() > 0);
        // the strap lifts as it pulls: μ = T cosα/(Mg − T sinα)
        SledSurface lifted = borrowed::surface(here, theSled);
        lifted.hip = hipAt(exactSled(), 15);
        const double a = 15 * oneDegree.radians;
        VERIFY_NEAR_SHARE(frictionOf(lifted, exactSled())->friction.value, 0.45 * std::cos(a) / (1 - 0.45 * std::sin(a)), 1e-9);
        QVERIFY(frictionOf(lifted, exactSled())->friction.value > 0.45 * std::cos(a));
    }

    // the worked example of a sled profile made on one surface and used on another
    void carriedAsPull()
    {
        const SledMeasurement sled = exactSled();
        const auto line = speedLineOf(runsOfTheExample(), sled);
        QVERIFY(line);
        VERIFY_NEAR_SHARE(line->freeSpeed().number(), 7.3933, 5e-4);
        const auto home = loadForSpeedLoss(*line, sled, 0.5);
        QVERIFY(home);
        VERIFY_NEAR_SHARE(home->total.number(), 99.91, 5e-4);
        VERIFY_NEAR_SHARE(home->added.number(), 74.91, 5e-4);
        QVERIFY(!home->isBetweenRuns);
        // stopwatch, lane and plates come on top of the fit's own
        QVERIFY(home->total.u().si() > 1.652);
        const SurfaceFriction turf{exactly(0.45), kilograms(25), kilograms(100)}, pitch{exactly(0.25), kilograms(25), kilograms(100)};
        const auto there = haulOn(turf, sled, hipAt(sled, 15)), away = haulOn(pitch, sled, hipAt(sled, 15));
        QVERIFY(there && away);
        const auto pull = sledPull(home->total, *there);
        VERIFY_NEAR_SHARE(pull->number(), 407.34, 5e-4);
        const auto carried = carriedTo(*home, *there, *away, sled);
        VERIFY_NEAR_SHARE(carried->total.number(), 171.24, 5e-4);
        VERIFY_NEAR_SHARE(carried->added.number(), 146.24, 5e-4);
        VERIFY_NEAR_SHARE(sledPull(carried->total, *away)->number(), pull->number(), 1e-9);
    }

    // the sled was weighed once: what it is out by takes the same off every reading, so a gram too much is as much too little friction
    void theSledIsOneMass()
    {
        SledMeasurement coarse = borrowed::sled(25);
        coarse.whole.step = kilograms(5);
        SledSurface exact = borrowed::surface(here, theSled);
        exact.scaleStep.reset();
        const double u = 5 / std::sqrt(12.0), m[] = {45, 85};
        const auto slope = [&](double off) {
            double products = 0, squares = 0;
            for (const double total : m) {
                products += (total + off) * 0.45 * total;
                squares += (total + off) * (total + off);
            }
            return products / squares;
        };
        const double bySled = (slope(1e-4) - slope(-1e-4)) / 2e-4 * u;
        const auto plates = [&](double off) {
            double products = 0, squares = 0;
            for (const double total : m) {
                const double now = 25 + (total - 25) * (1 + off);
                products += now * 0.45 * total;
                squares += now * now;
            }
            return products / squares;
        };
        const double byPlates = (plates(1e-6) - plates(-1e-6)) / 2e-6 * 0.02 / std::sqrt(3.0);
        VERIFY_NEAR_SHARE(frictionOf(exact, coarse)->friction.u(), std::hypot(bySled, byPlates), 1e-6);
    }

    void pulls()
    {
        const auto found = frictionOf(borrowed::surface(here, theSled), exactSled());
        const auto haul = haulOn(*found, exactSled(), hipAt(exactSled(), 15));
        const auto near = sledPullAt(exactSled(), kilograms(40), *found, *haul), far = sledPullAt(exactSled(), kilograms(140), *found, *haul);
        const double a = 15 * oneDegree.radians;
        VERIFY_NEAR_SHARE(near->pull.number(), 0.45 * 65 * 9.80665 / (std::cos(a) + 0.45 * std::sin(a)), 1e-9);
        QVERIFY(near->isNearReadings && !far->isNearReadings && far->pull.number() > near->pull.number());
        // a push that only presses it down is refused
        QCOMPARE(whatOf(sledPullAt(exactSled(), kilograms(40), *found, pushOn(*found, exactly(Angle{70 * oneDegree.radians})))), std::string("push angle"));
        QVERIFY(sledPullAt(exactSled(), kilograms(40), *found, pushOn(*found, exactly(Angle{20 * oneDegree.radians}))));
    }

    void refused()
    {
        SledMeasurement unknown = borrowed::sled();
        unknown.whole = {};
        QCOMPARE(whatOf(sledTotal(unknown, kilograms(20))), std::string("sled"));
        QCOMPARE(whatOf(frictionOf(borrowed::surface(here, theSled), unknown)), std::string("sled"));
        QCOMPARE(whatOf(speedLineOf(runsOfTheExample(), unknown)), std::string("sled"));
        QVERIFY(!sledTotal(borrowed::sled(), kilograms(-1)));
        SledMeasurement noStrap = borrowed::sled();
        noStrap.strap.reset();
        QCOMPARE(whatOf(strapAngle(noStrap, metres(0.9))), std::string("strap"));
        QCOMPARE(strapAngle(noStrap, std::nullopt)->value.radians, 0.0);
        QVERIFY(!strapAngle(borrowed::sled(), metres(3.9)));
        auto two = runsOfTheExample();
        two.pop_back();
        QVERIFY(speedLineOf(two, exactSled()).error().code == Refusal::TooFewPoints);
        auto faster = runsOfTheExample();
        for (SledRunTimed& run : faster)
            run.distance = metres(10 + run.added.si());
        QVERIFY(speedLineOf(faster, exactSled()).error().code == Refusal::NotFalling);
        // a loss that costs less than the empty sled
        QCOMPARE(whatOf(loadForSpeedLoss(*speedLineOf(runsOfTheExample(), exactSled()), exactSled(), 0.05)), std::string("sled"));
        QVERIFY(!loadForSpeedLoss(*speedLineOf(runsOfTheExample(), exactSled()), exactSled(), 1.2));
    }

    void runsOfOnePicture()
    {
        std::vector<SledRunTimed> all = runsOfTheExample();
        for (SledRunTimed& run : all)
            run.id = numberedids::numbered(1);
        all[0].day -= days(29);
        all.push_back(all[1]);
        all.back().surface = "turf, dry";
        all.push_back(all[1]);
        all.back().way = SledWay::Push;
        all.push_back(all[1]);
        all.back().day += days(40);
        std::vector<const SledRunTimed*> runs;
        for (const SledRunTimed& run : all)
            runs.push_back(&run);
        const RunsOf which{theSled, here, "grass, wet", SledWay::Tow};
        QCOMPARE(runsThatCount(runs, which, all[1].day).size(), std::size_t{2});
        QCOMPARE(runsThatCount(runs, which, all[0].day).size(), std::size_t{1});
        QCOMPARE(runsThatCount(runs, which, all.back().day).size(), std::size_t{1});
        QVERIFY(runsThatCount(runs, which, all[0].day - days(1)).empty());
    }

    void theLastOfItsName()
    {
        Pitch p;
        const RecordId sled = p.item("Sled", borrowed::sled()), other = p.item("Other sled", borrowed::sled());
        SledSurface later = borrowed::surface(p.venue, sled, "grass, wet", 0.3);
        later.day += days(3);
        keepSurface(p.keeping, later, p.told());
        keepSurface(p.keeping, borrowed::surface(p.venue, sled), p.told());
        keepSurface(p.keeping, borrowed::surface(p.venue, sled, "turf, dry"), p.told());
        QVERIFY(lastSurface(p.book, p.venue, sled, "grass, wet")->day == later.day);
        QVERIFY(!lastSurface(p.book, p.venue, other, "grass, wet") && !lastSurface(p.book, p.home, sled, "grass, wet"));
        QCOMPARE(surfacesOf(p.book, p.venue, sled).size(), std::size_t{2});
    }

    void moreIsNeverLess()
    {
        QVERIFY(rc::check("more on a sled never takes less force, and no give-or-take is below 0", [] {
            const auto between = [](int least, int most) { return *rc::gen::inRange(least, most) / 100.0; };
            const SledMeasurement sled = borrowed::sled(between(500, 6000));
            const SurfaceFriction surface{within(between(5, 90), between(0, 10)), kilograms(30), kilograms(90)};
            const auto haul = haulOn(surface, sled, metres(between(18, 200)));
            RC_PRE(haul.ok());
            const double light = between(0, 20'000), more = between(0, 20'000);
            const auto one = sledPullAt(sled, kilograms(light), surface, *haul), other = sledPullAt(sled, kilograms(light + more), surface, *haul);
            RC_ASSERT(one && other);
            RC_ASSERT(other->pull.number() >= one->pull.number());
            RC_ASSERT(one->pull.u().si() >= 0 && one->pull.giveOrTake().si() >= 0 && one->total.u().si() >= 0);
        }));
    }
};

QTEST_APPLESS_MAIN(SledWorkTest)
#include "test_sledwork.moc"
