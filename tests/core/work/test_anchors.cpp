// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/anchors.h"
#include "core/work/measuredkit.h"
#include "core/work/weighup.h"
#include "tests/core/work/samples.h"

#include <QtTest>

using namespace steelyard;

namespace {

LiftPath path()
{
    LiftPath p;
    p.bottom = metres(0.77);
    p.top = metres(1.27);
    return p;
}

HungBand overPeg(bool twin)
{
    BandHang hang;
    hang.anchorHeight = metres(0.05);
    return *HungBand::of(Band{*bandFitFrom(samples::band()), ownSource, twin, false}, hang);
}

}

/// What holds an anchor down against what pulls it up.
class TestAnchors : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void boltedIsNeverWeak();
    void heldByOneAndAHalfTimesTheUnfavourableEnd();
    void aTwinNeedsMore();
    void anAnchorAboveIsNotLifted();
    void aWeakAnchorForbidsTheLift();
    void heldByTheCoachsOwnFactor();
};

void TestAnchors::boltedIsNeverWeak()
{
    QVERIFY(!weakAnchor("B1", overPeg(false), std::nullopt, path()));
}

void TestAnchors::heldByOneAndAHalfTimesTheUnfavourableEnd()
{
    const HungBand band = overPeg(false);
    // length 1.22 m of a band of 1.00 m; its own give-or-take is all there is to add
    const Force most = band.verticalPull(metres(1.27)) + bandGiveOrTake(band.band().fit, metres(1.22));
    const Mass enough = asMass(1.5 * most), gram = kilograms(0.001);
    QVERIFY(!weakAnchor("B1", band, enough + gram, path()));
    const auto weak = weakAnchor("B1", band, enough - gram, path());
    QVERIFY(weak);
    QCOMPARE(weak->item, std::string("B1"));
    QCOMPARE(weak->pull, asMass(most));
    QCOMPARE(weak->heldBy, enough - gram);
}

void TestAnchors::aTwinNeedsMore()
{
    const auto own = weakAnchor("B1", overPeg(false), Mass{}, path()), twin = weakAnchor("B1", overPeg(true), Mass{}, path());
    QVERIFY(own && twin);
    QVERIFY(twin->pull > own->pull);
}

void TestAnchors::anAnchorAboveIsNotLifted()
{
    BandHang hang;
    hang.above = true;
    hang.anchorHeight = metres(2.4);
    const auto band = HungBand::of(Band{*bandFitFrom(samples::band())}, hang);
    QVERIFY(band);
    QVERIFY(!weakAnchor("B1", *band, Mass{}, path()));
}

void TestAnchors::aWeakAnchorForbidsTheLift()
{
    SetupRecord record;
    record.bar.stock = usualStock();
    BandPlacing placing;
    placing.anchorHeight = metres(0.05);
    placing.heldBy = kilograms(5);
    record.hung = {samples::hung(1, placing)};
    const std::vector<KitItem> kit{samples::item(1, "B1", samples::band())};
    BarMarks marks;
    marks.bottom = metres(0.77);
    marks.top = metres(1.27);
    const CautionCode looked[] = {CautionCode::BandsBelow};
    const WeighedUp refused = weighUp(record, kit, marks, looked);
    QCOMPARE(refused.readiness, Readiness::NotToBeUsed);
    QCOMPARE(refused.weakAnchors.size(), std::size_t(1)); // both bands of the pair say the same, once
    std::get<BandPlacing>(record.hung[0].placing).heldBy = kilograms(100);
    const WeighedUp held = weighUp(record, kit, marks, looked);
    QCOMPARE(held.readiness, Readiness::Ready);
    QVERIFY(held.weakAnchors.empty());
}

void TestAnchors::heldByTheCoachsOwnFactor()
{
    const HungBand band = overPeg(false);
    const Force most = band.verticalPull(metres(1.27)) + bandGiveOrTake(band.band().fit, metres(1.22));
    const Mass gram = kilograms(0.001);
    for (const int percent : {100, 250}) {
        const HeldTo heldTo{withLimit({}, LimitKind::HoldPercent, percent), {}};
        const Mass enough = asMass(percent / 100.0 * most);
        QVERIFY(!weakAnchor("B1", band, enough + gram, path(), heldTo.limits.holdFactor()));
        const auto weak = weakAnchor("B1", band, enough - gram, path(), heldTo.limits.holdFactor());
        QVERIFY(weak);
        QCOMPARE(weak->holdFactor, percent / 100.0);
        SetupRecord record;
        record.bar.stock = usualStock();
        BandPlacing placing;
        placing.anchorHeight = metres(0.05);
        const std::vector<KitItem> kit{samples::item(1, "B1", samples::band(), false)};
        const CautionCode looked[] = {CautionCode::BandsBelow};
        const auto readinessHeldBy = [&](Mass by) {
            placing.heldBy = by;
            record.hung = {samples::hung(1, placing, HungOn::LeftOnly)};
            return weighUp(record, kit, samples::marks(0.77, 1.27), looked, usualSampleCount, heldTo).weakAnchors.size();
        };
        QCOMPARE(readinessHeldBy(enough + gram), std::size_t(0));
        QCOMPARE(readinessHeldBy(enough - gram), std::size_t(1));
    }
}

QTEST_APPLESS_MAIN(TestAnchors)
#include "test_anchors.moc"
