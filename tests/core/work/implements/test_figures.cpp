// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/implements/figures.h"
#include "core/work/implements/implementmass.h"
#include "core/work/strength/standing.h"
#include "tests/core/near.h"
#include "tests/core/refused.h"
#include "tests/core/work/implements/pitch.h"

#include <QtTest>
#endif

using namespace steelyard;
using namespace pitch;
using steelyard::tests::whatOf;

namespace {

KnownMaximum deadlift(double lowestKg)
{
    return {deadliftId, true, kilograms(lowestKg), kilograms(lowestKg + 5), kilograms(2), std::chrono::sys_days{}, true};
}

Athlete weighing(double kg)
{
    Athlete athlete;
    athlete.sizes = {{{}, {}, kilograms(kg), std::nullopt}};
    return athlete;
}

}

/// What implements come to of one athlete: a flip, a carry, a bell in the hand.
class FiguresTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // flat, half of it is lifted at the near edge: (Mg/2)(1 − (w/D)·tan 0)
    void flips()
    {
        const auto figures = flipFigures(borrowed::tyreOf(120), deadlift(140));
        QVERIFY(figures);
        VERIFY_NEAR_SHARE(figures->start.vertical.number(), 60 * 9.80665, 1e-12);
        VERIFY_NEAR_SHARE(figures->flip.balance().value.radians, std::atan(1.18 / 0.36), 1e-12);
        const double give = 1.959963984540054 * 0.5 / std::sqrt(12.0);
        VERIFY_NEAR_SHARE(*figures->massPercent, (120 + give) / 140 * 100, 1e-9);
        VERIFY_NEAR_SHARE(*figures->startPercent, (120 + give) / 2 / 140 * 100, 1e-9);
        QVERIFY(!flipFigures(borrowed::tyreOf(120), std::nullopt)->massPercent);
        QCOMPARE(whatOf(flipFigures(borrowed::unknownTyre(), std::nullopt)), std::string("mass"));
        TyreMeasurement noSize = borrowed::tyre();
        noSize.width.reset();
        QCOMPARE(whatOf(flipFigures(noSize, std::nullopt)), std::string("width"));
        noSize.diameter.reset();
        QCOMPARE(whatOf(flipFigures(noSize, std::nullopt)), std::string("diameter"));
    }

    // the worked example of carries: handles of 8.5 kg with 20 kg on each, two runs of 30 m, at 72 kg of body mass
    void farmersCarry()
    {
        CarryMeasurement m = borrowed::handles(8.5);
        m.whole.step = kilograms(0);
        const auto load = carryLoad(m, kilograms(20));
        QVERIFY(load && load->left && load->right && !load->whole);
        Carry carry{CarryKind::Farmers, *load, {{exactly(metres(30)), exactly(Seconds(24)), 0}, {exactly(metres(30)), exactly(Seconds(25)), 0}}, 0};
        const auto figures = carryFigures(carry, weighing(72), {}, deadlift(114));
        QVERIFY(figures);
        VERIFY_NEAR_SHARE(figures->done.all.number(), 3420, 1e-12);
        VERIFY_NEAR_SHARE(figures->done.speed->number(), 1.2245, 5e-4);
        VERIFY_NEAR_SHARE(figures->bodyPercent->number(), 79.167, 5e-4);
        VERIFY_NEAR_SHARE(figures->deadliftPercent->number(), 50, 1e-12);
        // body mass is up to a kilogram off; plates by their mark in both hands are out alike
        const double u = 2 * 20 * 0.02 / std::sqrt(3.0);
        VERIFY_NEAR_SHARE(figures->bodyPercent->u(), 79.1666667 * std::hypot(u / 57, 1 / 72.0), 1e-6);
        const auto unknown = carryFigures(carry, Athlete{}, {}, std::nullopt);
        QVERIFY(unknown && !unknown->bodyPercent && !unknown->deadliftPercent);
    }

    // one handle was weighed, so both are out alike, by the scale's step too
    void handlesShareTheirError()
    {
        const auto load = carryLoad(borrowed::handles(8.5), Mass{});
        const auto done = carryDone({CarryKind::Farmers, *load, {{exactly(metres(30)), std::nullopt, 0}}, 0});
        VERIFY_NEAR_SHARE(done->load.u().si(), 2 * 0.1 / std::sqrt(12.0), 1e-12);
    }

    void hands()
    {
        CarryMeasurement one = borrowed::handles(10);
        one.sort = CarrySort::OneHandle;
        QVERIFY(carryLoad(one, kilograms(10), Limbs::Left)->left && !carryLoad(one, kilograms(10), Limbs::Left)->right);
        QVERIFY(carryLoad(one, kilograms(10), Limbs::Right)->right);
        QCOMPARE(whatOf(carryLoad(one, kilograms(10))), std::string("hand"));
        for (const CarrySort sort : {CarrySort::HexBar, CarrySort::Yoke, CarrySort::Frame}) {
            one.sort = sort;
            QCOMPARE(carryLoad(one, kilograms(0))->whole->number(), 10.0);
        }
        QCOMPARE(static_cast<int>(carryKindOf(CarrySort::Yoke)), static_cast<int>(CarryKind::Yoke));
        QCOMPARE(whatOf(carryLoad(CarryMeasurement{}, kilograms(10))), std::string("mass"));
        QVERIFY(!carryLoad(one, kilograms(-1)));
    }

    void kegsAndBells()
    {
        KegMeasurement keg = borrowed::lyingKeg();
        QVERIFY(mayBeLifted(keg));
        for (const KegPressure pressure : {KegPressure::NotKnown, KegPressure::Holding}) {
            keg.pressure = pressure;
            QVERIFY(!mayBeLifted(keg));
        }
        keg.sort = KegSort::Sandbag;
        QVERIFY(mayBeLifted(keg));
        BellMeasurement bell = borrowed::kettlebell();
        bell.twoHands = HandFit::DoesNotFit;
        QVERIFY(fitOf(bell, gripOf(LiftId{27})) == HandFit::DoesNotFit && fitOf(bell, gripOf(LiftId{29})) == HandFit::Fits);
    }
};

QTEST_APPLESS_MAIN(FiguresTest)
#include "test_figures.moc"
