// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/hung.h"
#include "core/resistance/machine.h"
#include "tests/core/near.h"
#include "tests/core/resistance/kit.h"

#include <numbers>

using namespace steelyard;

namespace {

using Positions = std::vector<PositionPull>;

CamProfile roundCam(double radius)
{
    const std::vector<CamProfile::Point> points{{Angle{0}, metres(radius)}, {Angle{1}, metres(radius)}, {Angle{3}, metres(radius)}};
    return *CamProfile::of(points);
}

}

class TestMachine : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void measuredPullRefuses()
    {
        const Positions one{{metres(0), newtons(1)}}, twice{{metres(0), newtons(1)}, {metres(0), newtons(2)}}, two{{metres(0), newtons(1)}, {metres(1), newtons(2)}},
            endless{{metres(0), newtons(1)}, {metres(1), newtons(std::numeric_limits<double>::infinity())}};
        QCOMPARE(MeasuredPull::of(one).error().code, Refusal::TooFewPoints);
        QCOMPARE(MeasuredPull::of(twice).error().code, Refusal::PointsNotApart);
        QCOMPARE(MeasuredPull::of(endless).error().code, Refusal::NotFinite);
        QCOMPARE(MeasuredPull::of(two, {newtons(-1)}).error().code, Refusal::OutOfRange);
        QVERIFY(MeasuredPull::of(two).ok());
    }

    void measuredPullKnowsItsPointsOnly()
    {
        const auto pull = *MeasuredPull::of(Positions{{metres(0.2), newtons(80)}, {metres(0), newtons(300)}, {metres(0.1), newtons(180)}}, {newtons(3)}, SourceId{5});
        QCOMPARE(pull.at(metres(0.1)), newtons(180));
        QCOMPARE(pull.at(metres(0.2)), newtons(80));
        QVERIFY(!pull.at(metres(-0.01)) && !pull.at(metres(0.21)));
        QVERIFY(*pull.at(metres(0.05)) < newtons(300) && *pull.at(metres(0.05)) > newtons(180));
        QCOMPARE(pull.doubt().scale, newtons(3));
        QCOMPARE(pull.measurement(), SourceId{5});
    }

    void aBenchAidHelpsAgainstTheLoad()
    {
        const HungItem aid = tests::benchAid(0.9, {newtons(3)}, 5);
        QCOMPARE(hung::kind(aid), PullKind::Help);
        QCOMPARE(hung::pull(aid, metres(0.9)), newtons(-300));
        QCOMPARE(hung::pull(aid, metres(1.25)), newtons(0));
        QVERIFY(hung::slope(aid, metres(0.95)) > Stiffness{});
        QVERIFY(hung::knows(aid, metres(0.9)) && hung::knows(aid, metres(1.9)) && !hung::knows(aid, metres(0.89)) && !hung::knows(aid, metres(1.91)));
        QCOMPARE(hung::movingMass(aid, metres(1)), Mass{});
        QCOMPARE(hung::stateAt(aid, metres(1)).alongFloor, Force{});
        QCOMPARE(hung::effect(aid, metres(1)).amount[0], -3.0);
        QCOMPARE(hung::meanEffect(aid, metres(1), metres(1.2)).source, SourceId{5});
        const double rough = tests::roughMean([&](double h) { return hung::pull(aid, metres(h)).si(); }, 0.9, 1.3);
        VERIFY_NEAR(hung::meanPull(aid, metres(0.9), metres(1.3)).si(), rough, 1e-5);
        HungHelp load = tests::benchAid(0.9);
        load.helps = false;
        QCOMPARE(hung::pull(load, metres(0.9)), newtons(300));
    }

    /// u by JCGM 100:2008, 5.1.2, worked by hand on a straight line of 300 N at 0 and 0 N at 0.3 m: it falls by 1000 N a metre, so a tape
    /// off by 1 cm is 10 N everywhere; plates off by 1 % are 1 % of the help; a scale off by 2 N is 2 N.
    void eachDoubtActsInItsOwnWay()
    {
        const auto pull = *MeasuredPull::of(Positions{{metres(0), newtons(300)}, {metres(0.3), newtons(0)}}, {newtons(2), 0.01, metres(0.01)}, SourceId{5});
        VERIFY_NEAR(pull.uncertaintyAt(metres(0.1))->si(), std::sqrt(2 * 2 + 2 * 2 + 10 * 10), 1e-9);
        VERIFY_NEAR(pull.uncertaintyAt(metres(0.3))->si(), std::sqrt(2 * 2 + 0 + 10 * 10), 1e-9);
        VERIFY_NEAR(pull.mean(metres(0.1), metres(0.3))->si(), 100, 1e-9);
        QVERIFY(!pull.uncertaintyAt(metres(0.31)) && !pull.mean(metres(-0.1), metres(0.1)) && !pull.mean(metres(0.2), metres(0.2)));
        QCOMPARE(MeasuredPull::of(Positions{{metres(0), newtons(1)}, {metres(1), newtons(2)}}, {Force{}, -0.1}).error().code, Refusal::OutOfRange);
        QCOMPARE(MeasuredPull::of(Positions{{metres(0), newtons(1)}, {metres(1), newtons(2)}}, {Force{}, 0, metres(std::nan(""))}).error().code, Refusal::OutOfRange);

        HungHelp aid{pull, metres(0.9), true};
        const Effect whole = hung::effect(aid, metres(1.0));
        VERIFY_NEAR(whole.amount[0], -2, 1e-9);
        VERIFY_NEAR(whole.amount[1], -2, 1e-9);
        VERIFY_NEAR(whole.amount[2], 10, 1e-9);
        VERIFY_NEAR(whole.standard(), pull.uncertaintyAt(metres(0.1))->si(), 1e-9);
        VERIFY_NEAR(hung::meanEffect(aid, metres(1.0), metres(1.2)).amount[1], -1, 1e-9);
        VERIFY_NEAR(hung::meanEffect(aid, metres(1.0), metres(1.2)).amount[2], 10, 1e-9);
        const HungState state = hung::stateAt(aid, metres(1.0));
        for (std::size_t c = 0; c < Effect::components; ++c)
            VERIFY_NEAR(state.effect[c].si(), whole.amount[c], 1e-12);
    }

    /// Worn in the middle, half on each side: together it is the whole aid, and its one error counts once.
    void twoHalvesAreOneAid()
    {
        const Positions points{{metres(0), newtons(300)}, {metres(0.1), newtons(180)}, {metres(0.2), newtons(80)}, {metres(0.6), newtons(0)}};
        const auto pull = *MeasuredPull::of(points, {newtons(2), 0.01, metres(0.01)}, SourceId{5});
        HungHelp half{pull, metres(0.77), true, 0.5};
        Setup halves = tests::onBothEnds({half}), whole = tests::onBothEnds({});
        whole.left.emplace_back(HungHelp{pull, metres(0.77), true});
        const auto a = *pullCurve(halves), b = *pullCurve(whole);
        for (const auto reading : {&PullCurve::bottom, &PullCurve::top, &PullCurve::mean}) {
            VERIFY_NEAR((a.*reading)->value.si(), (b.*reading)->value.si(), 1e-9);
            VERIFY_NEAR((a.*reading)->u.si(), (b.*reading)->u.si(), 1e-9);
        }
        QVERIFY(std::none_of(a.warnings.begin(), a.warnings.end(), [](const SetupWarning& w) { return w.code == SetupWarningCode::SidesUneven; }));
        QVERIFY(std::any_of(b.warnings.begin(), b.warnings.end(), [](const SetupWarning& w) { return w.code == SetupWarningCode::SidesUneven; }));
    }

    void camTorqueIsWeightTimesRadius_data()
    {
        QTest::addColumn<double>("kg");
        QTest::addColumn<double>("radius");
        QTest::addColumn<double>("torque");
        QTest::newRow("50 kg on 10 cm") << 50.0 << 0.10 << 49.03325;
        QTest::newRow("50 kg on 15 cm") << 50.0 << 0.15 << 73.549875;
        QTest::newRow("no stack") << 0.0 << 0.15 << 0.0;
        QTest::newRow("no radius") << 50.0 << 0.0 << 0.0;
    }
    void camTorqueIsWeightTimesRadius()
    {
        QFETCH(double, kg);
        QFETCH(double, radius);
        QFETCH(double, torque);
        VERIFY_NEAR(camTorque(kilograms(kg), metres(radius)).newtonMetres, torque, 1e-13);
    }

    void aRoundCamRollsUpAnArc()
    {
        const auto cam = roundCam(0.12);
        VERIFY_NEAR(cam.rise(Angle{0.5}, Angle{2.5})->si(), 0.24, 1e-15);
        VERIFY_NEAR(cam.work(kilograms(50), Angle{0.5}, Angle{2.5})->si(), 50 * 9.80665 * 0.24, 1e-12);
        VERIFY_NEAR(cam.meanTorque(kilograms(50), Angle{0.5}, Angle{2.5})->newtonMetres, 50 * 9.80665 * 0.12, 1e-12);
        VERIFY_NEAR(cam.torque(kilograms(50), Angle{1})->newtonMetres, 50 * 9.80665 * 0.12, 1e-12);
        QCOMPARE(cam.meanTorque(kilograms(50), Angle{1}, Angle{1})->newtonMetres, cam.torque(kilograms(50), Angle{1})->newtonMetres);
        QVERIFY(!cam.rise(Angle{-1}, Angle{2}) && !cam.torque(kilograms(50), Angle{4}) && !cam.work(kilograms(50), Angle{0}, Angle{4}) && !cam.meanTorque(kilograms(50), Angle{0}, Angle{4}));
    }

    /// A cam whose radius grows by 3 cm over a radian: 1 mm on the radius and a hundredth of a radian on the angle.
    void camRadiusIsAsSureAsItWasRead()
    {
        const std::vector<CamProfile::Point> points{{Angle{0}, metres(0.10)}, {Angle{1}, metres(0.13)}};
        const auto cam = *CamProfile::of(points, {metres(0.001), Angle{0.01}});
        QCOMPARE(cam.first().radians, 0.0);
        QCOMPARE(cam.last().radians, 1.0);
        VERIFY_NEAR(cam.radius(Angle{0.5})->si(), 0.115, 1e-12);
        VERIFY_NEAR(cam.uncertaintyAt(Angle{0.5})->si(), std::hypot(0.001, 0.0003), 1e-12);
        QVERIFY(!cam.radius(Angle{1.1}) && !cam.uncertaintyAt(Angle{1.1}));
        QCOMPARE(CamProfile::of(points, {metres(-0.001), Angle{}}).error(), (Error{Refusal::OutOfRange, "uncertainty"}));
    }

    void camRefuses()
    {
        const std::vector<CamProfile::Point> below{{Angle{0}, metres(0.1)}, {Angle{1}, metres(-0.1)}}, one{{Angle{0}, metres(0.1)}};
        QCOMPARE(CamProfile::of(below).error(), (Error{Refusal::OutOfRange, "radius"}));
        QCOMPARE(CamProfile::of(one).error().code, Refusal::TooFewPoints);
    }
};

QTEST_APPLESS_MAIN(TestMachine)
#include "test_machine.moc"
