// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuredkit.h"
#include "core/work/weighup.h"

#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <algorithm>
#include <numbers>
#endif

using namespace steelyard;

namespace {

const HungBand& bandIn(const std::vector<HungItem>& side, std::size_t at = 0) { return std::get<HungBand>(side.at(at)); }

double kg(const std::optional<Reading>& reading) { return reading ? asMass(reading->value).si() : -1; }

bool hasAt(const PullCurve& curve, SetupWarningCode code, double height)
{
    return std::any_of(curve.warnings.begin(), curve.warnings.end(),
                       [&](const SetupWarning& w) { return w.code == code && w.height && std::abs(w.height->si() - height) < 1e-9; });
}

/// 20 kg bar, 0.5 kg of collars, 60 kg of exact plates, and the 5.7 kg/m chain doubled on a lead of 0.80 m.
SetupRecord doubledOnALead(double leadMass)
{
    ChainPlacing placing = samples::chainOn(0.80, ChainHangingWay::Doubled);
    placing.leadMass = kilograms(leadMass);
    SetupRecord record = samples::setup(80.5, {samples::hung(1, placing)});
    record.bar.collars = kilograms(0.5);
    return record;
}

}

/// Things of the kit come to hang as they were entered: on their sides, from their own measurement, over the right path.
class HangersTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void shortAndTallLifter();
    void marksAndScaleMakeTheGiveOrTake();
    void floorLiftStartsAtTheLargestPlate();
    void sameAsASetUpBuiltByHand();
    void onlyTheSecondOfAPairStandsOnItsTwin_data();
    void onlyTheSecondOfAPairStandsOnItsTwin();
    void noMoreThanThereIs_data();
    void noMoreThanThereIs();
    void sidesAreTold();
    void twoKindsAreTwoSources();
};

void HangersTest::shortAndTallLifter()
{
    // worked by hand: per side 2 · 5.7 · clamp(h − 0.80, 0, 0.75), the mean by its areas
    const std::vector<KitItem> kit = {samples::item(1, "Chain", samples::weighed())};
    BarMarks low = samples::marks(0.77, 1.27), tall = samples::marks(0.94, 1.60);
    low.zoneFrom = metres(0.88);
    low.zoneTo = metres(1.02);
    tall.zoneFrom = metres(1.10);
    tall.zoneTo = metres(1.28);

    const auto a = weighUp(doubledOnALead(0), kit, low, {}), b = weighUp(doubledOnALead(0), kit, tall, {});
    VERIFY_NEAR_SHARE(kg(a.curve->bottom), 80.5, 5e-4);
    VERIFY_NEAR_SHARE(kg(a.curve->zone), 83.92, 5e-4);
    VERIFY_NEAR_SHARE(kg(a.curve->top), 91.216, 5e-4);
    VERIFY_NEAR_SHARE(kg(a.curve->mean), 85.5365, 5e-4);
    VERIFY_NEAR_SHARE(asMass(*a.curve->twoPointMean).si(), 85.858, 5e-4);
    VERIFY_NEAR_SHARE(a.curve->work->si(), 419.41, 5e-4);
    QVERIFY(hasAt(*a.curve, SetupWarningCode::FirstLinkUp, 0.80));
    VERIFY_NEAR_SHARE(kg(b.curve->bottom), 83.692, 5e-4);
    VERIFY_NEAR_SHARE(kg(b.curve->zone), 89.392, 5e-4);
    VERIFY_NEAR_SHARE(kg(b.curve->top), 97.6, 5e-4);
    VERIFY_NEAR_SHARE(kg(b.curve->mean), 91.1728, 5e-4);
    QVERIFY(hasAt(*b.curve, SetupWarningCode::LastLinkOff, 1.55));

    const auto c = weighUp(doubledOnALead(0.4), kit, low, {}), d = weighUp(doubledOnALead(0.4), kit, tall, {});
    VERIFY_NEAR_SHARE(kg(c.curve->bottom), 81.27, 5e-4);
    VERIFY_NEAR_SHARE(kg(c.curve->mean), 86.3356, 5e-4);
    VERIFY_NEAR_SHARE(kg(d.curve->top), 98.4, 5e-4);
}

