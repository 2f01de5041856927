// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/booking/volume.h"
#include "tests/core/near.h"
#include "tests/core/refused.h"

#include <rapidcheck.h>

using namespace steelyard;

namespace {

using Sets = std::vector<LiftedSet>;

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

Estimate<Mass> kg(double mass, double u = 0, std::uint64_t source = 0) { return within(kilograms(mass), kilograms(u), SourceId{source}); }

LiftedSet set(int reps, double load)
{
    LiftedSet s;
    s.reps = reps;
    s.load = PathLoad::constant(kg(load));
    return s;
}

LiftedSet bodySet(int reps, double load, double body)
{
    LiftedSet s = set(reps, load);
    s.bodyInLoad = BodyInLoad::Whole;
    s.body = kg(body);
    return s;
}

BookedVolume booked(const Sets& sets) { return *bookedVolume(sets); }

std::string whatOf(const LiftedSet& s) { return tests::whatOf(bookedVolume(Sets{s})); }

}

class TestVolume : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nothingIsNothing()
    {
        const auto none = booked({}), noReps = booked({set(0, 100)});
        QCOMPARE(none.all.up.mean.value, Mass{});
        QCOMPARE(noReps.all.up.reps, 0);
        QVERIFY(noReps.all.up.bottom && noReps.all.upWithBody);
    }

    void meanWithBottomAndTop()
    {
        LiftedSet chains = set(5, 0);
        chains.load = {kg(110), kg(100), kg(118)};
        const Tonnage up = booked({chains, set(3, 60)}).all.up;
        QCOMPARE(up.reps, 8);
        QCOMPARE(up.mean.value.si(), 5 * 110.0 + 180);
        QCOMPARE(up.bottom->value.si(), 5 * 100.0 + 180);
        QCOMPARE(up.top->value.si(), 5 * 118.0 + 180);
        chains.load.top.reset();
        const Tonnage unknownTop = booked({set(3, 60), chains, set(3, 60)}).all.up;
        QVERIFY(!unknownTop.top && unknownTop.bottom);
        QCOMPARE(unknownTop.mean.value.si(), 550.0 + 360);
    }

    /// Chin-ups with 10 kg on, with 20 kg of help, and a bar beside them.
    void bodyWhereItIsTheLoad()
    {
        const PhaseVolume volume = booked({bodySet(5, 10, 70), bodySet(5, -20, 70), set(5, 60)}).all;
        QCOMPARE(volume.up.mean.value.si(), 50.0 + 0 + 300);
        QCOMPARE(volume.upWithBody->mean.value.si(), 5 * 80.0 + 5 * 50.0 + 300);
        QCOMPARE(volume.upWithBody->bottom->value.si(), 950.0);
        QCOMPARE(volume.downWithBody->mean.value.si(), 950.0);
    }

    void anUnknownBodyIsNotZero()
    {
        LiftedSet supported = set(8, 30);
        supported.bodyInLoad = BodyInLoad::ShareUnknown;
        supported.body = kg(70);
        LiftedSet notWeighed = set(8, 30);
        notWeighed.bodyInLoad = BodyInLoad::Whole;
        for (const LiftedSet& s : {supported, notWeighed}) {
            const PhaseVolume volume = booked({set(5, 60), s, set(5, 60)}).all;
            QVERIFY(!volume.upWithBody && !volume.downWithBody);
            QCOMPARE(volume.up.mean.value.si(), 300.0 + 240 + 300);
        }
        supported.reps = 0;
        QVERIFY(booked({supported}).all.upWithBody);
    }

    void byLeg()
    {
        LiftedSet left = set(5, 40), right = set(4, 40);
        left.legs = Limbs::Left;
        right.legs = Limbs::Right;
        const BookedVolume volume = booked({left, right, left, set(5, 100)});
        QCOMPARE(volume.left.up.mean.value.si(), 400.0);
        QCOMPARE(volume.right.up.mean.value.si(), 160.0);
        QCOMPARE(volume.bothLegs.up.mean.value.si(), 500.0);
        QCOMPARE(volume.all.up.mean.value.si(), 1060.0);
        QCOMPARE(volume.all.up.reps, 19);
    }

    /// Release hooks on the first two reps of five; and five that only came down.
    void upAndDownApart()
    {
        LiftedSet released = set(5, 80);
        released.lowering = Lowering{2, PathLoad::constant(kg(120))};
        const PhaseVolume volume = booked({released}).all;
        QCOMPARE(volume.up.mean.value.si(), 400.0);
        QCOMPARE(volume.down.mean.value.si(), 2 * 120.0 + 3 * 80);
        QCOMPARE(volume.down.reps, 5);
        LiftedSet eccentricOnly = set(0, 0);
        eccentricOnly.lowering = Lowering{5, PathLoad::constant(kg(120))};
        QCOMPARE(booked({eccentricOnly}).all.up.mean.value.si(), 0.0);
        QCOMPARE(booked({eccentricOnly}).all.down.mean.value.si(), 600.0);
        released.lowering->reps = 0;
        QCOMPARE(booked({released}).all.down.mean.value.si(), 400.0);
    }

    /// Five reps with one bar are off five times the same; plates weighed once are, set after set.
    void uAddsStraightWhereItIsShared()
    {
        LiftedSet shared = set(5, 0), own = set(5, 0);
        shared.load = PathLoad::constant(kg(100, 0.4, 3));
        own.load = PathLoad::constant(kg(100, 0.4));
        VERIFY_NEAR_SHARE(booked({shared}).all.up.mean.u().si(), 2, 1e-14);
        VERIFY_NEAR_SHARE(booked({shared, shared}).all.up.mean.u().si(), 4, 1e-14);
        VERIFY_NEAR_SHARE(booked({own, own}).all.up.mean.u().si(), 2 * std::sqrt(2), 1e-14);
        LiftedSet chin = bodySet(5, 0, 0);
        chin.load = PathLoad::constant(kg(10, 0.3));
        chin.body = kg(70, 0.4);
        VERIFY_NEAR_SHARE(booked({chin}).all.upWithBody->mean.u().si(), 2.5, 1e-14);
    }

    void isMonotoneAndWhole()
    {
        QVERIFY(rc::check("legs add up; a rep or a kilogram more is never less; u is never below 0", [] {
            const auto any = [](int from, int to) { return *rc::gen::inRange(from, to); };
            Sets sets;
            for (int i = any(1, 8); i > 0; --i) {
                const bool isBody = any(0, 2) == 1;
                LiftedSet s = isBody ? bodySet(any(0, 12), any(-40, 40), 70) : set(any(0, 12), any(0, 200));
                s.legs = *rc::gen::element(Limbs::Both, Limbs::Left, Limbs::Right);
                if (any(0, 3) == 0)
                    s.lowering = Lowering{any(0, 12), PathLoad::constant(kg(any(100, 200), 0.5))};
                sets.push_back(s);
            }
            const BookedVolume here = booked(sets);
            const auto sum = [](const BookedVolume& b, const auto& part) { return part(b.left) + part(b.right) + part(b.bothLegs); };
            const auto up = [](const PhaseVolume& v) { return v.up.mean.value.si(); };
            const auto down = [](const PhaseVolume& v) { return v.downWithBody->mean.value.si(); };
            RC_ASSERT(tests::near(sum(here, up), up(here.all), 1e-9) && tests::near(sum(here, down), down(here.all), 1e-9));
            Sets heavier = sets, longer = sets;
            heavier.front().load = PathLoad::constant(kg(sets.front().load.mean.value.si() + 5));
            ++longer.front().reps;
            for (const Sets& more : {heavier, longer})
                RC_ASSERT(up(booked(more).all) >= up(here.all) && booked(more).all.upWithBody->mean.value >= here.all.upWithBody->mean.value);
            RC_ASSERT(here.all.down.mean.u().si() >= 0);
        }));
    }

    void refusals()
    {
        QCOMPARE(whatOf(set(-1, 100)), std::string("reps"));
        QCOMPARE(whatOf(set(std::numeric_limits<int>::max(), 100)), std::string("reps"));
        QCOMPARE(whatOf(set(5, -1)), std::string("load"));
        QCOMPARE(whatOf(set(5, notANumber)), std::string("load"));
        QCOMPARE(whatOf(bodySet(5, 10, 0)), std::string("body mass"));
        QCOMPARE(whatOf(bodySet(5, -71, 70)), std::string("load"));
        QCOMPARE(whatOf(bodySet(5, -70, 70)), std::string("nothing"));
        LiftedSet s = set(5, 100);
        s.load.top = kg(notANumber);
        QCOMPARE(whatOf(s), std::string("load"));
        s = set(5, 100);
        s.lowering = Lowering{-1, PathLoad::constant(kg(120))};
        QCOMPARE(whatOf(s), std::string("lowered reps"));
        s.lowering = Lowering{1, PathLoad::constant(kg(-120))};
        QCOMPARE(whatOf(s), std::string("load"));
    }
};

QTEST_APPLESS_MAIN(TestVolume)
#include "test_volume.moc"
