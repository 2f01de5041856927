// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/scalecheck.h"

#include "tests/core/near.h"

#include <QtTest>

#include <cmath>
#include <limits>
#endif

using namespace steelyard;

namespace {

/// In steps of 0.1 kg: 0.2 kg with nothing on, then a 10 and a 20 kg plate of a competition set.
ScaleMeasurement hanging(double tenReads, double twentyReads)
{
    return {kilograms(0.2), kilograms(0.1), {{kilograms(10), kilograms(tenReads)}, {kilograms(20), kilograms(twentyReads)}}};
}

IronMeasurement pair(double bothRead)
{
    return {IronSort::Plates, kilograms(20), kilograms(bothRead), kilograms(0.1), std::nullopt, 2};
}

}

/// A scale against known masses, and iron against the mark on it.
class ScaleCheckTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void zeroComesOffFirst();
    void worstErrorCounts();
    void neverBetterThanHalfAStep();
    void aStepOffIsStillGood();
    void scaleRefusalsNameTheEntry();
    void eachOfSeveral();
    void offTheMarkOnlyWhenTheScaleCanTell();
    void ironRefusalsNameTheEntry();
};

void ScaleCheckTest::zeroComesOffFirst()
{
    const auto check = checked(hanging(10.2, 20.2));
    QVERIFY(check.ok());
    VERIFY_NEAR(check->worst.si(), 0, 1e-12);
    QCOMPARE(check->zero.si(), 0.2);
    QCOMPARE(check->knownUpTo.si(), 20.0);
    QVERIFY(check->good);
}

void ScaleCheckTest::worstErrorCounts()
{
    const auto check = checked(hanging(10.3, 19.4));
    QVERIFY(check.ok());
    VERIFY_NEAR(check->worst.si(), -0.8, 1e-12);
    QCOMPARE(check->worstAt.si(), 20.0);
    VERIFY_NEAR(check->accuracy.si(), 0.8, 1e-12);
    QVERIFY(!check->good);
}

void ScaleCheckTest::neverBetterThanHalfAStep()
{
    VERIFY_NEAR(checked(hanging(10.2, 20.2))->accuracy.si(), 0.05, 1e-12);
}

void ScaleCheckTest::aStepOffIsStillGood()
{
    QVERIFY(checked(hanging(10.3, 20.3))->good);
    QVERIFY(!checked(hanging(10.4, 20.2))->good);
}

void ScaleCheckTest::scaleRefusalsNameTheEntry()
{
    ScaleMeasurement scale = hanging(10, 20);
    scale.step.reset();
    QCOMPARE(checked(scale).error(), (Error{Refusal::NotThere, "scale step"}));
    scale = hanging(10, 20);
    scale.empty.reset();
    QCOMPARE(checked(scale).error(), (Error{Refusal::NotThere, "empty"}));
    scale = hanging(10, std::numeric_limits<double>::quiet_NaN());
    QCOMPARE(checked(scale).error(), (Error{Refusal::NotFinite, "reading 2"}));
    scale = hanging(10, 20);
    scale.readings[0].known = kilograms(-1);
    QCOMPARE(checked(scale).error(), (Error{Refusal::OutOfRange, "reading 1"}));
    scale.readings.clear();
    QCOMPARE(checked(scale).error(), (Error{Refusal::TooFewPoints, "readings"}));
}

void ScaleCheckTest::eachOfSeveral()
{
    const auto check = checked(pair(40.6));
    QVERIFY(check.ok());
    VERIFY_NEAR(check->each.si(), 20.3, 1e-12);
    // one reading in steps of d is uncertain by d/√12 (JCGM 100:2008, 4.3.7), and two share it
    VERIFY_NEAR(check->u.si(), 0.1 / std::sqrt(12.0) / 2, 1e-12);
    VERIFY_NEAR(check->offMark.si(), 0.3, 1e-12);
    VERIFY_NEAR(check->offShare, 0.015, 1e-12);
}

void ScaleCheckTest::offTheMarkOnlyWhenTheScaleCanTell()
{
    // 1.96 · 0.1/√12 / 2 = 0.0283 kg a plate
    QVERIFY(checked(pair(40.1))->clear);
    IronMeasurement coarse = pair(40.1);
    coarse.accuracy = kilograms(0.2);
    QVERIFY(!checked(coarse)->clear);
    QVERIFY(!checked(pair(40))->clear);
}

void ScaleCheckTest::ironRefusalsNameTheEntry()
{
    IronMeasurement iron = pair(40);
    iron.marked.reset();
    QCOMPARE(checked(iron).error(), (Error{Refusal::NotThere, "mark"}));
    iron = pair(0);
    QCOMPARE(checked(iron).error(), (Error{Refusal::OutOfRange, "mass"}));
    iron = pair(40);
    iron.count = 0;
    QCOMPARE(checked(iron).error(), (Error{Refusal::OutOfRange, "count"}));
    iron = pair(40);
    iron.accuracy = kilograms(-1);
    QCOMPARE(checked(iron).error(), (Error{Refusal::OutOfRange, "accuracy"}));
}

QTEST_APPLESS_MAIN(ScaleCheckTest)

#include "test_scalecheck.moc"
