// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/itemorigin.h"

#include "core/work/measuredkit.h"
#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <algorithm>
#include <cmath>
#include <numeric>
#endif

using namespace steelyard;

namespace {

const ItemInputLine* line(const ItemOrigin& origin, ItemInput input)
{
    const auto at = std::find_if(origin.lines.begin(), origin.lines.end(), [input](const ItemInputLine& l) { return l.input == input; });
    return at == origin.lines.end() ? nullptr : &*at;
}

double sharesOf(const ItemOrigin& origin)
{
    return std::accumulate(origin.lines.begin(), origin.lines.end(), 0.0, [](double sum, const ItemInputLine& l) { return sum + l.share; });
}

}

/// Where the number of a chain or a band comes from.
class ItemOriginTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void weighedChain();
    void gaugedChain();
    void band();
    void bandOfFewReadings();
    void benchAid();
    void machineByRadius();
    void machineByPull();
    void scale();
    void ironByThePiece();
    void strap();
    void holeOfARack();
    void anchorOfARack();
    void nothingToTell();
};

void ItemOriginTest::weighedChain()
{
    const auto origin = originOf(samples::weighed());
    QVERIFY(origin.has_value());
    const auto& number = std::get<ChainNumber>(origin->number);
    VERIFY_NEAR_SHARE(number.value.si(), 8.55 / 1.5, 1e-12);
    // a scale that reads in tenths: half a step either way, rectangular (JCGM 100:2008, 4.3.7)
    VERIFY_NEAR_SHARE(number.giveOrTake.si(), 1.959963984540054 * 0.1 / std::sqrt(12.0) / 1.5, 1e-9);
    QVERIFY(line(*origin, ItemInput::ChainMass) && line(*origin, ItemInput::ScaleStep) && !line(*origin, ItemInput::ScaleError));
    VERIFY_NEAR_SHARE(line(*origin, ItemInput::ScaleStep)->share, 1.0, 1e-9);
    VERIFY_NEAR_SHARE(sharesOf(*origin), 1.0, 1e-9);
    // a centimetre more of length is so much less by the metre
    VERIFY_NEAR_SHARE(*line(*origin, ItemInput::ChainLength)->moreByStepRatio, 1.5 / 1.51 - 1, 1e-9);
}

void ItemOriginTest::gaugedChain()
{
    const auto origin = originOf(samples::gauged());
    QVERIFY(origin.has_value());
    const auto& number = std::get<ChainNumber>(origin->number);
    VERIFY_NEAR_SHARE(number.giveOrTake / number.value, 1.959963984540054 * 0.03, 1e-9);
    QCOMPARE(line(*origin, ItemInput::Method)->share, 1.0);
    QCOMPARE(sharesOf(*origin), 1.0);
    // the formula of the header worked out by hand in Python, 0.1 mm more each
    VERIFY_NEAR_SHARE(number.value.si(), 5.784562836055258, 1e-9);
    VERIFY_NEAR_SHARE(*line(*origin, ItemInput::Wire)->moreByStepRatio, 0.014467822123780172, 1e-7);
    VERIFY_NEAR_SHARE(*line(*origin, ItemInput::Pitch)->moreByStepRatio, -0.0010073031364318252, 1e-7);
    VERIFY_NEAR_SHARE(*line(*origin, ItemInput::InnerWidth)->moreByStepRatio, 0.0006921936516770533, 1e-7);
    QVERIFY(line(*origin, ItemInput::GaugedLength) && !line(*origin, ItemInput::ScaleStep));
}

void ItemOriginTest::band()
{
    const auto origin = originOf(samples::band());
    QVERIFY(origin.has_value());
    const auto& number = std::get<BandNumber>(origin->number);
    QCOMPARE(number.at.si(), 1.95);
    QCOMPARE(number.readingCount, std::size_t(6));
    QVERIFY(number.model == BandModel::Rubber);
    // normal equations in exact fractions (Python) on the same points, and on the same with the rest length read a centimetre longer
    VERIFY_NEAR_SHARE(number.pull.si(), 171.67257512909634, 1e-9);
    VERIFY_NEAR_SHARE(*line(*origin, ItemInput::BandRest)->moreByStepRatio, -0.002981332746432753, 1e-6);
    QVERIFY(number.giveOrTake == bandGiveOrTake(*bandFitFrom(samples::band()), metres(1.95)));
    VERIFY_NEAR_SHARE(line(*origin, ItemInput::BandReadings)->share, 1.0, 1e-9);
    QVERIFY(!line(*origin, ItemInput::FewReadings));
}