void HangersTest::marksAndScaleMakeTheGiveOrTake()
{
    const std::vector<KitItem> kit = {samples::item(1, "Chain", samples::weighed())};
    const auto low = weighUp(doubledOnALead(0), kit, samples::marks(0.77, 1.27), {});
    const auto tall = weighUp(doubledOnALead(0), kit, samples::marks(0.94, 1.60), {});
    // the scale's step on four strands, and 22.8 kg/m · 1 cm while the chain moves; none of it while slack or run out
    QCOMPARE(low.curve->bottom->u.si(), 0.0);
    VERIFY_NEAR(asMass(low.curve->top->u).si(), 0.2309, 5e-5);
    VERIFY_NEAR(asMass(tall.curve->bottom->u).si(), 0.2283, 5e-5);
    VERIFY_NEAR(asMass(tall.curve->top->u).si(), 0.05774, 5e-6);
}

void HangersTest::floorLiftStartsAtTheLargestPlate()
{
    ChainMeasurement chain = samples::weighed();
    chain.length = metres(1.1);
    chain.mass = kilograms(5.7 * 1.1);
    const std::vector<KitItem> kit = {samples::item(1, "Chain", chain)};
    BarMarks marks;
    marks.start = LiftStart::Floor;
    marks.top = metres(0.72);
    marks.bottom = metres(0.50); // an old entry: the plates decide

    SetupRecord record = samples::setup(80, {samples::hung(1, ChainPlacing{})});
    auto up = weighUp(record, kit, marks, {});
    QCOMPARE(up.path->bottom.si(), 0.225);
    VERIFY_NEAR_SHARE(kg(up.curve->bottom), 82.565, 5e-4);
    VERIFY_NEAR_SHARE(kg(up.curve->top), 88.208, 5e-4);
    VERIFY_NEAR_SHARE(kg(up.curve->mean), 85.3865, 5e-4);
    VERIFY_NEAR_SHARE(up.curve->work->si(), 414.49, 5e-4);

    // the same 80 kg of tens only, as tall as 32.5 cm
    record.bar.stock = {{usualStock()[3].type, 6}};
    up = weighUp(record, kit, marks, {});
    QCOMPARE(up.load->eachSide.size(), std::size_t(3));
    QCOMPARE(up.path->bottom.si(), 0.1625);
    VERIFY_NEAR_SHARE(kg(up.curve->bottom), 81.8525, 5e-4);
    VERIFY_NEAR_SHARE(kg(up.curve->mean), 85.0303, 5e-4);
    VERIFY_NEAR_SHARE(up.curve->work->si(), 464.88, 5e-4);

    marks.blocks = metres(0.10);
    up = weighUp(record, kit, marks, {});
    QCOMPARE(up.path->bottom.si(), 0.2625);
    // from the floor nobody takes the bar off a rack
    marks.rack = metres(0.4);
    up = weighUp(record, kit, marks, {});
    QVERIFY(!up.path->rack && !up.curve->rack);
}

