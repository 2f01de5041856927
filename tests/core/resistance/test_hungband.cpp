// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/band.h"
#include "tests/core/near.h"
#include "tests/core/resistance/kit.h"

#include <numbers>
#include <rapidcheck.h>

using namespace steelyard;
using tests::hungAbove;
using tests::hungBelow;
using tests::lineBand;
using tests::rubberBand;

namespace {

double between(int from, int to) { return *rc::gen::inRange(from, to) * 1e-3; }

HungBand anyHung(const Band& band)
{
    BandHang hang;
    hang.doubled = *rc::gen::arbitrary<bool>();
    hang.above = *rc::gen::arbitrary<bool>();
    hang.anchorHeight = metres(hang.above ? between(2000, 3000) : between(0, 200));
    hang.offset = metres(between(-400, 400));
    hang.wrap = metres(between(0, 100));
    return *HungBand::of(band, hang);
}

}

class TestHungBand : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void refusals_data()
    {
        QTest::addColumn<double>("anchor");
        QTest::addColumn<double>("offset");
        QTest::addColumn<double>("wrap");
        QTest::addColumn<QString>("what");
        const double inf = std::numeric_limits<double>::infinity();
        QTest::newRow("anchor below the floor") << -0.1 << 0.0 << 0.0 << "anchor height";
        QTest::newRow("endless anchor") << inf << 0.0 << 0.0 << "anchor height";
        QTest::newRow("endless offset") << 0.1 << -inf << 0.0 << "offset";
        QTest::newRow("wrap below 0") << 0.1 << 0.0 << -0.1 << "wrap";
    }
    void refusals()
    {
        QFETCH(double, anchor);
        QFETCH(double, offset);
        QFETCH(double, wrap);
        QFETCH(QString, what);
        const auto hung = HungBand::of(rubberBand(), {false, false, metres(anchor), metres(offset), metres(wrap)});
        QVERIFY(!hung);
        QCOMPARE(hung.error().what, what.toStdString());
    }

    /// A straight line of 200 N for each metre, 1 m at rest, on an anchor at 0.1 m.
    void pulls_data()
    {
        QTest::addColumn<bool>("doubled");
        QTest::addColumn<double>("anchor");
        QTest::addColumn<double>("offset");
        QTest::addColumn<double>("wrap");
        QTest::addColumn<double>("bar");
        QTest::addColumn<double>("vertical");
        QTest::addColumn<double>("along");
        const double root = std::sqrt(2.0);
        QTest::newRow("straight up") << false << 0.1 << 0.0 << 0.0 << 1.6 << 100.0 << 0.0;
        QTest::newRow("slack") << false << 0.1 << 0.0 << 0.0 << 0.9 << 0.0 << 0.0;
        QTest::newRow("just at rest") << false << 0.1 << 0.0 << 0.0 << 1.1 << 0.0 << 0.0;
        QTest::newRow("slanted to the front") << false << 0.1 << 1.2 << 0.0 << 1.0 << 100.0 * 0.6 << 100.0 * 0.8;
        QTest::newRow("slanted to the back") << false << 0.1 << -1.2 << 0.0 << 1.0 << 100.0 * 0.6 << -100.0 * 0.8;
        QTest::newRow("level with its anchor") << false << 1.0 << 1.5 << 0.0 << 1.0 << 0.0 << 100.0;
        QTest::newRow("anchored above") << false << 2.5 << 0.0 << 0.0 << 1.0 << -100.0 << 0.0;
        QTest::newRow("above and slanted") << false << 2.5 << 1.5 << 0.0 << 1.0 << -200 * (1.5 * root - 1) / root << 200 * (1.5 * root - 1) / root;
        QTest::newRow("doubled: two strands of half the band") << true << 0.1 << 0.0 << 0.0 << 1.1 << 400.0 << 0.0;
        QTest::newRow("doubled round a handle") << true << 0.1 << 0.0 << 0.05 * std::numbers::pi / 2 << 1.1 << 2 * 200 * (1 + 0.05 * std::numbers::pi / 2) << 0.0;
        QTest::newRow("doubled, slack") << true << 0.1 << 0.0 << 0.0 << 0.6 << 0.0 << 0.0;
        QTest::newRow("a wrap does nothing to a single band") << false << 0.1 << 0.0 << 0.3 << 1.6 << 100.0 << 0.0;
        QTest::newRow("at the anchor itself") << false << 0.1 << 0.0 << 0.0 << 0.1 << 0.0 << 0.0;
    }
    void pulls()
    {
        QFETCH(bool, doubled);
        QFETCH(double, anchor);
        QFETCH(double, offset);
        QFETCH(double, wrap);
        QFETCH(double, bar);
        QFETCH(double, vertical);
        QFETCH(double, along);
        const auto hung = *HungBand::of(lineBand(200, 1, 4), {doubled, anchor > bar, metres(anchor), metres(offset), metres(wrap)});
        VERIFY_NEAR(hung.verticalPull(metres(bar)).si(), vertical, 1e-11);
        VERIFY_NEAR(hung.pullAlongFloor(metres(bar)).si(), along, 1e-11);
        QVERIFY(hung.knows(metres(bar)));
    }

    void reachesSayWhereItBeginsAndEnds()
    {
        const auto slanted = hungBelow(rubberBand(), 0.05, 0.2);
        VERIFY_NEAR(slanted.reachAtRest()->si(), std::sqrt(1 - 0.04), 1e-15);
        VERIFY_NEAR(slanted.reachKnown()->si(), std::sqrt(2.0475 * 2.0475 - 0.04), 1e-14);
        const auto doubled = *HungBand::of(rubberBand(), {true, false, metres(0.05), {}, metres(0.08)});
        VERIFY_NEAR(doubled.reachAtRest()->si(), 0.46, 1e-15);
        VERIFY_NEAR(doubled.reachKnown()->si(), (2.0475 - 0.08) / 2, 1e-15);
        const auto taut = hungBelow(rubberBand(), 0.05, 1.2), beyond = hungBelow(rubberBand(), 0.05, 2.1);
        QVERIFY(!taut.reachAtRest() && taut.reachKnown());
        QVERIFY(!beyond.reachKnown() && !beyond.knows(metres(0.05)));
    }

    void knowsUpToItsReach()
    {
        const auto hung = hungBelow(rubberBand(), 0.05, 0.2);
        const Height end = metres(0.05) + *hung.reachKnown();
        QVERIFY(hung.knows(end) && hung.knows(end - metres(1e-6)) && !hung.knows(end + metres(1e-6)));
    }

    void meanAndSlopeBelongToThePull()
    {
        QVERIFY(rc::check("mean against many steps, slope against a difference, also through the anchor's height", [] {
            const auto hung = anyHung(rubberBand());
            const double a = between(0, 2500), b = a + between(1, 1000);
            const auto pull = [&](double h) { return hung.verticalPull(metres(h)).si(); };
            const double mean = hung.meanPull(metres(a), metres(b)).si(), rough = tests::roughMean(pull, a, b, 4000);
            RC_ASSERT(tests::near(mean, rough, 1e-3 * (1 + std::abs(rough))));
            const double step = 1e-7;
            const double length = hung.bandLength(metres(a)).si();
            RC_PRE(std::abs(length - 1) > 1e-5);
            RC_PRE(hung.hang().offset.si() != 0 || std::abs(a - hung.hang().anchorHeight.si()) > 1e-3);
            const double rise = (pull(a + step) - pull(a - step)) / (2 * step);
            RC_ASSERT(tests::near(hung.verticalSlope(metres(a)).si(), rise, 1e-4 * (1 + std::abs(rise))));
        }));
    }

    void effectsFollowThePull()
    {
        QVERIFY(rc::check("mean effect and mean twin error against many steps; an old band has half as much again", [] {
            const auto hung = anyHung(rubberBand(4, true)), old = *HungBand::of(rubberBand(4, true, true), hung.hang());
            const double a = between(0, 1500), b = a + between(50, 1000);
            const Effect mean = hung.meanEffect(metres(a), metres(b));
            for (std::size_t i : {0, 1}) {
                const double rough = tests::roughMean([&](double h) { return hung.effectAt(metres(h)).amount[i]; }, a, b, 4000);
                RC_ASSERT(tests::near(mean.amount[i], rough, 1e-3 * (1 + std::abs(rough))));
            }
            const double roughTwin = tests::roughMean([&](double h) { return hung.twinUncertaintyAt(metres(h)).si(); }, a, b, 4000);
            RC_ASSERT(tests::near(hung.meanTwinUncertainty(metres(a), metres(b)).si(), roughTwin, 2e-3 * (1 + roughTwin)));
            RC_ASSERT(tests::nearShare(old.effectAt(metres(b)).standard(), 1.5 * hung.effectAt(metres(b)).standard(), 1e-14));
            RC_ASSERT(tests::nearShare(old.twinUncertaintyAt(metres(b)).si(), 1.5 * hung.twinUncertaintyAt(metres(b)).si(), 1e-14));
            RC_ASSERT(mean.source == SourceId{4} && mean.degreesOfFreedom == 4.0);
        }));
    }

    void theFloorComesIntoTheEffect()
    {
        auto points = tests::bandPoints();
        points.resize(4);
        const Band few{.fit = *BandFit::with(BandModel::Rubber, metres(1), points)};
        for (const auto& hung : {hungBelow(few), hungAbove(few, 2.5)}) {
            const Height bar = metres(1.3);
            VERIFY_NEAR(hung.effectAt(bar).standard(), 0.05 * std::abs(hung.verticalPull(bar).si()), 1e-12);
            QVERIFY(hung.effectAt(bar).amount[2] * hung.verticalPull(bar).si() > 0);
            VERIFY_NEAR(hung.meanEffect(metres(1.2), metres(1.4)).standard(), 0.05 * std::abs(hung.meanPull(metres(1.2), metres(1.4)).si()), 1e-12);
        }
    }

    /// u = ℓ·T′(ℓ)·3 %: for a straight line about 18 % of the pull at 1.2 and 6 % at twice its rest length.
    void twinError_data()
    {
        QTest::addColumn<double>("stretch");
        QTest::addColumn<double>("share");
        QTest::newRow("a fifth longer") << 1.2 << 0.18;
        QTest::newRow("twice as long") << 2.0 << 0.06;
        QTest::newRow("half as long again") << 1.5 << 0.09;
    }
    void twinError()
    {
        QFETCH(double, stretch);
        QFETCH(double, share);
        Band twin = lineBand(200, 1, 4);
        QCOMPARE(hungBelow(twin, 0).twinUncertaintyAt(metres(stretch)), Force{});
        twin.twin = true;
        const auto hung = hungBelow(twin, 0);
        VERIFY_NEAR(hung.twinUncertaintyAt(metres(stretch)) / hung.verticalPull(metres(stretch)), share, 1e-12);
        QCOMPARE(hung.twinUncertaintyAt(metres(0.9)), Force{});
        QCOMPARE(hung.meanTwinUncertainty(metres(0.2), metres(0.9)), Force{});
    }

    /// Read off a band that is 1 % longer at rest, all else alike: the difference the twin's error is a third of.
    void twinErrorIsADifferenceInRestLength()
    {
        QVERIFY(rc::check("3 % of rest is three times 1 % of rest, to first order", [] {
            auto points = tests::bandPoints();
            for (auto& p : points)
                p.length = 1.00001 * p.length;
            const Band longer{.fit = *BandFit::with(BandModel::Rubber, metres(1.00001), points)}, twin = rubberBand(0, true);
            const auto hang = anyHung(twin).hang();
            const auto a = *HungBand::of(twin, hang), b = *HungBand::of(longer, hang);
            const Height bar = metres(between(0, 2000));
            RC_PRE(std::abs(a.bandLength(bar).si() - 1) > 1e-4);
            const double moved = std::abs((b.verticalPull(bar) - a.verticalPull(bar)).si());
            RC_ASSERT(tests::near(a.twinUncertaintyAt(bar).si(), 3000 * moved, 1e-3 * (1 + 3000 * moved)));
        }));
    }
};

QTEST_APPLESS_MAIN(TestHungBand)
#include "test_hungband.moc"