void ItemOriginTest::bandOfFewReadings()
{
    // two readings and two coefficients: what is left is the floor
    const auto origin = originOf(samples::band(1.0, {{10, 1.37}, {15, 1.72}}));
    QVERIFY(origin.has_value());
    QVERIFY(line(*origin, ItemInput::FewReadings));
    QVERIFY(line(*origin, ItemInput::FewReadings)->share > 0.99);
    VERIFY_NEAR_SHARE(sharesOf(*origin), 1.0, 1e-9);
}

void ItemOriginTest::benchAid()
{
    const auto origin = originOf(samples::aid());
    QVERIFY(origin.has_value());
    const auto& number = std::get<AidNumber>(origin->number);
    QCOMPARE(number.aboveChest.si(), 0.0);
    QCOMPARE(number.readingCount, std::size_t(5));
    // 62.5 kg at the chest, by g0 (CGPM 1901)
    VERIFY_NEAR_SHARE(number.help.si(), 62.5 * 9.80665, 1e-12);
    // SciPy's u at the chest, the tape's part by its slope there
    const double u = 48.11532307081529, plates = 62.5 * 9.80665 * 0.02 / std::sqrt(3.0);
    VERIFY_NEAR_SHARE(number.giveOrTake.si(), 1.959963984540054 * u, 1e-9);
    VERIFY_NEAR_SHARE(line(*origin, ItemInput::AidPlates)->share, plates * plates / (u * u), 1e-9);
    VERIFY_NEAR_SHARE(sharesOf(*origin), 1.0, 1e-9);
}

void ItemOriginTest::machineByRadius()
{
    MachineMeasurement machine;
    machine.stack = kilograms(40);
    const auto degrees = [](double angle) { return Angle{angle * std::acos(-1.0) / 180}; };
    for (const auto& [angle, radius] : {std::pair{0.0, 0.08}, {35.0, 0.1}, {70.0, 0.12}, {110.0, 0.09}})
        machine.readings.push_back({degrees(angle), metres(radius), {}, {}});
    const auto origin = originOf(machine);
    QVERIFY(origin.has_value());
    const auto& number = std::get<TorqueNumber>(origin->number);
    VERIFY_NEAR(number.at.radians, 70 * std::acos(-1.0) / 180, 1e-12);
    // M·g0·r, statics: 40 · 9.80665 · 0.12; u by 2 %/√3 of it and by 2 mm of radius, the curve being level at its greatest
    const double torque = 40 * 9.80665 * 0.12, stack = torque * 0.02 / std::sqrt(3.0), ruler = 40 * 9.80665 * 0.002;
    VERIFY_NEAR_SHARE(number.value.newtonMetres, torque, 1e-12);
    VERIFY_NEAR_SHARE(number.giveOrTake.newtonMetres, 1.959963984540054 * std::hypot(stack, ruler), 1e-9);
    VERIFY_NEAR_SHARE(line(*origin, ItemInput::Stack)->share, stack * stack / (stack * stack + ruler * ruler), 1e-9);
    VERIFY_NEAR_SHARE(*line(*origin, ItemInput::Radius)->moreByStepRatio, 0.001 / 0.12, 1e-9);
    VERIFY_NEAR(line(*origin, ItemInput::TurnedAngle)->share, 0.0, 1e-9);
    VERIFY_NEAR_SHARE(sharesOf(*origin), 1.0, 1e-9);
    machine.stack.reset();
    QVERIFY(!originOf(machine));
}

void ItemOriginTest::machineByPull()
{
    MachineMeasurement machine;
    machine.by = MachineMeasuring::Pull;
    machine.stack = kilograms(40);
    machine.scaleStep = kilograms(0.5);
    for (const auto& [travel, pull] : {std::pair{0.0, 20.0}, {0.2, 31.0}, {0.4, 36.0}, {0.6, 30.0}})
        machine.readings.push_back({{}, {}, metres(travel), kilograms(pull)});
    const auto origin = originOf(machine);
    QVERIFY(origin.has_value());
    const auto& number = std::get<TravelNumber>(origin->number);
    QCOMPARE(number.at.si(), 0.4);
    VERIFY_NEAR_SHARE(number.pull.si(), 36 * 9.80665, 1e-12);
    // level at its greatest: all of it is the scale's step, d/√12 (JCGM 100:2008, 4.3.7)
    VERIFY_NEAR_SHARE(number.giveOrTake.si(), 1.959963984540054 * 0.5 / std::sqrt(12.0) * 9.80665, 1e-9);
    VERIFY_NEAR_SHARE(line(*origin, ItemInput::PullScale)->share, 1.0, 1e-9);
    VERIFY_NEAR_SHARE(sharesOf(*origin), 1.0, 1e-9);
}

