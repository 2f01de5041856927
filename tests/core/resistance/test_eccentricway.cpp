// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/eccentric/eccentricway.h"
#include "core/resistance/pullsum.h"
#include "tests/core/near.h"
#include "tests/core/resistance/kit.h"

#include <cmath>
#include <limits>
#include <random>
#include <rapidcheck.h>

using namespace steelyard;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

Uncertain<Mass> mass(double kg, double u = 0) { return {kilograms(kg), kilograms(u)}; }
Uncertain<Height> height(double m, double u = 0) { return {metres(m), metres(u)}; }

double kg(const std::optional<Reading>& reading) { return asMass(reading->value).si(); }
double kgOfU(const std::optional<Reading>& reading) { return asMass(reading->u).si(); }

/// 80 kg from 0.77 to 1.27 m, chains on both ends that rise all the way.
Setup chained(double uMark = 0)
{
    Setup setup = tests::onBothEnds({tests::hungChain(ChainHanging::Straight, 2, 0.5)});
    setup.path.uMark = metres(uMark);
    return setup;
}

}
Q_DECLARE_METATYPE(EccentricWay)

class TestEccentricWay : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// Two hooks of 20 kg to 0.82 m: over nine tenths of the path.
    void hooksPullToTheirTouch()
    {
        const Setup up = tests::onBothEnds({});
        const auto both = *downAndUp(up, HooksReleased{mass(20), height(0.82)});
        VERIFY_NEAR(kg(both.up.bottom), 80, 1e-12);
        VERIFY_NEAR(kg(both.downTop), 120, 1e-12);
        VERIFY_NEAR(kg(both.downEnds), 120, 1e-12);
        VERIFY_NEAR(kg(both.downMean), 80 + 0.9 * 40, 1e-12);
        QCOMPARE(both.ends.value, metres(0.82));
    }

    void chainsAreOnBothWays()
    {
        const auto both = *downAndUp(chained(), HooksReleased{mass(20), height(0.82)});
        VERIFY_NEAR(kg(both.downTop), 80 + 40 + 11.4 * 0.77, 1e-9);
        VERIFY_NEAR(kg(both.downEnds), 80 + 40 + 11.4 * 0.32, 1e-9);
        VERIFY_NEAR(kg(both.downMean), 80 + 36 + 11.4 * (0.77 + 0.27) / 2, 1e-9);
        VERIFY_NEAR(kg(both.up.mean), 80 + 11.4 * (0.77 + 0.27) / 2, 1e-9);
    }

    void theOtherWays()
    {
        const Setup up = tests::onBothEnds({});
        const auto lifted = *downAndUp(up, PartnerLiftsOff{mass(30)});
        VERIFY_NEAR(kg(lifted.downTop), 110, 1e-12);
        VERIFY_NEAR(kg(lifted.downMean), 110, 1e-12);
        QCOMPARE(lifted.ends.value, metres(0.77));
        VERIFY_NEAR(kg(downAndUp(up, DumbbellsDropped{mass(12.5)})->downEnds), 105, 1e-12);
        VERIFY_NEAR(downAndUp(up, PartnerAdds{Uncertain<Force>{newtons(150), newtons(40)}})->downMean->value.si(), 80 * 9.80665 + 150, 1e-9);

        const auto band = tests::hungBelow(tests::rubberBand(1));
        const auto bands = *downAndUp(up, BandsLetGo{{band}, {band}});
        Setup banded = up;
        banded.left = banded.right = {band};
        const auto wanted = *pullCurve(banded, 0);
        QCOMPARE(bands.downTop->value, wanted.top->value);
        QCOMPARE(bands.downEnds->value, wanted.bottom->value);
        QCOMPARE(bands.downMean->value, wanted.mean->value);
        QCOMPARE(bands.downMean->u, wanted.mean->u);
        VERIFY_NEAR(kg(bands.up.top), 80, 1e-12);
    }

    void pushThatNobodyMeasuredIsUnknown()
    {
        const auto both = *downAndUp(tests::onBothEnds({}), PartnerAdds{});
        QVERIFY(!both.downTop && !both.downEnds && !both.downMean);
        VERIFY_NEAR(kg(both.up.top), 80, 1e-12);
    }

    void bandPastItsMeasurementIsUnknown()
    {
        const auto band = tests::hungBelow(tests::lineBand(200, 0.3, 0.9));
        const auto both = *downAndUp(tests::onBothEnds({}), BandsLetGo{{band}, {band}});
        QVERIFY(both.downEnds && !both.downTop && !both.downMean);
    }

    /// Plates of one set are off one way, on the bar and on the hooks; a hand is off for itself.
    void uncertaintyOfIronAddsStraight()
    {
        Setup up = tests::onBothEnds({});
        up.uIron = kilograms(0.5);
        VERIFY_NEAR(kgOfU(downAndUp(up, HooksReleased{mass(20, 0.3), height(0.82)})->downTop), 1.1, 1e-12);
        VERIFY_NEAR(kgOfU(downAndUp(up, HooksReleased{mass(20, 0.3), height(0.82)})->downMean), 0.5 + 0.9 * 0.6, 1e-12);
        VERIFY_NEAR(kgOfU(downAndUp(up, PartnerLiftsOff{mass(30, 0.4)})->downTop), 0.9, 1e-12);
        VERIFY_NEAR(downAndUp(up, PartnerAdds{Uncertain<Force>{newtons(150), newtons(40)}})->downTop->u.si(), std::hypot(0.5 * 9.80665, 40), 1e-9);
    }

    /// Marks, touch and iron moved anew, and the mean worked out each time: the spread is u.
    void meanDrawnAnew()
    {
        Setup up = chained(0.006);
        up.uIron = kilograms(0.3);
        const HooksReleased hooks{mass(25, 0.2), height(0.85, 0.004)};
        const auto said = *downAndUp(up, hooks);
        std::mt19937 random(1795);
        std::normal_distribution<double> one;
        constexpr int draws = 200'000;
        double sum = 0, squares = 0;
        for (int i = 0; i < draws; ++i) {
            const double iron = one(random), bottom = 0.77 + 0.006 * one(random), top = 1.27 + 0.006 * one(random), touch = 0.85 + 0.004 * one(random);
            const double chains = 11.4 * ((bottom + top) / 2 - 0.5);
            const double mean = 80 + 0.3 * iron + chains + 2 * (25 + 0.2 * iron) * (top - touch) / (top - bottom);
            sum += mean;
            squares += mean * mean;
        }
        const double mean = sum / draws;
        VERIFY_NEAR(kg(said.downMean), mean, 0.02);
        VERIFY_NEAR_SHARE(kgOfU(said.downMean), std::sqrt(squares / draws - mean * mean), 0.01);
        // at its end the touch's own doubt moves it along the chains
        VERIFY_NEAR(kgOfU(said.downEnds), std::hypot(0.3 + 0.4, 11.4 * 0.004), 1e-9);
    }

    void refusals_data()
    {
        QTest::addColumn<EccentricWay>("way");
        QTest::addColumn<int>("code");
        QTest::addColumn<QString>("what");
        const auto row = [](const char* name, const EccentricWay& way, Refusal code, const char* what) { QTest::newRow(name) << way << static_cast<int>(code) << what; };
        row("hooks of no mass", HooksReleased{mass(0), height(0.82)}, Refusal::OutOfRange, "hook");
        row("hooks that are no number", HooksReleased{mass(notANumber), height(0.82)}, Refusal::OutOfRange, "hook");
        row("a touch that is no number", HooksReleased{mass(20), height(notANumber)}, Refusal::OutOfRange, "touch");
        row("a touch at her bottom", HooksReleased{mass(20), height(0.77)}, Refusal::HeightsOutOfOrder, "touch");
        row("a touch above her top", HooksReleased{mass(20), height(1.28)}, Refusal::HeightsOutOfOrder, "touch");
        row("nothing lifted off", PartnerLiftsOff{}, Refusal::OutOfRange, "plates");
        row("dumbbells below 0", DumbbellsDropped{mass(-5)}, Refusal::OutOfRange, "dumbbell");
        row("a push below 0", PartnerAdds{Uncertain<Force>{newtons(-1), {}}}, Refusal::OutOfRange, "push");
        row("a push that is no number", PartnerAdds{Uncertain<Force>{newtons(notANumber), {}}}, Refusal::OutOfRange, "push");
        row("no bands", BandsLetGo{}, Refusal::NotThere, "bands");
        row("a chain for a band", BandsLetGo{{tests::hungChain(ChainHanging::Straight, 1)}, {}}, Refusal::NotThere, "bands");
    }
    void refusals()
    {
        QFETCH(EccentricWay, way);
        QFETCH(int, code);
        QFETCH(QString, what);
        const auto both = downAndUp(tests::onBothEnds({}), way);
        QVERIFY(!both);
        QCOMPARE(both.error(), (Error{static_cast<Refusal>(code), what.toStdString()}));
    }

    void wrongMarksAreRefusedAsEver()
    {
        Setup up = tests::onBothEnds({});
        up.path.top = metres(0.5);
        QCOMPARE(downAndUp(up, PartnerLiftsOff{mass(10)}).error(), (Error{Refusal::HeightsOutOfOrder, "top"}));
    }

    void theWayDownIsNeverLighter()
    {
        QVERIFY(rc::check("and its mean lies between the way up and the whole of it", [] {
            const auto number = [](int from, int to) { return *rc::gen::inRange(from, to) / 1000.0; };
            Setup up = chained(number(0, 20));
            const double hook = number(3000, 60000), touch = number(771, 1270);
            const auto both = *downAndUp(up, HooksReleased{mass(hook), height(touch, number(0, 10))});
            RC_ASSERT(tests::near(kg(both.downTop), kg(both.up.top) + 2 * hook, 1e-9));
            RC_ASSERT(both.downMean->value >= both.up.mean->value);
            RC_ASSERT(kg(both.downMean) <= kg(both.up.mean) + 2 * hook);
            RC_ASSERT(both.downMean->giveOrTake >= both.downMean->u);
        }));
    }
};

QTEST_APPLESS_MAIN(TestEccentricWay)
#include "test_eccentricway.moc"
