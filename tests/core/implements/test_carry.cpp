// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/implements/carry.h"
#include "core/implements/oneleg.h"
#include "tests/core/near.h"
#include "tests/core/propagation.h"
#include "tests/core/refused.h"

#include <rapidcheck.h>

using namespace steelyard;
using tests::whatOf;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
using enum CarryKind;

Estimate<Mass> kg(double mass, double u = 0) { return within(kilograms(mass), kilograms(u)); }
CarryLap lap(double covered) { return {exactly(metres(covered)), std::nullopt, 0}; }
CarryLap timedLap(double covered, double time, double uTime = 0) { return {exactly(metres(covered)), within(Seconds{time}, Seconds{uTime}), 0}; }

}
Q_DECLARE_METATYPE(CarryKind)
Q_DECLARE_METATYPE(CarryLoad)

class TestCarry : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// A lap that was dropped counts to where it fell, one that was left out not at all.
    void whatWasReallyCarried()
    {
        Carry carry{OneHand, {kg(32), {}, {}}, {lap(20), lap(20), lap(12)}, 1};
        carry.laps.back().drops = 1;
        const CarryDone done = *carryDone(carry);
        QCOMPARE(done.left.value.si(), 32 * 52.0);
        QCOMPARE(done.all.value.si(), 32 * 52.0);
        QCOMPARE(done.right.value.si(), 0.0);
        QCOMPARE(done.drops, 1);
        QCOMPARE(done.lapsGone, 3);
        QCOMPARE(done.lapsLeftOut, 1);
        QVERIFY(!done.speed);
    }

    void farmersByHand()
    {
        const CarryDone done = *carryDone({Farmers, {kg(28.5), kg(30.5), {}}, {timedLap(30, 24), timedLap(30, 26), lap(15)}, 0});
        QCOMPARE(done.left.value.si(), 28.5 * 75);
        QCOMPARE(done.right.value.si(), 30.5 * 75);
        QCOMPARE(done.whole.value.si(), 0.0);
        QCOMPARE(done.all.value.si(), 59.0 * 75);
        QCOMPARE(done.load.value, kilograms(59));
        VERIFY_NEAR_SHARE(done.speed->value.si(), 60.0 / 50, 1e-15);
    }

    void aYokeIsOnNoHand()
    {
        const CarryDone done = *carryDone({Yoke, {{}, {}, kg(120)}, {lap(20)}, 0});
        QCOMPARE(done.whole.value.si(), 2400.0);
        QCOMPARE(done.all.value.si(), 2400.0);
        QCOMPARE(done.left.value.si() + done.right.value.si(), 0.0);
    }

    /// One lane is off one way, lap after lap; the two handles were weighed apart.
    void uOfLoadAndLane()
    {
        const Estimate<Length> lane = within(metres(20), metres(0.1), SourceId{5});
        const CarryDone done = *carryDone({Farmers, {kg(30, 0.3), kg(30, 0.4), {}}, {{lane, within(Seconds{10}, Seconds{0.1}), 0}, {lane, within(Seconds{10}, Seconds{0.1}), 0}}, 0});
        VERIFY_NEAR_SHARE(done.distance.u().si(), 0.2, 1e-14);
        VERIFY_NEAR_SHARE(done.left.u().si(), std::hypot(40 * 0.3, 30 * 0.2), 1e-14);
        VERIFY_NEAR_SHARE(done.all.u().si(), std::hypot(40 * 0.5, 60 * 0.2), 1e-14);
        VERIFY_NEAR_SHARE(done.speed->u().si(), std::hypot(0.2 / 20, 40 * 0.1 * std::sqrt(2) / 400), 1e-14);
    }

    /// A distance that was measured for this carry alone is one for both hands, and not one for each.
    void bothHandsWentTheSameWay()
    {
        const CarryDone done = *carryDone({Farmers, {kg(30), kg(30), {}}, {{within(metres(40), metres(0.2)), {}, 0}}, 0});
        VERIFY_NEAR_SHARE(done.left.u().si(), 6, 1e-14);
        VERIFY_NEAR_SHARE(done.all.u().si(), 12, 1e-14);
    }

    void percentages()
    {
        const auto percent = *percentOf(kg(57, 0.5), kg(72, 0.6));
        VERIFY_NEAR_SHARE(percent.value, 100 * 57 / 72.0, 1e-15);
        VERIFY_NEAR_SHARE(percent.u(), 100 * 57 / 72.0 * std::hypot(0.5 / 57, 0.6 / 72), 1e-12);
        QCOMPARE(whatOf(percentOf(kg(-1), kg(72))), std::string("mass"));
        QCOMPARE(whatOf(percentOf(kg(1), kg(0))), std::string("reference"));
    }

    void isMonotone()
    {
        QVERIFY(rc::check("heavier or further is never less; u is never below 0", [] {
            const auto milli = [](int from, int to) { return *rc::gen::inRange(from, to) * 1e-3; };
            const double load = milli(1000, 60000), far = milli(0, 40000), u = milli(0, 900);
            const auto all = [&](double more, double further) { return carryDone({Front, {{}, {}, kg(load + more, u)}, {lap(far + further), lap(far)}, 0})->all; };
            RC_ASSERT(all(1, 0).value >= all(0, 0).value && all(0, 1).value >= all(0, 0).value && all(0, 0).u().si() >= 0);
        }));
    }

    void loadGoesWithItsKind_data()
    {
        QTest::addColumn<CarryKind>("kind");
        QTest::addColumn<CarryLoad>("load");
        QTest::newRow("farmer's with one hand") << Farmers << CarryLoad{kg(30), {}, {}};
        QTest::newRow("farmer's with a bar too") << Farmers << CarryLoad{kg(30), kg(30), kg(30)};
        QTest::newRow("one hand with both") << OneHand << CarryLoad{kg(30), kg(30), {}};
        QTest::newRow("one hand with none") << OneHand << CarryLoad{};
        QTest::newRow("one hand with a bar") << OneHand << CarryLoad{kg(30), {}, kg(30)};
        QTest::newRow("yoke in a hand") << Yoke << CarryLoad{kg(30), {}, {}};
        QTest::newRow("hex bar in two hands") << HexBar << CarryLoad{kg(30), kg(30), {}};
        QTest::newRow("front with nothing") << Front << CarryLoad{};
        QTest::newRow("overhead with a hand too") << Overhead << CarryLoad{{}, kg(30), kg(30)};
    }
    void loadGoesWithItsKind()
    {
        QFETCH(CarryKind, kind);
        QFETCH(CarryLoad, load);
        QCOMPARE(carryDone({kind, load, {lap(20)}, 0}).error(), (Error{Refusal::OutOfRange, "load"}));
    }

    void refusals()
    {
        const CarryLoad good{{}, {}, kg(30)};
        QCOMPARE(whatOf(carryDone({Front, {{}, {}, kg(0)}, {lap(20)}, 0})), std::string("mass"));
        QCOMPARE(whatOf(carryDone({Front, good, {lap(-1)}, 0})), std::string("distance"));
        QCOMPARE(whatOf(carryDone({Front, good, {lap(notANumber)}, 0})), std::string("distance"));
        QCOMPARE(whatOf(carryDone({Front, good, {timedLap(20, 0)}, 0})), std::string("time"));
        QCOMPARE(whatOf(carryDone({Front, good, {{exactly(metres(20)), {}, -1}}, 0})), std::string("drops"));
        QCOMPARE(whatOf(carryDone({Front, good, {lap(20)}, -1})), std::string("laps left out"));
        QCOMPARE(carryDone({Front, good, {}, 3})->all.value.si(), 0.0);
        QCOMPARE(carryDone({Front, good, {lap(0)}, 0})->lapsGone, 0);
    }

    void oneLegLiftsBodyAndLoad()
    {
        const auto system = systemLoad(kg(40, 0.3), kg(70, 0.4), RearFoot::Free);
        QCOMPARE(system->value, kilograms(110));
        VERIFY_NEAR_SHARE(system->u().si(), 0.5, 1e-15);
        QVERIFY(!systemLoad(kg(40), kg(70), RearFoot::Supported) && !systemLoad(kg(40), std::nullopt, RearFoot::Free));
    }
};

QTEST_APPLESS_MAIN(TestCarry)
#include "test_carry.moc"
