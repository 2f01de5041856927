// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/hanging/warmupramp.h"
#include "tests/core/hanging/kits.h"
#include "tests/core/near.h"

#include <limits>
#include <rapidcheck.h>

using namespace steelyard;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

double kg(const Reading& reading) { return asMass(reading.value).si(); }

std::vector<PlateStock> stock() { return {{kits::plate(20), 6}, {kits::plate(10), 2}, {kits::plate(5), 2}, {kits::plate(2.5), 2}}; }

RampQuestion question(std::vector<HungItem> items, double working, TargetPlace place = TargetPlace::Top)
{
    RampQuestion asked;
    asked.loads = kits::loadsOf(stock(), kits::path(), 0.02);
    asked.left = items;
    asked.right = std::move(items);
    asked.place = place;
    asked.working = weight(kilograms(working));
    asked.shares.assign(usualRampShares.begin(), usualRampShares.end());
    return asked;
}

HungItem chain(double kgPerMetre = 5.7) { return tests::hungChain(ChainHanging::Straight, 2, 0.3, kgPerMetre, 0.02, 1); }

}
Q_DECLARE_METATYPE(RampQuestion)

class TestWarmUpRamp : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void ironAlone()
    {
        RampQuestion asked = question({}, 100);
        asked.shares = {0.4, 0.6, 0.8, 1};
        const auto ramp = *warmUpRamp(asked);
        QCOMPARE(ramp.steps.size(), 4u);
        for (std::size_t i = 0; i < 4; ++i) {
            VERIFY_NEAR(kg(ramp.steps[i].reading), 40 + 20 * static_cast<double>(i), 1e-9);
            QVERIFY(!ramp.steps[i].isLeast && !ramp.steps[i].isAsBefore);
        }
        VERIFY_NEAR(kg(ramp.least), 20, 1e-12);
        // 2 % of 20 kg of plates on a bar that is exact
        VERIFY_NEAR(asMass(ramp.steps[0].reading.u).si(), 0.4, 1e-12);
    }

    /// 11.4 kg/m from 0.3 m are 11.058 at the top: 50 kg of pull want 38.9 of iron, which 40 comes nearest to.
    void chainsStayAndIronRises()
    {
        RampQuestion asked = question({chain()}, 100);
        asked.shares = {0.5, 0.75};
        const auto ramp = *warmUpRamp(asked);
        VERIFY_NEAR(asked.loads[ramp.steps[0].loadIndex].load.total.si(), 40, 1e-12);
        VERIFY_NEAR(kg(ramp.steps[0].reading), 40 + 11.4 * 0.97, 1e-9);
        VERIFY_NEAR(asked.loads[ramp.steps[1].loadIndex].load.total.si(), 65, 1e-12);
    }

    /// At the bottom they pull less, so that the same share asks for more iron.
    void theSamePlaceCounts()
    {
        const RampQuestion top = question({chain()}, 100), bottom = question({chain()}, 100, TargetPlace::Bottom);
        const auto atTop = *warmUpRamp(top), atBottom = *warmUpRamp(bottom);
        QVERIFY(atBottom.steps[1].loadIndex > atTop.steps[1].loadIndex);
        for (const TargetPlace place : {TargetPlace::Zone, TargetPlace::Mean}) {
            const auto ramp = *warmUpRamp(question({chain()}, 100, place));
            QVERIFY(kg(ramp.least) > kg(atBottom.least) && kg(ramp.least) < kg(atTop.least));
        }
    }

    /// Heavy chains pull 20 + 38.8 kg at the top with the bare bar: 40 and 55 kg cannot be had.
    void chainsThatAreMoreThanAStep()
    {
        const auto ramp = *warmUpRamp(question({chain(20)}, 100));
        VERIFY_NEAR(kg(ramp.least), 58.8, 1e-9);
        QVERIFY(ramp.steps[0].isLeast && !ramp.steps[0].isAsBefore);
        QVERIFY(ramp.steps[1].isLeast && ramp.steps[1].isAsBefore);
        QVERIFY(!ramp.steps[2].isLeast && !ramp.steps[2].isAsBefore);
        QCOMPARE(ramp.steps[0].loadIndex, ramp.leastLoadIndex);
    }

    void fromTheFloorThePlatesMakeTheBottom()
    {
        RampQuestion asked = question({chain()}, 120, TargetPlace::Mean);
        LiftPath path = kits::path(0.2, 0.72);
        path.zoneFrom = path.zoneTo = std::nullopt;
        asked.loads = kits::loadsOf(stock(), path, 0.02, true);
        const auto ramp = *warmUpRamp(asked);
        for (const RampStep& step : ramp.steps) {
            const IronLoad& iron = asked.loads[step.loadIndex];
            const double bottom = iron.load.largestDiameter().si() / 2;
            const double chains = 11.4 * tests::roughMean([](double h) { return std::max(0.0, h - 0.3); }, bottom, 0.72);
            VERIFY_NEAR(kg(step.reading), iron.load.total.si() + chains, 1e-5);
        }
    }

    /// Five kilograms more on small plates start lower, where chains are lighter: less at the bottom, and yet the iron does not fall again.
    void ironNeverFalls()
    {
        RampQuestion asked = question({chain(20)}, 100, TargetPlace::Bottom);
        const auto load = [](double iron, double bottom) {
            const PlateType plate{kilograms((iron - 20) / 2), metres(2 * bottom), metres(0.03)};
            return IronLoad{{kilograms(iron), {plate}}, {}, kits::path(bottom, 0.8)};
        };
        asked.left = asked.right = {tests::hungChain(ChainHanging::Straight, 2, 0, 20)};
        asked.loads = {load(40, 0.225), load(43, 0.125), load(60, 0.225)};
        asked.shares = {0.48, 0.49, 0.6};
        const auto ramp = *warmUpRamp(asked);
        VERIFY_NEAR(kg(ramp.least), 49, 1e-9);
        VERIFY_NEAR(kg(ramp.steps[0].reading), 48, 1e-9);
        // 40 kg would be just right now, and would have to be lighter iron than before
        QCOMPARE(ramp.steps[1].loadIndex, 1u);
        QVERIFY(ramp.steps[1].isAsBefore);
        QCOMPARE(ramp.steps[2].loadIndex, 2u);
    }

    void refusals_data()
    {
        QTest::addColumn<RampQuestion>("asked");
        QTest::addColumn<int>("code");
        QTest::addColumn<QString>("what");
        const auto row = [](const char* name, Refusal code, const char* what, const auto& change) {
            RampQuestion asked = question({chain()}, 100);
            change(asked);
            QTest::newRow(name) << asked << static_cast<int>(code) << what;
        };
        row("no working pull", Refusal::OutOfRange, "working pull", [](auto& a) { a.working = {}; });
        row("a working pull that is no number", Refusal::OutOfRange, "working pull", [](auto& a) { a.working = newtons(notANumber); });
        row("a working pull without end", Refusal::OutOfRange, "working pull", [](auto& a) { a.working = newtons(std::numeric_limits<double>::infinity()); });
        row("shares that fall", Refusal::OutOfRange, "share", [](auto& a) { a.shares = {0.6, 0.4}; });
        row("a share of nothing", Refusal::OutOfRange, "share", [](auto& a) { a.shares = {0}; });
        row("more than the working set", Refusal::OutOfRange, "share", [](auto& a) { a.shares = {0.5, 1.01}; });
        row("a share that is no number", Refusal::OutOfRange, "share", [](auto& a) { a.shares = {notANumber}; });
        row("no loads", Refusal::NotThere, "plates", [](auto& a) { a.loads.clear(); });
        row("no zone", Refusal::HeightsOutOfOrder, "sticking zone", [](auto& a) {
            a.place = TargetPlace::Zone;
            a.loads[3].path.zoneFrom.reset();
        });
        row("a band past its measurement", Refusal::NotThere, "pull", [](auto& a) { a.left = {tests::hungBelow(tests::lineBand(200, 0.3, 0.9))}; });
    }
    void refusals()
    {
        QFETCH(RampQuestion, asked);
        QFETCH(int, code);
        QFETCH(QString, what);
        const auto ramp = warmUpRamp(asked);
        QVERIFY(!ramp);
        QCOMPARE(ramp.error(), (Error{static_cast<Refusal>(code), what.toStdString()}));
    }

    void nothingIsNearer()
    {
        QVERIFY(rc::check("every load tried with the engine; the iron never falls", [] {
            RampQuestion asked = question({}, *rc::gen::inRange(250, 1800) / 10.0, *rc::gen::element(TargetPlace::Bottom, TargetPlace::Zone, TargetPlace::Top, TargetPlace::Mean));
            if (*rc::gen::arbitrary<bool>())
                asked.left = asked.right = {chain(*rc::gen::inRange(10, 250) / 10.0)};
            if (*rc::gen::arbitrary<bool>())
                asked.left.push_back(tests::hungBelow(tests::rubberBand(2)));
            const auto ramp = *warmUpRamp(asked);
            std::size_t from = 0;
            for (const RampStep& step : ramp.steps) {
                RC_ASSERT(step.loadIndex >= from);
                const auto missWith = [&](std::size_t i) {
                    Setup setup = setupOf(asked.loads[i], asked.collars, {});
                    setup.left = asked.left;
                    setup.right = asked.right;
                    const auto curve = *pullCurve(setup, 0);
                    const auto& at = asked.place == TargetPlace::Bottom ? curve.bottom : asked.place == TargetPlace::Zone ? curve.zone : asked.place == TargetPlace::Top ? curve.top : curve.mean;
                    return std::abs((at->value - step.share * asked.working).si());
                };
                const double miss = missWith(step.loadIndex);
                RC_ASSERT(tests::near(std::abs((step.reading.value - step.wanted).si()), miss, 1e-9));
                for (std::size_t i = from; i < asked.loads.size(); ++i)
                    RC_ASSERT(missWith(i) >= miss - 1e-8);
                RC_ASSERT(step.isLeast == (step.loadIndex == ramp.leastLoadIndex && step.reading.value > step.wanted));
                from = step.loadIndex;
            }
        }));
    }
};

QTEST_APPLESS_MAIN(TestWarmUpRamp)
#include "test_warmupramp.moc"
