// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/asking/herstrength.h"

#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/athlete/keepisometric.h"
#include "core/work/keeping/putright.h"
#include "core/work/keeping/undo.h"
#include "tests/core/near.h"
#include "tests/core/work/memorykeeper.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <limits>
#endif

using namespace steelyard;
using keeping::day;
using keeping::Device;

namespace {

constexpr LiftId squat{1}, bench{4};

IsometricPull pulled(double metre, double kg, std::chrono::sys_days when = day(2026, 11, 2), LiftId lift = squat, std::optional<Entered<Mass>> step = std::nullopt)
{
    return {{}, when, lift, metres(metre), kilograms(kg), step};
}

RecordId somebody(Device& device, std::optional<std::chrono::year> born = std::chrono::year(1999))
{
    Athlete athlete;
    athlete.name = "Ines";
    athlete.birthYear = born;
    keepAthlete(device.keeping, athlete, device.told());
    return device.last.id;
}

}

/// Isometric pulls: kept by day, counted together while they are of one time, and made into her strength.
class HerStrengthTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void onlyOfThisLiftAndOfOneTime();
    void scaleStepMakesItsUncertainty();
    void refusedAsTheCurveRefuses();
    void keptByDay();
    void takenOutAndUndone();
    void whatCannotBeKept_data();
    void whatCannotBeKept();
    void waitsForAgreement();
};

void HerStrengthTest::onlyOfThisLiftAndOfOneTime()
{
    const std::vector<IsometricPull> all{pulled(0.9, 120, day(2026, 11, 2)), pulled(0.9, 90, day(2026, 10, 4)), pulled(1.1, 130, day(2026, 10, 5)), pulled(0.4, 80, day(2026, 11, 1), bench)};
    const auto count = pullsThatCount(all, squat);
    // the 28th day before still counts, the 29th does not
    QCOMPARE(count.size(), std::size_t(2));
    QVERIFY(count[0] == all[2] && count[1] == all[0]);
    QCOMPARE(pullsThatCount(all, bench).size(), std::size_t(1));
    QVERIFY(pullsThatCount(all, LiftId{9}).empty());
}

/// A step of 12 kg is its square root of twelfth part, 3.46 kg; a single pull spreads by the usual share besides.
void HerStrengthTest::scaleStepMakesItsUncertainty()
{
    const Entered<Mass> step = kilograms(12);
    const auto rough = strengthOf(std::vector{pulled(0.8, 100, {}, squat, step), pulled(1.0, 110), pulled(1.2, 130)});
    QVERIFY(rough);
    VERIFY_NEAR(rough->points()[0].u.si(), weight(kilograms(std::hypot(12 / std::sqrt(12.0), 5.0))).si(), 1e-9);
    VERIFY_NEAR(rough->points()[1].u.si(), weight(kilograms(5.5)).si(), 1e-9);
    VERIFY_NEAR(inKilograms(asMass(rough->points()[2].pull)), 130, 1e-9);
}

void HerStrengthTest::refusedAsTheCurveRefuses()
{
    const auto two = strengthOf(std::vector{pulled(0.8, 100), pulled(1.0, 110)});
    QVERIFY(!two);
    QCOMPARE(two.error().code, Refusal::TooFewPoints);
    QVERIFY(!strengthOf({}));
}

void HerStrengthTest::keptByDay()
{
    Device device;
    const RecordId id = somebody(device);
    keepIsometricPull(device.keeping, id, pulled(1.1, 130, day(2026, 11, 2)), device.told());
    QVERIFY(device.last.kept() && !device.last.id.isNone());
    keepIsometricPull(device.keeping, id, pulled(0.9, 120, day(2026, 10, 20), squat, kilograms(0.5)), device.told());
    QVERIFY(device.last.kept());
    const Athlete& athlete = *device.book.athlete(id);
    QCOMPARE(athlete.pulls.size(), std::size_t(2));
    QVERIFY(athlete.pulls[0].day == day(2026, 10, 20) && athlete.pulls[0].height == metres(0.9) && athlete.pulls[0].scaleStep == Entered<Mass>(kilograms(0.5)));
    QVERIFY(athlete.pulls[1].lift == squat && athlete.pulls[1].pull == kilograms(130) && !athlete.pulls[1].scaleStep);
}

void HerStrengthTest::takenOutAndUndone()
{
    Device device;
    const RecordId id = somebody(device);
    keepIsometricPull(device.keeping, id, pulled(1.1, 130), device.told());
    const RecordId pull = device.last.id;
    takeOut(device.keeping, isometricPullPlace(pull, id), device.told());
    QVERIFY(device.last.kept() && device.book.athlete(id)->pulls.empty());
    takeOut(device.keeping, isometricPullPlace(pull, id), device.told());
    QVERIFY(device.last.unfit == Unfit::RecordUnknown);
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept());
    QCOMPARE(device.book.athlete(id)->pulls.size(), std::size_t(1));
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept() && device.book.athlete(id)->pulls.empty());
}

void HerStrengthTest::whatCannotBeKept_data()
{
    QTest::addColumn<IsometricPull>("pull");
    QTest::addColumn<Unfit>("unfit");
    const auto row = [](const char* name, const IsometricPull& pull, Unfit unfit) { QTest::newRow(name) << pull << unfit; };
    row("no pull", pulled(0.9, 0), Unfit::QuantityUnfit);
    row("below the floor", pulled(-0.1, 100), Unfit::QuantityUnfit);
    row("no number", pulled(0.9, std::numeric_limits<double>::quiet_NaN()), Unfit::QuantityUnfit);
    row("no step", pulled(0.9, 100, day(2026, 11, 2), squat, kilograms(0)), Unfit::QuantityUnfit);
    row("too much to write", pulled(0.9, 1e300), Unfit::QuantityUnfit);
    row("no lift", pulled(0.9, 100, day(2026, 11, 2), LiftId{}), Unfit::LiftUnknown);
    row("a day ahead", pulled(0.9, 100, day(2026, 11, 3)), Unfit::DayAhead);
}

void HerStrengthTest::whatCannotBeKept()
{
    QFETCH(const IsometricPull, pull);
    QFETCH(const Unfit, unfit);
    Device device;
    const RecordId id = somebody(device);
    keepIsometricPull(device.keeping, id, pull, device.told());
    QVERIFY(device.last.unfit == unfit);
    QVERIFY(device.book.athlete(id)->pulls.empty());
    keepIsometricPull(device.keeping, samples::numbered(99), pulled(0.9, 100), device.told());
    QVERIFY(device.last.unfit == Unfit::AthleteUnknown);
}

void HerStrengthTest::waitsForAgreement()
{
    Device device;
    const RecordId unknown = somebody(device, std::nullopt), minor = somebody(device, std::chrono::year(2012));
    keepIsometricPull(device.keeping, unknown, pulled(0.9, 100), device.told());
    QVERIFY(device.last.unfit == Unfit::BirthYearFirst);
    keepIsometricPull(device.keeping, minor, pulled(0.9, 100), device.told());
    QVERIFY(device.last.unfit == Unfit::AgreementFirst);
}

QTEST_APPLESS_MAIN(HerStrengthTest)
#include "test_herstrength.moc"
