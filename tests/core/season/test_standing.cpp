// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/season/clearance.h"
#include "core/season/limits.h"
#include "tests/core/numberedids.h"

#include <QtTest>

#include <array>
#endif

using namespace steelyard;
using numberedids::numbered;
using std::chrono::days;

namespace {

constexpr std::chrono::sys_days today = std::chrono::year(2026) / 11 / 2;

DayStatus status(Fitness fitness, int fromDay, std::optional<int> untilDay)
{
    DayStatus s;
    s.fitness = fitness;
    s.who = "the physiotherapist";
    s.day = today + days(fromDay);
    if (untilDay)
        s.until = today + days(*untilDay);
    return s;
}

Clearance clearance(int fromDay, Method method = Method::EccentricRelease)
{
    Clearance c;
    c.lift = LiftId{1};
    c.method = method;
    c.who = "the head coach";
    c.day = today + days(fromDay);
    return c;
}

}

/// What several day statuses and clearances come to together, and where limits step.
class StandingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nothingIsAll();
    void theStrictestHoldsAndNamesAddUp();
    void untilTheLastOfWhatForbids();
    void onlyWhatHoldsCounts();
    void whatCannotBeReadIsSaidSo();
    void whatWentWithAnother();
    void limitsAsNumbers();
    void limitsStep();
};

void StandingTest::nothingIsAll()
{
    QVERIFY(standingOn({}, today) == DayStanding{});
    const std::array all{status(Fitness::All, -3, 3)};
    QVERIFY(standingOn(all, today) == DayStanding{});
}

void StandingTest::theStrictestHoldsAndNamesAddUp()
{
    DayStatus shoulder = status(Fitness::Some, -3, 12), ankle = status(Fitness::Some, -1, 2);
    shoulder.notMethods = {Method::Overhead};
    shoulder.text = "left shoulder";
    ankle.notMethods = {Method::Jumps, Method::Overhead};
    ankle.notGroups = {LiftGroup::OneLeg};
    ankle.notLifts = {LiftId{1}};
    ankle.text = "left shoulder";
    const DayStanding some = standingOn(std::array{shoulder, ankle, status(Fitness::All, -2, {})}, today);
    QVERIFY(some.fitness == Fitness::Some && !some.unread);
    QVERIFY((some.notMethods == std::set{Method::Overhead, Method::Jumps}));
    QVERIFY((some.notGroups == std::set{LiftGroup::OneLeg} && some.notLifts == std::set{LiftId{1}}));
    QCOMPARE(some.texts, std::vector<std::string>{"left shoulder"});
    QVERIFY(standingOn(std::array{shoulder, status(Fitness::None, 0, 0)}, today).fitness == Fitness::None);
}

void StandingTest::untilTheLastOfWhatForbids()
{
    const DayStatus longer = status(Fitness::Some, -3, 12), shorter = status(Fitness::None, -1, 2), open = status(Fitness::Some, -1, {});
    QVERIFY(standingOn(std::array{shorter, longer}, today).until == today + days(12));
    QVERIFY(standingOn(std::array{longer, shorter}, today).until == today + days(12));
    QVERIFY(!standingOn(std::array{longer, open}, today).until);
    QVERIFY(!standingOn(std::array{open, longer}, today).until);
    // one that forbids nothing has no say in it
    QVERIFY(standingOn(std::array{longer, status(Fitness::All, -1, 40), status(Fitness::All, -1, {})}, today).until == today + days(12));
}

void StandingTest::onlyWhatHoldsCounts()
{
    DayStatus lifted = status(Fitness::None, -5, {});
    lifted.lifted = SaidSo{"the physiotherapist", today};
    const std::array others{status(Fitness::None, 1, {}), status(Fitness::None, -9, -1), lifted};
    QVERIFY(standingOn(others, today) == DayStanding{});
    QVERIFY(standingOn(others, today - days(1)).fitness == Fitness::None);
}

void StandingTest::whatCannotBeReadIsSaidSo()
{
    DayStatus newer = status(Fitness::All, -1, {});
    newer.unread = true;
    const DayStanding standing = standingOn(std::array{newer, status(Fitness::Some, -1, 4)}, today);
    QVERIFY(standing.unread && standing.fitness == Fitness::Some && !standing.until);
}

