// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/machinekit.h"

#include "tests/core/near.h"

#include <QtTest>

#include <cmath>
#endif

using namespace steelyard;

namespace {

constexpr double degree = std::numbers::pi / 180, g = 9.80665;

MachineMeasurement cam(std::initializer_list<std::pair<double, double>> degreesAndCentimetres, std::optional<double> stackKg = 40)
{
    MachineMeasurement m;
    if (stackKg)
        m.stack = kilograms(*stackKg);
    for (const auto& [degrees, cm] : degreesAndCentimetres) {
        MachineReading& r = m.readings.emplace_back();
        r.angle = Angle{degrees * degree};
        r.radius = metres(cm / 100);
    }
    return m;
}

MachineMeasurement pulled(std::initializer_list<std::pair<double, double>> centimetresAndMasses)
{
    MachineMeasurement m;
    m.by = MachineMeasuring::Pull;
    m.stack = kilograms(40);
    m.scaleStep = kilograms(0.5);
    for (const auto& [cm, kg] : centimetresAndMasses) {
        MachineReading& r = m.readings.emplace_back();
        r.travel = metres(cm / 100);
        r.pull = kilograms(kg);
    }
    return m;
}

}

/// A cam machine from its readings, by radius or by pull: what it comes to and what is refused.
class MachineKitTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aRoundWheelByHand();
    void anEvenPullByHand();
    void refusals();
    void torqueOnlyWhereItWasRead();
    void readingsInTheirOrder();
    void whereToReadNext();
};

/// A wheel of 10 cm all the way round a radian and a half: torque 40·g·0.1, rise 15 cm, by statics.
void MachineKitTest::aRoundWheelByHand()
{
    const double halfway = 0.75 / degree, end = 1.5 / degree;
    const auto m = cam({{0, 10}, {halfway, 10}, {end, 10}});
    const auto answer = answerOf(m);
    QVERIFY(answer.ok());
    VERIFY_NEAR_SHARE(answer->meanTorque->value.newtonMetres, 40 * g * 0.1, 1e-12);
    VERIFY_NEAR_SHARE(answer->rise.si(), 0.15, 1e-12);
    VERIFY_NEAR_SHARE(answer->work.si(), 40 * g * 0.15, 1e-12);
    // the stack's 2/√3 % and 2 mm in 100: 2.31 % together, the same for mean and torque as the radius never changes
    const double u = std::hypot(0.02 / std::sqrt(3), 0.02);
    VERIFY_NEAR_SHARE(answer->meanTorque->u.newtonMetres, u * 40 * g * 0.1, 1e-12);
    VERIFY_NEAR_SHARE(torqueAt(*camFrom(m), kilograms(40), Angle{0.3})->u.newtonMetres, u * 40 * g * 0.1, 1e-12);
    // work besides by a degree at each end
    VERIFY_NEAR_SHARE(answer->uWork.si(), std::hypot(u * 40 * g * 0.15, std::sqrt(2) * 40 * g * 0.1 * degree), 1e-12);
    QVERIFY(!answer->meanPull);
}

void MachineKitTest::anEvenPullByHand()
{
    const auto answer = answerOf(pulled({{0, 30}, {20, 30}, {50, 30}}));
    QVERIFY(answer.ok());
    VERIFY_NEAR_SHARE(answer->meanPull->si(), 30 * g, 1e-12);
    VERIFY_NEAR_SHARE(answer->work.si(), 30 * g * 0.5, 1e-12);
    VERIFY_NEAR_SHARE(answer->greatestPull->si(), 30 * g, 1e-12);
    VERIFY_NEAR_SHARE(answer->uGreatestPull->si(), 0.5 / std::sqrt(12) * g, 1e-12);
    // half a kilogram of step: 0.5/√12, and the ends differ by nothing
    VERIFY_NEAR_SHARE(answer->uMeanPull->si(), 0.5 / std::sqrt(12) * g, 1e-12);
    VERIFY_NEAR_SHARE(answer->uWork.si(), std::hypot(0.5 / std::sqrt(12) * g * 0.5, std::sqrt(2) * 30 * g * 0.01), 1e-12);
    QVERIFY(!answer->meanTorque);
    QCOMPARE(answer->rise, Length{});
}