void ItemOriginTest::scale()
{
    const ScaleMeasurement scale{kilograms(0.1), kilograms(0.1), {{kilograms(10), kilograms(10.2)}, {kilograms(20), kilograms(20.3)}}};
    const auto origin = originOf(scale);
    QVERIFY(origin.has_value());
    const auto& number = std::get<ScaleNumber>(origin->number);
    // 20.3 − 0.1 − 20
    VERIFY_NEAR(number.error.si(), 0.2, 1e-12);
    QCOMPARE(number.at.si(), 20.0);
    VERIFY_NEAR(number.accuracy.si(), 0.2, 1e-12);
    // two readings of a step, each d/√12 (JCGM 100:2008, 4.3.7)
    VERIFY_NEAR_SHARE(number.giveOrTake.si(), 1.959963984540054 * 0.1 / std::sqrt(6.0), 1e-9);
    VERIFY_NEAR_SHARE(sharesOf(*origin), 1.0, 1e-9);
}

void ItemOriginTest::ironByThePiece()
{
    const auto origin = originOf(IronMeasurement{IronSort::Plates, kilograms(20), kilograms(40.6), kilograms(0.1), kilograms(0.2), 2});
    QVERIFY(origin.has_value());
    const auto& number = std::get<IronNumber>(origin->number);
    QCOMPARE(number.count, 2);
    VERIFY_NEAR(number.each.si(), 20.3, 1e-12);
    // √(0.1²/12 + 0.2²/3)/2
    const double u = std::sqrt(0.01 / 12 + 0.04 / 3) / 2;
    VERIFY_NEAR_SHARE(number.giveOrTake.si(), 1.959963984540054 * u, 1e-9);
    VERIFY_NEAR_SHARE(line(*origin, ItemInput::ScaleStep)->share, 0.01 / 12 / (0.01 / 12 + 0.04 / 3), 1e-9);
    VERIFY_NEAR_SHARE(sharesOf(*origin), 1.0, 1e-9);
    QVERIFY(line(*origin, ItemInput::IronCount) && line(*origin, ItemInput::IronMark));
    const auto bar = originOf(IronMeasurement{IronSort::Bar, kilograms(20), kilograms(20.3), kilograms(0.1), {}, 1});
    QVERIFY(bar && !line(*bar, ItemInput::IronCount) && !line(*bar, ItemInput::ScaleError));
}

void ItemOriginTest::strap()
{
    const auto origin = originOf(LeadMeasurement{metres(0.62), kilograms(0.35)});
    QVERIFY(origin.has_value());
    const auto& number = std::get<LeadNumber>(origin->number);
    QCOMPARE(number.length.si(), 0.62);
    VERIFY_NEAR_SHARE(number.giveOrTake.si(), 1.959963984540054 * 0.01, 1e-9);
    QVERIFY(line(*origin, ItemInput::LeadLength) && line(*origin, ItemInput::LeadMass));
}

void ItemOriginTest::holeOfARack()
{
    const auto origin = originOf(RackMeasurement{metres(0.415), metres(0.05), 28, {metres(0.06)}});
    QVERIFY(origin.has_value());
    const auto& number = std::get<RackNumber>(origin->number);
    QCOMPARE(number.hole, 28);
    // 41.5 + 27 · 5
    VERIFY_NEAR(number.height.si(), 1.765, 1e-9);
    VERIFY_NEAR_SHARE(*line(*origin, ItemInput::HoleSpacing)->moreByStepRatio, 0.027 / 1.765, 1e-9);
    VERIFY_NEAR_SHARE(*line(*origin, ItemInput::FirstHole)->moreByStepRatio, 0.01 / 1.765, 1e-9);
    const auto one = originOf(RackMeasurement{metres(0.9), {}, 1, {}});
    QVERIFY(one && !line(*one, ItemInput::HoleSpacing));
}

void ItemOriginTest::anchorOfARack()
{
    const auto origin = originOf(RackMeasurement{{}, {}, 0, {metres(2.14), metres(0.06)}});
    QVERIFY(origin.has_value());
    const auto& number = std::get<RackNumber>(origin->number);
    QCOMPARE(number.hole, 0);
    QCOMPARE(number.height.si(), 0.06);
    QVERIFY(line(*origin, ItemInput::AnchorRead));
}

void ItemOriginTest::nothingToTell()
{
    for (int kind = 0; kind <= static_cast<int>(lastItemKind); ++kind)
        QVERIFY(!originOf(notYetMeasured(static_cast<ItemKind>(kind))));
    QVERIFY(!originOf(LeadMeasurement{{}, kilograms(0.3)}));
    ChainMeasurement half = samples::weighed();
    half.scaleStep.reset();
    QVERIFY(!originOf(half));
}

QTEST_APPLESS_MAIN(ItemOriginTest)
#include "test_itemorigin.moc"
