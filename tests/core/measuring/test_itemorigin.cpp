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

void ItemOriginTest::nothingToTell()
{
    for (int kind = 0; kind <= static_cast<int>(ItemKind::Rack); ++kind)
        QVERIFY(!originOf(notYetMeasured(static_cast<ItemKind>(kind))));
    QVERIFY(!originOf(LeadMeasurement{metres(0.6), kilograms(0.3)}));
    ChainMeasurement half = samples::weighed();
    half.scaleStep.reset();
    QVERIFY(!originOf(half));
}

QTEST_APPLESS_MAIN(ItemOriginTest)
#include "test_itemorigin.moc"