void MachineKitTest::refusals()
{
    const auto error = [](const MachineMeasurement& m) { return answerOf(m).error(); };
    QCOMPARE(error({}), (Error{Refusal::TooFewPoints, "angles"}));
    QCOMPARE(error(cam({{0, 10}})), (Error{Refusal::TooFewPoints, "angles"}));
    QCOMPARE(error(cam({{0, 10}, {40, 12}}, std::nullopt)), (Error{Refusal::NotThere, "stack"}));
    QCOMPARE(error(cam({{0, 10}, {40, 12}}, 0)), (Error{Refusal::OutOfRange, "stack"}));
    QCOMPARE(error(cam({{0, 10}, {40, 12}, {0, 11}})), (Error{Refusal::PointsNotApart, "reading 3"}));
    QCOMPARE(error(cam({{0, 10}, {40, -1}})), (Error{Refusal::OutOfRange, "reading 2"}));
    QCOMPARE(error(cam({{std::nan(""), 10}, {40, 1}})), (Error{Refusal::OutOfRange, "reading 1"}));
    QCOMPARE(error(pulled({{0, 30}})), (Error{Refusal::TooFewPoints, "travels"}));
    MachineMeasurement m = pulled({{0, 30}, {50, 30}});
    m.scaleStep.reset();
    QCOMPARE(error(m), (Error{Refusal::NotThere, "scale step"}));
    m.scaleStep = kilograms(0);
    QCOMPARE(error(m), (Error{Refusal::OutOfRange, "scale step"}));
    m.scaleStep = kilograms(0.5);
    m.stack.reset();
    QCOMPARE(error(m), (Error{Refusal::NotThere, "stack"}));
    // without a stack the cam is known all the same
    QVERIFY(camFrom(cam({{0, 10}, {40, 12}}, std::nullopt)).ok());
}

void MachineKitTest::torqueOnlyWhereItWasRead()
{
    const auto profile = *camFrom(cam({{10, 8}, {40, 12}}));
    VERIFY_NEAR_SHARE(torqueAt(profile, kilograms(50), Angle{40 * degree})->value.newtonMetres, 50 * g * 0.12, 1e-12);
    const auto answer = answerOf(cam({{10, 8}, {40, 12}, {60, 10}}));
    VERIFY_NEAR(answer->greatestAngle.radians, 40 * degree, 1e-12);
    VERIFY_NEAR_SHARE(answer->greatestTorque->value.newtonMetres, 40 * g * 0.12, 1e-12);
    QVERIFY(!torqueAt(profile, kilograms(50), Angle{9 * degree}) && !torqueAt(profile, kilograms(50), Angle{41 * degree}));
}

void MachineKitTest::readingsInTheirOrder()
{
    MachineMeasurement m = cam({{40, 12}, {0, 8}, {20, 10}});
    m.readings.push_back({Angle{1}, std::nullopt, std::nullopt, std::nullopt});
    QCOMPARE(machineReadingsThatCount(m), (std::vector<std::size_t>{1, 2, 0}));
    // read by travel it has none of these
    m.by = MachineMeasuring::Pull;
    QVERIFY(machineReadingsThatCount(m).empty());
}

void MachineKitTest::whereToReadNext()
{
    QVERIFY(!nextMachineReading(cam({{0, 8}})));
    VERIFY_NEAR(nextMachineReading(cam({{0, 8}, {120, 9}}))->angle->radians, 60 * degree, 1e-12);
    VERIFY_NEAR(nextMachineReading(pulled({{0, 8}, {50, 9}, {20, 9}}))->travel->si(), 0.35, 1e-12);
    QVERIFY(!nextMachineReading(cam({{0, 8}, {30, 9}, {60, 9}, {90, 9}, {120, 9}})));
    VERIFY_NEAR(nextMachineReading(cam({{0, 8}, {20, 9}, {40, 9}, {60, 9}, {120, 9}}))->angle->radians, 90 * degree, 1e-12);
    QVERIFY(!nextMachineReading(cam({{0, 8}, {1, 9}, {2, 9}, {3, 9}, {4, 9}, {5, 9}, {6, 9}, {7, 9}, {8, 9}, {9, 9}, {10, 9}, {120, 9}})));
}

QTEST_APPLESS_MAIN(MachineKitTest)
#include "test_machinekit.moc"
