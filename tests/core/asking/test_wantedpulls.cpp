// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/asking/wantedpulls.h"

#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;

/// What is wanted, in kg or in per cent of a maximum, as the targets that it means.
class WantedPullsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void inKilograms();
    void inPerCent();
    void oneWaitsWhileTheOtherCounts();
    void withoutAZoneNoneIsAskedFor();
    void tolerance();
};

void WantedPullsTest::inKilograms()
{
    WantedPulls wanted;
    QVERIFY(targetsOf(wanted, samples::marks(0.8, 1.3)).empty() && !wanted.at(TargetPlace::Top));
    wanted.masses = {{TargetPlace::Top, kilograms(90)}, {TargetPlace::Bottom, kilograms(60)}};
    const auto targets = targetsOf(wanted, samples::marks(0.8, 1.3));
    QCOMPARE(targets.size(), std::size_t(2));
    QVERIFY(targets[0].place == TargetPlace::Bottom && targets[1].place == TargetPlace::Top);
    VERIFY_NEAR(steelyard::inKilograms(asMass(targets[1].wanted)), 90, 1e-9);
}

/// 60 % of 105 kg at the bottom and 90 % at the top.
void WantedPullsTest::inPerCent()
{
    WantedPulls wanted;
    wanted.inPercent = true;
    wanted.percents = {{TargetPlace::Bottom, 60}, {TargetPlace::Top, 90}};
    QVERIFY(wanted.wants(TargetPlace::Bottom) && !wanted.wants(TargetPlace::Mean));
    // of a maximum that nobody has said nothing follows
    QVERIFY(!wanted.at(TargetPlace::Bottom) && targetsOf(wanted, samples::marks(0.8, 1.3)).empty());
    wanted.oneRepMax = kilograms(105);
    VERIFY_NEAR(steelyard::inKilograms(*wanted.at(TargetPlace::Bottom)), 63, 1e-12);
    VERIFY_NEAR(steelyard::inKilograms(*wanted.at(TargetPlace::Top)), 94.5, 1e-12);
    QCOMPARE(targetsOf(wanted, samples::marks(0.8, 1.3)).size(), std::size_t(2));
}

void WantedPullsTest::oneWaitsWhileTheOtherCounts()
{
    WantedPulls wanted;
    wanted.masses = {{TargetPlace::Top, kilograms(90)}};
    wanted.percents = {{TargetPlace::Top, 80}};
    wanted.oneRepMax = kilograms(100);
    VERIFY_NEAR(steelyard::inKilograms(*wanted.at(TargetPlace::Top)), 90, 1e-12);
    wanted.inPercent = true;
    VERIFY_NEAR(steelyard::inKilograms(*wanted.at(TargetPlace::Top)), 80, 1e-12);
    wanted.inPercent = false;
    VERIFY_NEAR(steelyard::inKilograms(*wanted.at(TargetPlace::Top)), 90, 1e-12);
}

void WantedPullsTest::withoutAZoneNoneIsAskedFor()
{
    WantedPulls wanted;
    wanted.masses = {{TargetPlace::Zone, kilograms(80)}};
    BarMarks marks = samples::marks(0.8, 1.3);
    QVERIFY(targetsOf(wanted, marks).empty());
    marks.zoneFrom = metres(0.9);
    QVERIFY(targetsOf(wanted, marks).empty());
    marks.zoneTo = metres(1.0);
    QCOMPARE(targetsOf(wanted, marks).size(), std::size_t(1));
}

void WantedPullsTest::tolerance()
{
    const auto kg = [](double wanted) { return steelyard::inKilograms(asMass(toleranceOf(weight(kilograms(wanted))))); };
    VERIFY_NEAR(kg(100), 2, 1e-9);
    VERIFY_NEAR(kg(30), 1, 1e-9);
    VERIFY_NEAR(kg(-100), 2, 1e-9);
    VERIFY_NEAR(kg(0), 1, 1e-9);
}

QTEST_APPLESS_MAIN(WantedPullsTest)
#include "test_wantedpulls.moc"
