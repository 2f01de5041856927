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
        QCOMPARE(MeasuredPull::of(two, newtons(-1)).error().code, Refusal::OutOfRange);
        QVERIFY(MeasuredPull::of(two).ok());
    }

    void measuredPullKnowsItsPointsOnly()
    {
        const auto pull = *MeasuredPull::of(Positions{{metres(0.2), newtons(80)}, {metres(0), newtons(300)}, {metres(0.1), newtons(180)}}, newtons(3), SourceId{5});
        QCOMPARE(pull.at(metres(0.1)), newtons(180));
        QCOMPARE(pull.at(metres(0.2)), newtons(80));
        QVERIFY(!pull.at(metres(-0.01)) && !pull.at(metres(0.21)));
        QVERIFY(*pull.at(metres(0.05)) < newtons(300) && *pull.at(metres(0.05)) > newtons(180));
        QCOMPARE(pull.readingU(), newtons(3));
        QCOMPARE(pull.measurement(), SourceId{5});
    }

    void aBenchAidHelpsAgainstTheLoad()
    {
        const HungItem aid = tests::benchAid(0.9, 3, 5);
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

    void camRefuses()
    {
        const std::vector<CamProfile::Point> below{{Angle{0}, metres(0.1)}, {Angle{1}, metres(-0.1)}}, one{{Angle{0}, metres(0.1)}};
        QCOMPARE(CamProfile::of(below).error(), (Error{Refusal::OutOfRange, "radius"}));
        QCOMPARE(CamProfile::of(one).error().code, Refusal::TooFewPoints);
    }
};

QTEST_APPLESS_MAIN(TestMachine)
#include "test_machine.moc"