void HangersTest::sameAsASetUpBuiltByHand()
{
    const std::vector<KitItem> kit = {samples::item(4, "Chain", samples::gauged()), samples::item(7, "Band", samples::band())};
    ChainPlacing bunched = samples::chainOn(0.55, ChainHangingWay::Bunched);
    bunched.bunch = metres(0.25);
    bunched.leadMass = kilograms(0.3);
    BandPlacing slanted = samples::bandAt(0.10);
    slanted.offset = metres(-0.15);
    SetupRecord record = samples::setup(102.5, {samples::hung(4, bunched), samples::hung(7, slanted, HungOn::LeftOnly), samples::hung(7, slanted, HungOn::RightOnly)});
    record.bar.trust = PlateTrust::Unweighed;
    record.bar.collars = kilograms(2.5);
    BarMarks marks = samples::marks(0.80, 1.40);
    marks.zoneFrom = metres(0.95);
    marks.zoneTo = metres(1.10);
    marks.rack = metres(1.32);
    const auto up = weighUp(record, kit, marks, {});
    QVERIFY(up.curve.has_value());

    Setup byHand;
    byHand.bar = kilograms(20);
    byHand.collars = kilograms(2.5);
    byHand.plates = kilograms(80);
    byHand.uIron = kilograms(0.02 / std::sqrt(3.0) * 80);
    ChainHang chainHang;
    chainHang.how = ChainHanging::Bunched;
    chainHang.lead = metres(0.55);
    chainHang.leadMass = kilograms(0.3);
    chainHang.bunch = metres(0.25);
    auto chain = chainFrom(samples::gauged(), SourceId{4});
    BandHang bandHang;
    bandHang.anchorHeight = metres(0.10);
    bandHang.offset = metres(-0.15);
    const auto fit = bandFitFrom(samples::band());
    for (auto* side : {&byHand.left, &byHand.right}) {
        side->emplace_back(*HungChain::of(*chain, chainHang));
        side->emplace_back(*HungBand::of(Band{*fit, SourceId{7}, side == &byHand.right, false}, bandHang));
    }
    byHand.path = {metres(0.80), metres(1.40), metres(0.95), metres(1.10), metres(1.32), metres(0.01)};
    const auto expected = pullCurve(byHand);
    QVERIFY(expected.ok());

    const auto sameReading = [](const std::optional<Reading>& a, const std::optional<Reading>& b) {
        return a && b && a->value == b->value && a->u == b->u && a->giveOrTake == b->giveOrTake;
    };
    QVERIFY(sameReading(up.curve->bottom, expected->bottom));
    QVERIFY(sameReading(up.curve->zone, expected->zone));
    QVERIFY(sameReading(up.curve->top, expected->top));
    QVERIFY(sameReading(up.curve->rack, expected->rack));
    QVERIFY(sameReading(up.curve->mean, expected->mean));
    QCOMPARE(up.curve->work->si(), expected->work->si());
    QCOMPARE(up.curve->anchorPull->si(), expected->anchorPull->si());
    QVERIFY(up.curve->warnings == expected->warnings);
    QVERIFY(std::equal(up.curve->samples.begin(), up.curve->samples.end(), expected->samples.begin(), expected->samples.end(),
                       [](const CurveSample& a, const CurveSample& b) { return a.height == b.height && a.total == b.total && a.u == b.u; }));
}

void HangersTest::onlyTheSecondOfAPairStandsOnItsTwin_data()
{
    QTest::addColumn<bool>("pair");
    QTest::addColumn<int>("ways");
    QTest::addColumn<bool>("leftTwin");
    QTest::addColumn<bool>("rightTwin");
    QTest::newRow("both sides") << true << 0 << false << true;
    QTest::newRow("left, then right") << true << 1 << false << true;
    QTest::newRow("right, then left") << true << 2 << true << false;
}

void HangersTest::onlyTheSecondOfAPairStandsOnItsTwin()
{
    QFETCH(bool, pair);
    QFETCH(int, ways);
    QFETCH(bool, leftTwin);
    QFETCH(bool, rightTwin);
    const std::vector<KitItem> kit = {samples::item(1, "Band", samples::band(), pair)};
    const auto on = [](HungOn side) { return samples::hung(1, samples::bandAt(0), side); };
    const SetupRecord record = samples::setup(60, ways == 0   ? std::vector{on(HungOn::BothSides)}
                                                  : ways == 1 ? std::vector{on(HungOn::LeftOnly), on(HungOn::RightOnly)}
                                                              : std::vector{on(HungOn::RightOnly), on(HungOn::LeftOnly)});
    const auto up = weighUp(record, kit, samples::marks(0.9, 1.5), {});
    QVERIFY(up.setup.has_value());
    QCOMPARE(up.setup->left.size(), std::size_t(1));
    QCOMPARE(up.setup->right.size(), std::size_t(1));
    QCOMPARE(bandIn(up.setup->left).band().twin, leftTwin);
    QCOMPARE(bandIn(up.setup->right).band().twin, rightTwin);
    QVERIFY(bandIn(up.setup->left).band().measurement == bandIn(up.setup->right).band().measurement);
    const auto& own = bandIn(leftTwin ? up.setup->right : up.setup->left);
    QCOMPARE(own.twinUncertaintyAt(metres(1.5)).si(), 0.0);
}

