// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/gates/mayuse.h"

#include "tests/core/work/gates/gating.h"

#include <QtTest>
#include <rapidcheck.h>

#include <map>
#endif

using namespace steelyard;
using namespace gating;
using std::chrono::year;

namespace {

struct Asked {
    UseQuestion question;
    GateFacts facts;
};

std::optional<std::chrono::sys_days> someDay(int from, int to)
{
    const int n = *rc::gen::inRange(from, to);
    return n % 4 == 0 ? std::nullopt : std::optional(today + days(n));
}

LiftId someLift()
{
    return *rc::gen::element(squat, overheadPress, tyreFlip, LiftId{20}, LiftId::added(numbered(9)));
}

Method someMethod()
{
    return static_cast<Method>(*rc::gen::inRange(1, static_cast<int>(lastMethod) + 1));
}

Clearance someClearance(const UseQuestion& question, std::uint64_t number)
{
    Clearance c = clearance(*rc::gen::element(question.lift, squat), *rc::gen::element(question.method, question.method, Method::MaximalTest, Method::Tyre, Method::Overhead), number);
    c.day = today + days(*rc::gen::inRange(-60, 20));
    c.until = someDay(-30, 60);
    c.approvesMinor = *rc::gen::arbitrary<bool>();
    if (const auto when = someDay(-40, 20); when && *rc::gen::inRange(0, 3) == 0)
        c.takenBack = SaidSo{"the doctor", *when};
    return c;
}

DayStatus someStatus(std::uint64_t number)
{
    DayStatus s = status(*rc::gen::element(Fitness::All, Fitness::Some, Fitness::None), number);
    s.day = today + days(*rc::gen::inRange(-20, 5));
    s.until = someDay(-5, 20);
    if (s.fitness == Fitness::Some) {
        s.notMethods = {someMethod()};
        s.notGroups = {static_cast<LiftGroup>(*rc::gen::inRange(1, static_cast<int>(lastLiftGroup) + 1))};
        s.notLifts = {someLift()};
    }
    s.text = *rc::gen::element("", "", "left shoulder");
    if (const auto when = someDay(-10, 10); when && *rc::gen::inRange(0, 3) == 0)
        s.lifted = SaidSo{"the doctor", *when};
    return s;
}

/// Anything that can be asked, some of it looked over; permitted about as often as not.
Asked someAsked()
{
    Asked a;
    const LiftId lift = someLift();
    a.question = asking(someMethod(), lift, *rc::gen::inRange(0, 1500) / 10.0, *rc::gen::inRange(0, 60) / 10.0);
    if (lift == tyreFlip)
        a.question.maximum = maximumOf(deadliftId);
    a.question.maximum->day = today - days(*rc::gen::inRange(0, 120));
    a.question.maximum->plain = *rc::gen::inRange(0, 5) > 0;
    if (*rc::gen::inRange(0, 6) == 0)
        a.question.maximum.reset();
    if (*rc::gen::inRange(0, 6) == 0)
        a.question.load.reset();
    a.facts = adult(lift.own.isNone() ? lift : *rc::gen::element(LiftId{}, squat, overheadPress));
    a.facts.birthYear = *rc::gen::element(std::optional<year>(), std::optional(year(2011)), std::optional(year(2008)), std::optional(year(1999)), std::optional(year(1990)));
    for (int i = *rc::gen::inRange(0, 4); i > 0; --i)
        a.facts.clearances.push_back(someClearance(a.question, static_cast<std::uint64_t>(i)));
    for (int i = *rc::gen::inRange(0, 6) - 3; i > 0; --i)
        a.facts.statuses.push_back(someStatus(static_cast<std::uint64_t>(20 + i)));
    if (*rc::gen::inRange(0, 3) > 0)
        a.question = lookedOver(a.question, a.facts);
    return a;
}

Permission answerTo(const Asked& asked)
{
    const auto answer = mayUse(asked.question, asked.facts);
    RC_ASSERT(answer.ok());
    return answer->permission;
}

/// Something that can only stand more in the way.
void restrict(Asked& a)
{
    GateFacts& f = a.facts;
    const auto which = [](auto& list) -> auto& { return list[*rc::gen::inRange<std::size_t>(0, list.size())]; };
    switch (*rc::gen::inRange(0, 13)) {
    case 0: f.statuses.push_back(someStatus(40)); return;
    case 1: f.birthYear = year(2011); return;
    case 2: f.birthYear.reset(); return;
    case 3: f.limits.tyrePercent = *rc::gen::inRange(1, 71); return;
    case 4: f.limits.eccentricPercent = *rc::gen::inRange(100, 121); return;
    case 5: f.limits.maximumAge = days(*rc::gen::inRange(1, 91)); return;
    case 6: f.limits.ofAge = std::chrono::years(*rc::gen::inRange(18, 26)); return;
    case 7:
        if (!f.clearances.empty())
            if (Clearance& c = which(f.clearances); !c.takenBack)
                c.takenBack = SaidSo{"the doctor", today - days(*rc::gen::inRange(0, 60))};
        return;
    case 8:
        if (!f.clearances.empty()) {
            Clearance& c = which(f.clearances);
            c.until = std::min(c.until.value_or(std::chrono::sys_days::max()), today - days(1));
        }
        return;
    case 9:
        if (!f.clearances.empty())
            which(f.clearances).approvesMinor = false;
        return;
    case 10:
        if (a.question.maximum) {
            a.question.maximum->day -= days(*rc::gen::inRange(0, 200));
            a.question.maximum->lowest = a.question.maximum->lowest * (*rc::gen::inRange(50, 101) / 100.0);
        }
        return;
    case 11:
        for (DayStatus& s : f.statuses)
            s.lifted.reset();
        return;
    default:
        for (DayStatus& s : f.statuses)
            s.until.reset();
    }
}

}