void StandingTest::whatWentWithAnother()
{
    Clearance taken = clearance(-20);
    taken.takenBack = SaidSo{"the head coach", today - days(5)};
    const Clearance earlier = clearance(-30), later = clearance(-5), otherMethod = clearance(-30, Method::MaximalTest);
    const std::array all{taken, earlier, later, otherMethod};
    const auto state = [&](const Clearance& one, std::chrono::sys_days day = today) { return stateAmong(all, one, day); };
    QVERIFY(state(taken) == ClearanceState::TakenBack);
    QVERIFY(stateOn(earlier, today) == ClearanceState::Valid && state(earlier) == ClearanceState::TakenBack);
    QVERIFY2(state(later) == ClearanceState::Valid, "given on the day on which the other was taken back");
    QVERIFY(state(otherMethod) == ClearanceState::Valid);
    QVERIFY(state(earlier, today - days(6)) == ClearanceState::Valid);
    QVERIFY(state(later, today - days(6)) == ClearanceState::NotYet);
}

void StandingTest::limitsAsNumbers()
{
    const CoachLimits own{60, 110, days(60), days(120), 200, std::chrono::years(21)};
    CoachLimits built;
    for (const LimitKind kind : allLimits) {
        QVERIFY(!ownLimitCount(CoachLimits{}, kind));
        built = withLimit(built, kind, ownLimitCount(own, kind));
        QVERIFY(ourLimitCount(kind) >= rangeOf(kind).leastCount && ourLimitCount(kind) <= rangeOf(kind).mostCount);
        for (const int outside : {rangeOf(kind).leastCount - 1, rangeOf(kind).mostCount + 1})
            QVERIFY(!canBeLimits(withLimit(own, kind, outside)));
        for (const int inside : {rangeOf(kind).leastCount, rangeOf(kind).mostCount})
            QVERIFY(canBeLimits(withLimit(own, kind, inside)));
        QVERIFY(!ownLimitCount(withLimit(own, kind, std::nullopt), kind));
    }
    QVERIFY(built == own);
    QCOMPARE(ourLimitCount(LimitKind::TyrePercent), CoachLimits{}.tyreCapPercent());
    QCOMPARE(ourLimitCount(LimitKind::EccentricPercent), CoachLimits{}.eccentricCapPercent());
    QVERIFY(days(ourLimitCount(LimitKind::MaximumAge)) == CoachLimits{}.maximumGoodFor() && days(ourLimitCount(LimitKind::BandAge)) == CoachLimits{}.bandGoodFor());
    QCOMPARE(ourLimitCount(LimitKind::HoldPercent) / 100.0, CoachLimits{}.holdFactor());
    QVERIFY(std::chrono::years(ourLimitCount(LimitKind::OfAge)) == CoachLimits{}.adultFrom());
}

void StandingTest::limitsStep()
{
    QCOMPARE(steppedLimitCount({}, LimitKind::TyrePercent, true), 75);
    QCOMPARE(steppedLimitCount({}, LimitKind::TyrePercent, false), 65);
    QCOMPARE(steppedLimitCount({}, LimitKind::BandAge, true), 189);
    // from between two steps to the next of them
    const CoachLimits odd = withLimit({}, LimitKind::TyrePercent, 72);
    QCOMPARE(steppedLimitCount(odd, LimitKind::TyrePercent, true), 75);
    QCOMPARE(steppedLimitCount(odd, LimitKind::TyrePercent, false), 70);
    // and no further than it can be
    QCOMPARE(steppedLimitCount(withLimit({}, LimitKind::EccentricPercent, 130), LimitKind::EccentricPercent, true), 130);
    QCOMPARE(steppedLimitCount(withLimit({}, LimitKind::MaximumAge, 3), LimitKind::MaximumAge, false), 1);
    QCOMPARE(steppedLimitCount(withLimit({}, LimitKind::MaximumAge, 364), LimitKind::MaximumAge, true), 365);
}

QTEST_APPLESS_MAIN(StandingTest)
#include "test_standing.moc"
