// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/heights.h"

#include "core/resistance/pullsum.h"
#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <algorithm>
#endif

using namespace steelyard;

namespace {

/// Chains and bands on both sides, marks with a zone.
WeighedUp chainsAndBands(const BarMarks& marks)
{
    const std::vector<KitItem> kit = {samples::item(2, "chains", samples::gauged()), samples::item(3, "bands", samples::band())};
    return weighUp(samples::setup(60, {samples::hung(2, samples::chainOn(0.3)), samples::hung(3, samples::bandAt(0.05))}), kit, marks, {});
}

BarMarks marksWithZone()
{
    BarMarks marks = samples::marks(1.2, 1.72);
    marks.zoneFrom = metres(1.3);
    marks.zoneTo = metres(1.45);
    return marks;
}

}

/// The picture as a table says what the picture says.
class HeightsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyMarkAndEveryStep();
    void eachLineIsThePullThere();
    void partsAddUp();
    void unknownSaysSo();
    void nothingWithoutACurve();
    void whatHelpsIsTakenOff();
};

void HeightsTest::everyMarkAndEveryStep()
{
    const auto lines = heightTable(chainsAndBands(marksWithZone()), metres(0.05));
    std::vector<int> centimetres;
    for (const HeightLine& line : lines)
        centimetres.push_back(static_cast<int>(std::lround(100 * inMetres(line.height))));
    // a mark on a step stands once
    QCOMPARE(centimetres, (std::vector<int>{172, 170, 165, 160, 155, 150, 145, 140, 135, 130, 125, 120}));
    QVERIFY(lines.front().mark == HeightMark::Top && lines.back().mark == HeightMark::Bottom);
    QVERIFY(lines[6].mark == HeightMark::ZoneTo && lines[9].mark == HeightMark::ZoneFrom);
    QCOMPARE(std::count_if(lines.begin(), lines.end(), [](const HeightLine& line) { return line.mark == HeightMark::None; }), 8);
}

void HeightsTest::eachLineIsThePullThere()
{
    const WeighedUp answer = chainsAndBands(marksWithZone());
    const PullSum sum(*answer.setup);
    for (const HeightLine& line : heightTable(answer, metres(0.05))) {
        QVERIFY(line.known);
        const Reading there = sum.at(line.height);
        QCOMPARE(line.total.value.si(), there.value.si());
        QCOMPARE(line.total.giveOrTake.si(), there.giveOrTake.si());
    }
    const auto lines = heightTable(answer, metres(0.05));
    QCOMPARE(lines.front().total.value.si(), answer.curve->top->value.si());
    QCOMPARE(lines.back().total.value.si(), answer.curve->bottom->value.si());
}

void HeightsTest::partsAddUp()
{
    for (const HeightLine& line : heightTable(chainsAndBands(marksWithZone()), metres(0.05))) {
        double sum = line.iron.si();
        std::vector<PullKind> kinds;
        for (const PullOfKind& of : line.hung) {
            sum += of.pull.si();
            kinds.push_back(of.kind);
            QVERIFY(of.u.si() > 0 || of.pull.si() == 0);
        }
        VERIFY_NEAR_SHARE(sum, line.total.value.si(), 1e-12);
        QVERIFY(kinds == (std::vector<PullKind>{PullKind::Chain, PullKind::Band}));
    }
}

void HeightsTest::unknownSaysSo()
{
    BarMarks high = samples::marks(1.2, 2.4);
    const auto lines = heightTable(chainsAndBands(high), metres(0.1));
    QVERIFY(!lines.empty());
    // the band was not measured so far
    QVERIFY(!lines.front().known && lines.front().total.value == Force{});
    QVERIFY(lines.back().known);
}

void HeightsTest::nothingWithoutACurve()
{
    QVERIFY(heightTable(WeighedUp{}, metres(0.05)).empty());
    QVERIFY(heightTable(chainsAndBands(BarMarks{}), metres(0.05)).empty());
    QVERIFY(heightTable(chainsAndBands(marksWithZone()), Length{}).empty());
    QVERIFY(heightTable(chainsAndBands(marksWithZone()), metres(-1)).empty());
}

void HeightsTest::whatHelpsIsTakenOff()
{
    const std::vector<KitItem> kit = {samples::item(3, "bands", samples::band())};
    BandPlacing above = samples::bandAt(2.3);
    above.above = true;
    const auto lines = heightTable(weighUp(samples::setup(100, {samples::hung(3, above)}), kit, samples::marks(0.9, 1.3), {}), metres(0.1));
    QVERIFY(!lines.empty());
    for (const HeightLine& line : lines)
        if (line.known && !line.hung.empty())
            QVERIFY(line.hung.front().pull.si() <= 0 && line.total.value.si() <= line.iron.si());
}

QTEST_APPLESS_MAIN(HeightsTest)
#include "test_heights.moc"