void HangersTest::noMoreThanThereIs_data()
{
    QTest::addColumn<bool>("pair");
    QTest::addColumn<int>("first");
    QTest::addColumn<int>("second");
    QTest::addColumn<bool>("refused");
    const int none = -1, both = 0, left = 1, right = 2;
    QTest::newRow("pair on both sides") << true << both << none << false;
    QTest::newRow("pair, one a side") << true << left << right << false;
    QTest::newRow("pair, both on one side") << true << left << left << false;
    QTest::newRow("pair on both sides, and one more") << true << both << left << true;
    QTest::newRow("one of a pair, and both") << true << right << both << true;
    QTest::newRow("single on one side") << false << left << none << false;
    QTest::newRow("single on both sides") << false << both << none << true;
    QTest::newRow("single on either side") << false << left << right << true;
}

void HangersTest::noMoreThanThereIs()
{
    QFETCH(bool, pair);
    QFETCH(int, first);
    QFETCH(int, second);
    QFETCH(bool, refused);
    for (const bool chain : {true, false}) {
        const std::vector<KitItem> kit = {chain ? samples::item(1, "Thing", samples::weighed(), pair) : samples::item(1, "Thing", samples::band(), pair)};
        std::vector<HungRecord> hung;
        for (const int on : {first, second})
            if (on >= 0)
                hung.push_back(chain ? samples::hung(1, ChainPlacing{}, static_cast<HungOn>(on)) : samples::hung(1, BandPlacing{}, static_cast<HungOn>(on)));
        const auto up = weighUp(samples::setup(60, hung), kit, samples::marks(0.9, 1.5), {});
        QCOMPARE(up.readiness == Readiness::Refused, refused);
        if (refused)
            QCOMPARE(*up.error, (Error{Refusal::TooMany, "Thing"}));
    }
}

void HangersTest::sidesAreTold()
{
    const std::vector<KitItem> kit = {samples::item(1, "Chain", samples::weighed()), samples::item(2, "Band", samples::band(), false)};
    const SetupRecord record = samples::setup(60, {samples::hung(1, ChainPlacing{}), samples::hung(2, samples::bandAt(0), HungOn::RightOnly)});
    const auto up = weighUp(record, kit, samples::marks(1.1, 1.6), {});
    QCOMPARE(up.setup->left.size(), std::size_t(1));
    QCOMPARE(up.setup->right.size(), std::size_t(2));
    QVERIFY(std::holds_alternative<HungBand>(up.setup->right.at(1)));
    const auto& warnings = up.curve->warnings;
    const auto uneven = std::find_if(warnings.begin(), warnings.end(), [](auto& w) { return w.code == SetupWarningCode::SidesUneven; });
    QVERIFY(uneven != warnings.end());
    QVERIFY(uneven->side == Side::Right);
}

void HangersTest::twoKindsAreTwoSources()
{
    // two bands alike, each measured itself: their errors are not one error
    std::vector<KitItem> kit = {samples::item(1, "Left band", samples::band(), false), samples::item(2, "Right band", samples::band(), false)};
    const SetupRecord apart = samples::setup(60, {samples::hung(1, samples::bandAt(0), HungOn::LeftOnly), samples::hung(2, samples::bandAt(0), HungOn::RightOnly)});
    const auto up = weighUp(apart, kit, samples::marks(0.9, 1.5), {});
    const auto fit = bandFitFrom(samples::band());
    const double one = fit->uncertainty(metres(1.5)).si(), slope = 2 * fit->slope(metres(1.5)).si() * 0.01;
    VERIFY_NEAR_SHARE(up.curve->top->u.si(), std::sqrt(2 * one * one + slope * slope), 1e-9);
}

QTEST_APPLESS_MAIN(HangersTest)
#include "test_hangers.moc"