/// What holds whatever is asked: a restriction more is never an answer less strict, and a heavier load never is permitted where a
/// lighter one was not.
class MayUseLawsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aRestrictionNeverPermitsMore();
    void aHeavierLoadNeverPermitsMore();
    void notKnowingNeverPermitsWhatWasForbidden();
    void lookingOverNeverUndoesARefusal();
    void asStrictAsItsReasons();
};

void MayUseLawsTest::aRestrictionNeverPermitsMore()
{
    std::map<std::pair<Permission, Permission>, int> seen;
    const bool ok = rc::check("a restriction more", [&seen] {
        Asked a = someAsked();
        const Permission before = answerTo(a);
        restrict(a);
        const Permission after = answerTo(a);
        ++seen[{before, after}];
        RC_ASSERT(after >= before);
    });
    QVERIFY(ok);
    // it has been tried from every answer, and has made each stricter
    for (const auto& change : {std::pair{Permission::Permitted, Permission::Permitted}, {Permission::Permitted, Permission::Not},
                               {Permission::Caution, Permission::Not}, {Permission::Not, Permission::Not}})
        QVERIFY(seen[change] > 0);
}

void MayUseLawsTest::aHeavierLoadNeverPermitsMore()
{
    int stricter = 0;
    const bool ok = rc::check("a heavier load, or one that is known less well", [&stricter] {
        Asked a = someAsked();
        RC_PRE(a.question.load.has_value());
        const Permission before = answerTo(a);
        const Mass more = kilograms(*rc::gen::inRange(0, 1000) / 10.0);
        if (*rc::gen::arbitrary<bool>())
            a.question.load->value = a.question.load->value + more;
        else
            a.question.load->giveOrTake = a.question.load->giveOrTake + more;
        const Permission after = answerTo(a);
        stricter += after > before;
        RC_ASSERT(after >= before);
    });
    QVERIFY(ok && stricter > 0);
}

void MayUseLawsTest::notKnowingNeverPermitsWhatWasForbidden()
{
    int forbidden = 0;
    const bool ok = rc::check("load, maximum or birth year not known", [&forbidden] {
        Asked a = someAsked();
        const Permission before = answerTo(a);
        switch (*rc::gen::inRange(0, 3)) {
        case 0: a.question.load.reset(); break;
        case 1: a.question.maximum.reset(); break;
        default: a.facts.birthYear.reset();
        }
        // what is looked over is what was asked about before
        if (before == Permission::Not) {
            a.question.lookedOver.clear();
            ++forbidden;
            RC_ASSERT(answerTo(a) != Permission::Permitted);
        }
    });
    QVERIFY(ok && forbidden > 50);
}

void MayUseLawsTest::lookingOverNeverUndoesARefusal()
{
    const bool ok = rc::check("everything looked over", [] {
        Asked a = someAsked();
        const Permission before = answerTo(a);
        const auto answer = mayUse(a.question, a.facts);
        for (const Reason& reason : answer->reasons)
            a.question.lookedOver.push_back(reason.key);
        RC_ASSERT(answerTo(a) == (before == Permission::Not ? Permission::Not : Permission::Permitted));
    });
    QVERIFY(ok);
}

void MayUseLawsTest::asStrictAsItsReasons()
{
    const bool ok = rc::check("the answer is that of its reasons, each stands there once", [] {
        const Asked a = someAsked();
        const auto answer = mayUse(a.question, a.facts);
        Permission strictest = Permission::Permitted;
        std::set<ReasonKey> keys;
        for (const Reason& reason : answer->reasons) {
            RC_ASSERT(keys.insert(reason.key).second && reason.alone != Permission::Permitted);
            RC_ASSERT(!reason.lookedOver || reason.alone == Permission::Caution);
            if (!reason.lookedOver)
                strictest = std::max(strictest, reason.alone);
        }
        RC_ASSERT(answer->permission == strictest);
    });
    QVERIFY(ok);
}

QTEST_APPLESS_MAIN(MayUseLawsTest)
#include "test_mayuselaws.moc"
