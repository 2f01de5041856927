// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/gates/mayuse.h"

#include "core/work/gates/methodrules.h"
#include "core/work/keeping/athlete/keepclearance.h"
#include "core/work/keeping/athlete/keepstatus.h"
#include "core/work/keeping/keeplift.h"
#include "core/work/keeping/keepvenue.h"
#include "tests/core/work/athlete/somebody.h"
#include "tests/core/work/gates/gating.h"

#include <QtTest>

#include <functional>
#include <limits>
#endif

using namespace steelyard;
using namespace gating;
using std::chrono::year;
using std::chrono::years;

/// One thing that stands in the way, and nothing else.
struct Case {
    Method method;
    std::function<void(UseQuestion&, GateFacts&)> change;
    std::optional<GateCode> code; ///< none: permitted, or only what had been looked over before
    Permission permission = Permission::Permitted;
    LiftId lift = squat;
};
Q_DECLARE_METATYPE(Case)
using Spoil = std::function<void(UseQuestion&, GateFacts&)>;
Q_DECLARE_METATYPE(Spoil)

namespace {

/// Cleared for it, with an approval for minors, so that nothing is against it.
GateFacts cleared(Method method, LiftId lift)
{
    GateFacts facts = adult(lift);
    if (rulesOf(method, {}).clearance)
        facts.clearances = {clearance(lift, method)};
    return facts;
}

}

/// The gates: every reason by itself, with its facts and what would settle it, and what cannot be asked.
class MayUseTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void permittedAsItStands_data();
    void permittedAsItStands();
    void oneReason_data();
    void oneReason();
    void factsOfClearances();
    void factsOfStatuses();
    void factsOfLoads();
    void atTheUnfavourableEnd();
    void whatTheLiftBringsAlong();
    void givenBeforeOneWasTakenBack();
    void severalAtOnce();
    void lookedOverIsOneRecord();
    void remedies();
    void badInput_data();
    void badInput();
    void fromTheBook();
    void groups();
};

void MayUseTest::permittedAsItStands_data()
{
    QTest::addColumn<Method>("method");
    for (int number = 1; number <= static_cast<int>(lastMethod); ++number)
        QTest::newRow(qPrintable(QString::number(number))) << static_cast<Method>(number);
}

void MayUseTest::permittedAsItStands()
{
    QFETCH(Method, method);
    const LiftId lift = method == Method::Tyre ? tyreFlip : squat;
    const GateFacts facts = cleared(method, lift);
    const UseQuestion question = asking(method, lift);
    const auto answer = mayUse(question, facts);
    const bool caution = rulesOf(method, {}).caution;
    QVERIFY(answer && answer->permission == (caution ? Permission::Caution : Permission::Permitted));
    QCOMPARE(answer->reasons.size(), std::size_t(caution ? 1 : 0));
    QVERIFY(!caution || answer->reasons.front().key == (ReasonKey{GateCode::CautionWaits, method, {}}));
    const auto looked = mayUse(lookedOver(question, facts), facts);
    QVERIFY(looked && looked->permission == Permission::Permitted);
    QVERIFY(looked->reasons.size() == answer->reasons.size() && std::all_of(looked->reasons.begin(), looked->reasons.end(), [](const Reason& r) { return r.lookedOver; }));
}

void MayUseTest::oneReason_data()
{
    QTest::addColumn<Case>("what");
    const auto row = [](const char* name, Case what) { QTest::newRow(name) << std::move(what); };
    using enum Method;
    using enum Permission;
    using Q = UseQuestion;
    using F = GateFacts;
    const auto age = [](int years) { return [years](Q&, F& f) { f.birthYear = year(2026 - years); }; };
    const auto noYear = [](Q&, F& f) { f.birthYear.reset(); };

    row("no clearance, eccentric", {EccentricRelease, [](Q&, F& f) { f.clearances.clear(); }, GateCode::ClearanceMissing, Not});
    row("no clearance, maximal test", {MaximalTest, [](Q&, F& f) { f.clearances.clear(); }, GateCode::ClearanceMissing, Not});
    row("no clearance, isometric test", {IsometricTest, [](Q&, F& f) { f.clearances.clear(); }, GateCode::ClearanceMissing, Not});
    row("cleared for another lift", {EccentricRelease, [](Q&, F& f) { f.clearances[0].lift = LiftId{2}; }, GateCode::ClearanceMissing, Not});
    row("cleared for another method", {EccentricRelease, [](Q&, F& f) { f.clearances[0].method = MaximalTest; }, GateCode::ClearanceMissing, Not});
    row("expired yesterday", {EccentricRelease, [](Q&, F& f) { f.clearances[0].until = today - days(1); }, GateCode::ClearanceExpired, Not});
    row("until today", {EccentricRelease, [](Q&, F& f) { f.clearances[0].until = today; }, std::nullopt, Permitted});
    row("without an end", {EccentricRelease, [](Q&, F& f) { f.clearances[0].until.reset(); }, std::nullopt, Permitted});
    row("from tomorrow on", {EccentricRelease, [](Q&, F& f) { f.clearances[0].day = today + days(1); }, GateCode::ClearanceNotYet, Not});
    row("from today on", {EccentricRelease, [](Q&, F& f) { f.clearances[0].day = today; }, std::nullopt, Permitted});
    row("taken back today", {EccentricRelease, [](Q&, F& f) { f.clearances[0].takenBack = SaidSo{"the doctor", today}; }, GateCode::ClearanceTakenBack, Not});
    row("taken back tomorrow", {EccentricRelease, [](Q&, F& f) { f.clearances[0].takenBack = SaidSo{"the doctor", today + days(1)}; }, std::nullopt, Permitted});
    const auto chains = [](auto change) { return [change](Q&, F& f) { f.clearances = {clearance(squat, Chains)}; change(f.clearances[0]); }; };
    row("chains, taken back", {Chains, chains([](Clearance& c) { c.takenBack = SaidSo{"the doctor", today}; }), GateCode::ClearanceTakenBack, Not});
    row("chains, expired", {Chains, chains([](Clearance& c) { c.until = today - days(1); }), GateCode::ClearanceExpired, Caution});
    row("chains, to come", {Chains, chains([](Clearance& c) { c.day = today + days(1); }), GateCode::ClearanceNotYet, Caution});
    row("plain iron, taken back", {Plain, [](Q&, F& f) { f.clearances = {clearance(squat, Plain)}; f.clearances[0].takenBack = SaidSo{"", today}; }, GateCode::ClearanceTakenBack, Not});

    row("none", {Plain, [](Q&, F& f) { f.statuses = {status(Fitness::None)}; }, GateCode::StatusNone, Not});
    row("all", {Plain, [](Q&, F& f) { f.statuses = {status(Fitness::All)}; }, std::nullopt, Permitted});
    row("all, with a word", {Plain, [](Q&, F& f) { f.statuses = {status(Fitness::All)}; f.statuses[0].text = "tired"; }, GateCode::StatusText, Caution});
    row("none, lifted today", {Plain, [](Q&, F& f) { f.statuses = {status(Fitness::None)}; f.statuses[0].lifted = SaidSo{"the doctor", today}; }, std::nullopt, Permitted});
    row("none, lifted tomorrow", {Plain, [](Q&, F& f) { f.statuses = {status(Fitness::None)}; f.statuses[0].lifted = SaidSo{"the doctor", today + days(1)}; }, GateCode::StatusNone, Not});
    row("none until yesterday", {Plain, [](Q&, F& f) { f.statuses = {status(Fitness::None)}; f.statuses[0].until = today - days(1); }, std::nullopt, Permitted});
    row("none until today", {Plain, [](Q&, F& f) { f.statuses = {status(Fitness::None)}; f.statuses[0].until = today; }, GateCode::StatusNone, Not});
    row("none from tomorrow on", {Plain, [](Q&, F& f) { f.statuses = {status(Fitness::None)}; f.statuses[0].day = today + days(1); }, std::nullopt, Permitted});
    row("none without an end", {Plain, [](Q&, F& f) { f.statuses = {status(Fitness::None)}; f.statuses[0].until.reset(); f.statuses[0].day -= days(900); }, GateCode::StatusNone, Not});
    row("of a newer app", {Plain, [](Q&, F& f) { f.statuses = {status(Fitness::All)}; f.statuses[0].unread = true; }, GateCode::StatusUnread, Not});
    const auto some = [](auto change) { return [change](Q&, F& f) { f.statuses = {status(Fitness::Some)}; change(f.statuses[0]); }; };
    row("some in words", {Plain, some([](DayStatus& s) { s.text = "easy"; }), GateCode::StatusText, Caution});
    row("names the method", {Chains, some([](DayStatus& s) { s.notMethods = {Chains}; }), GateCode::StatusNames, Not});
    row("names another method", {Chains, some([](DayStatus& s) { s.notMethods = {BandsBelow, Overhead}; }), std::nullopt, Permitted});
    row("names the lift", {Chains, some([](DayStatus& s) { s.notLifts = {squat}; }), GateCode::StatusNames, Not});
    row("names another lift", {Chains, some([](DayStatus& s) { s.notLifts = {LiftId{2}}; }), std::nullopt, Permitted});
    row("names the lift's group", {Plain, some([](DayStatus& s) { s.notGroups = {LiftGroup::Squat}; }), GateCode::StatusNames, Not});
    row("names another group", {Plain, some([](DayStatus& s) { s.notGroups = {LiftGroup::Press, LiftGroup::OneLeg}; }), std::nullopt, Permitted});
    row("no overhead", {Plain, some([](DayStatus& s) { s.notMethods = {Overhead}; }), GateCode::StatusNames, Not, overheadPress});
    row("no maximal lifts, and it is one", {Plain, [](Q& q, F& f) { f.statuses = {status(Fitness::Some)}; f.statuses[0].notMethods = {MaximalTest}; q.load->value = kilograms(100); }, GateCode::StatusNames, Not});
    row("a lift like none, a group named", {Plain, [](Q& q, F& f) { q.lift = LiftId::added(numbered(9)); q.maximum->lift = q.lift; f.alike = {}; f.statuses = {status(Fitness::Some)}; f.statuses[0].notGroups = {LiftGroup::Press}; }, GateCode::StatusMayName, Caution});
    row("a lift like none, a lift named", {Plain, [](Q& q, F& f) { q.lift = LiftId::added(numbered(9)); q.maximum->lift = q.lift; f.alike = {}; f.statuses = {status(Fitness::Some)}; f.statuses[0].notLifts = {squat}; }, std::nullopt, Permitted});

    for (const Method method : {MaximalTest, EccentricRelease, Tyre}) {
        const LiftId lift = method == Tyre ? tyreFlip : squat;
        const auto number = std::to_string(static_cast<int>(method));
        row(("fifteen, method " + number).c_str(), {method, age(15), GateCode::Minor, Not, lift});
        row(("eighteen this year, method " + number).c_str(), {method, age(18), GateCode::Minor, Not, lift});
        row(("nineteen this year, method " + number).c_str(), {method, age(19), std::nullopt, Permitted, lift});
        row(("age unknown, method " + number).c_str(), {method, noYear, GateCode::AgeUnknown, Not, lift});
        const auto approved = [lift, method](Q&, F& f) { f.birthYear = year(2011); f.clearances = {clearance(lift, method)}; f.clearances[0].approvesMinor = true; };
        row(("fifteen and approved, method " + number).c_str(), {method, approved, std::nullopt, Permitted, lift});
        const auto once = [approved](Q& q, F& f) { approved(q, f); f.clearances.push_back(f.clearances[0]); f.clearances[0].until = today - days(1); f.clearances[1].approvesMinor = false; };
        row(("fifteen, no longer approved, method " + number).c_str(), {method, once, GateCode::Minor, Not, lift});
    }
    row("of age at 21", {MaximalTest, [](Q&, F& f) { f.birthYear = year(2006); f.limits.ofAge = years(21); }, GateCode::Minor, Not});
    row("of age at 16", {MaximalTest, [](Q&, F& f) { f.birthYear = year(2009); f.limits.ofAge = years(16); }, std::nullopt, Permitted});
    row("fifteen, plain iron", {Plain, age(15), std::nullopt, Permitted});
    row("fifteen, chains", {Chains, age(15), std::nullopt, Permitted});
    row("fifteen, plain iron as heavy as the maximum", {Plain, [](Q& q, F& f) { f.birthYear = year(2011); q.load->value = kilograms(99); }, GateCode::Minor, Not});
    row("age unknown, plain iron as heavy as the maximum", {Plain, [](Q& q, F& f) { f.birthYear.reset(); q.load->value = kilograms(99); }, GateCode::AgeUnknown, Not});
    row("fifteen, plain iron, no maximum known", {Plain, [](Q& q, F& f) { f.birthYear = year(2011); q.maximum.reset(); }, GateCode::MaximumMissing, Caution});
    row("fifteen, plain iron, load unknown", {Plain, [](Q& q, F& f) { f.birthYear = year(2011); q.load.reset(); }, GateCode::LoadUnknown, Caution});
    row("fifteen, a carry, no maximum known", {Carry, [](Q& q, F& f) { f.birthYear = year(2011); q.maximum.reset(); }, std::nullopt, Permitted, LiftId{33}});
    row("of age, plain iron, no maximum known", {Plain, [](Q& q, F&) { q.maximum.reset(); }, std::nullopt, Permitted});

    row("no maximum, eccentric", {EccentricRelease, [](Q& q, F&) { q.maximum.reset(); }, GateCode::MaximumMissing, Not});
    row("no maximum, chains", {Chains, [](Q& q, F&) { q.maximum.reset(); }, GateCode::MaximumMissing, Caution});
    row("no maximum, chains, cleared for them", {Chains, [](Q& q, F& f) { q.maximum.reset(); f.clearances = {clearance(squat, Chains)}; }, std::nullopt, Permitted});
    row("maximum of another lift, eccentric", {EccentricRelease, [](Q& q, F&) { q.maximum->lift = LiftId{2}; }, GateCode::MaximumMissing, Not});
    row("maximum of the flip and not of the deadlift", {Tyre, [](Q& q, F&) { q.maximum->lift = tyreFlip; }, GateCode::MaximumMissing, Not, tyreFlip});
    row("maximum in chains, eccentric", {EccentricRelease, [](Q& q, F&) { q.maximum->plain = false; }, GateCode::MaximumNotPlain, Not});
    row("maximum in chains, bands", {BandsAbove, [](Q& q, F&) { q.maximum->plain = false; }, GateCode::MaximumNotPlain, Caution});
    row("maximum 90 days old", {EccentricRelease, [](Q& q, F&) { q.maximum->day = today - days(90); }, std::nullopt, Permitted});
    row("maximum 91 days old", {EccentricRelease, [](Q& q, F&) { q.maximum->day = today - days(91); }, GateCode::MaximumOld, Not});
    row("maximum 91 days old, tyre", {Tyre, [](Q& q, F&) { q.maximum->day = today - days(91); }, GateCode::MaximumOld, Not, tyreFlip});
    row("maximum 91 days old, chains", {Chains, [](Q& q, F&) { q.maximum->day = today - days(91); }, GateCode::MaximumOld, Caution});
    row("maximum 91 days old, plain iron", {Plain, [](Q& q, F&) { q.maximum->day = today - days(91); }, std::nullopt, Permitted});
    row("maximum 31 days old, 30 by the coach", {EccentricRelease, [](Q& q, F& f) { q.maximum->day = today - days(31); f.limits.maximumAge = days(30); }, GateCode::MaximumOld, Not});

    row("load unknown, eccentric", {EccentricRelease, [](Q& q, F&) { q.load.reset(); }, GateCode::LoadUnknown, Not});
    row("load unknown, tyre", {Tyre, [](Q& q, F&) { q.load.reset(); }, GateCode::LoadUnknown, Not, tyreFlip});
    row("load unknown, chains", {Chains, [](Q& q, F&) { q.load.reset(); }, std::nullopt, Permitted});
    row("tyre at 70 %", {Tyre, [](Q& q, F&) { q.load->value = kilograms(69); }, std::nullopt, Permitted, tyreFlip});
    row("tyre above 70 %", {Tyre, [](Q& q, F&) { q.load->value = kilograms(69.01); }, GateCode::OverCap, Not, tyreFlip});
    row("tyre above the coach's 60 %", {Tyre, [](Q& q, F& f) { q.load->value = kilograms(60); f.limits.tyrePercent = 60; }, GateCode::OverCap, Not, tyreFlip});
    row("eccentric at 120 %", {EccentricRelease, [](Q& q, F&) { q.load->value = kilograms(119); }, std::nullopt, Permitted});
    row("eccentric above 120 %", {EccentricRelease, [](Q& q, F&) { q.load->value = kilograms(119.01); }, GateCode::OverCap, Not});
    row("plain iron below the maximum", {Plain, [](Q& q, F&) { q.load->value = kilograms(98.99); }, std::nullopt, Permitted});
    row("plain iron as heavy as the maximum", {Plain, [](Q& q, F&) { q.load->value = kilograms(99); }, GateCode::OverMaximum, Caution});
    row("a maximal test above the maximum", {MaximalTest, [](Q& q, F&) { q.load->value = kilograms(110); }, std::nullopt, Permitted});
}

void MayUseTest::oneReason()
{
    QFETCH(Case, what);
    GateFacts facts = cleared(what.method, what.lift);
    UseQuestion question = asking(what.method, what.lift);
    question = lookedOver(question, facts);
    what.change(question, facts);
    const auto answer = mayUse(question, facts);
    QVERIFY(answer);
    QCOMPARE(static_cast<int>(answer->permission), static_cast<int>(what.permission));
    // every reason that stands in the way is the one expected, or is weaker than it
    std::size_t against = 0;
    for (const Reason& reason : answer->reasons)
        if (!reason.lookedOver) {
            ++against;
            if (reason.alone == answer->permission)
                QCOMPARE(static_cast<int>(reason.key.code), static_cast<int>(what.code.value()));
        }
    QVERIFY(what.code ? against > 0 : against == 0);
    // what forbids is not looked over, what is a caution is
    const auto looked = mayUse(lookedOver(question, facts), facts);
    QCOMPARE(static_cast<int>(looked->permission), static_cast<int>(what.permission == Permission::Not ? Permission::Not : Permission::Permitted));
}

void MayUseTest::factsOfClearances()
{
    GateFacts facts = adult();
    facts.clearances = {clearance(squat, Method::EccentricRelease, 1), clearance(squat, Method::EccentricRelease, 2), clearance(squat, Method::EccentricRelease, 3)};
    facts.clearances[0].until = today - days(20);
    facts.clearances[1].until = today - days(5);
    facts.clearances[2].day = today + days(8);
    auto answer = mayUse(asking(Method::EccentricRelease), facts);
    const auto expired = find(*answer, GateCode::ClearanceExpired);
    QVERIFY(expired && expired->key.record == numbered(2) && expired->until == today - days(5) && expired->from == today - days(40) && expired->who == "the head coach");
    const auto ahead = find(*answer, GateCode::ClearanceNotYet);
    QVERIFY(ahead && ahead->key.record == numbered(3) && ahead->until == today + days(8));
    facts.clearances[1].takenBack = SaidSo{"the doctor", today - days(6)};
    answer = mayUse(asking(Method::EccentricRelease), facts);
    const auto taken = find(*answer, GateCode::ClearanceTakenBack);
    QVERIFY(taken && taken->key.record == numbered(2) && taken->who == "the doctor" && taken->from == today - days(6));
}

void MayUseTest::factsOfStatuses()
{
    GateFacts facts = adult(overheadPress);
    facts.statuses = {status(Fitness::Some)};
    facts.statuses[0].notGroups = {LiftGroup::Press};
    facts.statuses[0].text = "left shoulder";
    auto answer = mayUse(asking(Method::Chains, overheadPress), facts);
    const auto names = find(*answer, GateCode::StatusNames);
    QVERIFY(names && names->key.record == numbered(20) && names->group == LiftGroup::Press && names->text == "left shoulder");
    QVERIFY(names->who == "the physiotherapist" && names->from == today - days(3) && names->until == today + days(12));
    facts.statuses[0].notMethods = {Method::Overhead};
    answer = mayUse(asking(Method::Chains, overheadPress), facts);
    QVERIFY(find(*answer, GateCode::StatusNames)->key.method == Method::Overhead);
}

void MayUseTest::factsOfLoads()
{
    // the tyre of 84 ± 3 kg against 70 % of a deadlift of at least 120 kg
    UseQuestion question = asking(Method::Tyre, tyreFlip, 84, 3);
    question.maximum = maximumOf(deadliftId, 120);
    question.maximum->tested = true;
    auto answer = mayUse(question, adult(tyreFlip));
    const auto over = find(*answer, GateCode::OverCap);
    QVERIFY(over && over->key.method == Method::Tyre);
    QCOMPARE(*over->percent, 72.5);
    QCOMPARE(*over->capPercent, 70.0);
    QCOMPARE(inKilograms(*over->atMost), 81.0);
    QVERIFY(over->tested == true && over->from == today - days(30));
    question.load->value = kilograms(81);
    QVERIFY(!find(*mayUse(question, adult(tyreFlip)), GateCode::OverCap));
    // no load keeps to a cap that the give-or-take alone is over
    question.load->giveOrTake = kilograms(84);
    QVERIFY(!find(*mayUse(question, adult(tyreFlip)), GateCode::OverCap)->atMost);
}

void MayUseTest::atTheUnfavourableEnd()
{
    // 68 of 100 kg is under 70 %; with 3 kg either way it need not be, and of a maximum that may be 95 kg it is not
    UseQuestion question = asking(Method::Tyre, tyreFlip, 66, 0);
    const GateFacts facts = adult(tyreFlip);
    QVERIFY(!find(*mayUse(question, facts), GateCode::OverCap));
    question.load->giveOrTake = kilograms(5);
    QVERIFY(find(*mayUse(question, facts), GateCode::OverCap));
    question.load->giveOrTake = kilograms(1);
    QVERIFY(!find(*mayUse(question, facts), GateCode::OverCap));
    question.maximum->lowest = kilograms(95);
    QVERIFY(find(*mayUse(question, facts), GateCode::OverCap));
}

void MayUseTest::whatTheLiftBringsAlong()
{
    // a tyre flip asked about as plain iron is a tyre all the same
    UseQuestion question = asking(Method::Plain, tyreFlip, 90);
    question.maximum = maximumOf(deadliftId);
    const auto tyre = mayUse(question, adult(tyreFlip));
    QVERIFY(tyre->permission == Permission::Not && find(*tyre, GateCode::OverCap)->key.method == Method::Tyre);
    // so are an isometric pull and a press over the head
    QVERIFY(find(*mayUse(asking(Method::Plain, LiftId{26}), adult(LiftId{26})), GateCode::ClearanceMissing)->key.method == Method::IsometricTest);
    UseQuestion press = asking(Method::Plain, overheadPress);
    press.maximum.reset();
    const auto overhead = mayUse(press, adult(overheadPress));
    QVERIFY(overhead->permission == Permission::Caution && find(*overhead, GateCode::MaximumMissing)->key.method == Method::Overhead);
    // an added lift goes by the one it is like
    press.lift = LiftId::added(numbered(9));
    QVERIFY(find(*mayUse(press, adult(overheadPress)), GateCode::MaximumMissing));
}

void MayUseTest::givenBeforeOneWasTakenBack()
{
    GateFacts facts = adult();
    facts.clearances = {clearance(squat, Method::EccentricRelease, 1), clearance(squat, Method::EccentricRelease, 2)};
    facts.clearances[1].day = today - days(20);
    facts.clearances[1].takenBack = SaidSo{"the doctor", today - days(10)};
    // the older one did not survive it
    QVERIFY(find(*mayUse(asking(Method::EccentricRelease), facts), GateCode::ClearanceTakenBack));
    // before that day it was good
    UseQuestion before = asking(Method::EccentricRelease);
    before.day = today - days(11);
    QVERIFY(mayUse(before, facts)->permission == Permission::Caution);
    // one given on that day or after stands
    for (const int daysAgo : {10, 3}) {
        facts.clearances[0].day = today - days(daysAgo);
        QVERIFY(mayUse(asking(Method::EccentricRelease), facts)->permission == Permission::Caution);
    }
}

void MayUseTest::severalAtOnce()
{
    GateFacts facts = adult();
    facts.birthYear.reset();
    facts.statuses = {status(Fitness::None, 20), status(Fitness::Some, 21)};
    facts.statuses[1].text = "fever";
    UseQuestion question = asking(Method::EccentricRelease, squat, 200);
    question.maximum->day = today - days(200);
    const auto answer = mayUse(question, facts);
    for (const GateCode code : {GateCode::ClearanceMissing, GateCode::StatusNone, GateCode::StatusText, GateCode::AgeUnknown, GateCode::MaximumOld, GateCode::OverCap, GateCode::CautionWaits})
        QVERIFY(find(*answer, code));
    QCOMPARE(answer->reasons.size(), std::size_t(7));
    QVERIFY(std::is_sorted(answer->reasons.begin(), answer->reasons.end(), [](const Reason& a, const Reason& b) { return a.alone > b.alone; }));
}

void MayUseTest::lookedOverIsOneRecord()
{
    GateFacts facts = adult();
    facts.statuses = {status(Fitness::Some, 20)};
    facts.statuses[0].text = "easy on the knee";
    const UseQuestion question = lookedOver(asking(Method::Plain), facts);
    QVERIFY(mayUse(question, facts)->permission == Permission::Permitted);
    // what was said since is not looked over
    facts.statuses.push_back(facts.statuses[0]);
    facts.statuses[1].id = numbered(21);
    QVERIFY(mayUse(question, facts)->permission == Permission::Caution);
    // nor is the same caution of another method
    UseQuestion chains = question;
    chains.lookedOver.push_back({GateCode::CautionWaits, Method::BandsBelow, {}});
    chains.method = Method::Chains;
    QVERIFY(!find(*mayUse(chains, facts), GateCode::CautionWaits)->lookedOver);
}

void MayUseTest::remedies()
{
    const std::pair<GateCode, Remedy> all[] = {
        {GateCode::ClearanceMissing, Remedy::GetClearance}, {GateCode::ClearanceExpired, Remedy::GetClearance},
        {GateCode::ClearanceTakenBack, Remedy::GetClearance}, {GateCode::ClearanceNotYet, Remedy::WaitUntil},
        {GateCode::StatusNone, Remedy::AskWhoSetIt}, {GateCode::StatusNames, Remedy::AskWhoSetIt},
        {GateCode::StatusMayName, Remedy::SayWhatItIsLike}, {GateCode::StatusText, Remedy::ReadAndLookOver},
        {GateCode::StatusUnread, Remedy::UpdateApp}, {GateCode::Minor, Remedy::GetApproval}, {GateCode::AgeUnknown, Remedy::EnterBirthYear},
        {GateCode::MaximumMissing, Remedy::TestPlainLift}, {GateCode::MaximumNotPlain, Remedy::TestPlainLift},
        {GateCode::MaximumOld, Remedy::TestAgain}, {GateCode::LoadUnknown, Remedy::MeasureLoad}, {GateCode::OverCap, Remedy::HangLess},
        {GateCode::OverMaximum, Remedy::HangLess}, {GateCode::CautionWaits, Remedy::ReadAndLookOver}};
    for (const auto& [code, remedy] : all)
        QVERIFY(remedyFor(code) == remedy);
    QCOMPARE(std::size(all), static_cast<std::size_t>(GateCode::CautionWaits) + 1);
}

void MayUseTest::badInput_data()
{
    QTest::addColumn<Spoil>("change");
    QTest::addColumn<int>("code");
    QTest::addColumn<QString>("what");
    const auto row = [](const char* name, Refusal code, const char* what, Spoil change) { QTest::newRow(name) << std::move(change) << static_cast<int>(code) << what; };
    using Q = UseQuestion;
    using F = GateFacts;
    const double nan = std::numeric_limits<double>::quiet_NaN(), endless = std::numeric_limits<double>::infinity();
    row("no lift", Refusal::OutOfRange, "lift", [](Q& q, F&) { q.lift = {}; });
    row("method 0", Refusal::OutOfRange, "method", [](Q& q, F&) { q.method = static_cast<Method>(0); });
    row("method 18", Refusal::OutOfRange, "method", [](Q& q, F&) { q.method = static_cast<Method>(18); });
    row("load is no number", Refusal::NotFinite, "load", [nan](Q& q, F&) { q.load->value = kilograms(nan); });
    row("load below nothing", Refusal::OutOfRange, "load", [](Q& q, F&) { q.load->value = kilograms(-1); });
    row("give-or-take endless", Refusal::NotFinite, "load", [endless](Q& q, F&) { q.load->giveOrTake = kilograms(endless); });
    row("give-or-take below nothing", Refusal::OutOfRange, "load", [](Q& q, F&) { q.load->giveOrTake = kilograms(-0.1); });
    row("maximum is no number", Refusal::NotFinite, "maximum", [nan](Q& q, F&) { q.maximum->value = kilograms(nan); });
    row("lowest is no number", Refusal::NotFinite, "maximum", [nan](Q& q, F&) { q.maximum->lowest = kilograms(nan); });
    row("u is endless", Refusal::NotFinite, "maximum", [endless](Q& q, F&) { q.maximum->u = kilograms(endless); });
    row("u below nothing", Refusal::OutOfRange, "maximum", [](Q& q, F&) { q.maximum->u = kilograms(-1); });
    row("lowest of nothing", Refusal::OutOfRange, "maximum", [](Q& q, F&) { q.maximum->lowest = kilograms(0); });
    row("lowest above the value", Refusal::OutOfRange, "maximum", [](Q& q, F&) { q.maximum->lowest = kilograms(105); });
    row("maximum of tomorrow", Refusal::OutOfRange, "maximum", [](Q& q, F&) { q.maximum->day = today + days(1); });
    row("limits that cannot be", Refusal::OutOfRange, "limits", [](Q&, F& f) { f.limits.tyrePercent = 101; });
}

void MayUseTest::badInput()
{
    QFETCH(Spoil, change);
    QFETCH(int, code);
    QFETCH(QString, what);
    GateFacts facts = adult();
    UseQuestion question = asking(Method::Chains);
    change(question, facts);
    const auto answer = mayUse(question, facts);
    QVERIFY(!answer);
    QCOMPARE(static_cast<int>(answer.error().code), code);
    QCOMPARE(QString::fromStdString(answer.error().what), what);
}

void MayUseTest::fromTheBook()
{
    keeping::Device device;
    const RecordId athlete = somebody::adult(device), other = somebody::adult(device);
    const auto ask = [&](const RecordId& whom) { return mayUse(device.book, whom, asking(Method::EccentricRelease)); };
    QVERIFY(ask(athlete)->permission == Permission::Not);
    keepClearance(device.keeping, somebody::clearance(athlete, today), device.told());
    QVERIFY(ask(athlete)->permission == Permission::Caution && ask(other)->permission == Permission::Not);
    CoachLimits limits;
    limits.maximumAge = days(20);
    keepLimits(device.keeping, limits, device.told());
    QVERIFY(find(*ask(athlete), GateCode::MaximumOld));
    keepLimits(device.keeping, {}, device.told());
    keepDayStatus(device.keeping, somebody::status(athlete, today), device.told());
    const auto none = find(*ask(athlete), GateCode::StatusNone);
    QVERIFY(none && none->key.record == device.last.id);
    liftDayStatus(device.keeping, athlete, device.last.id, {"the doctor", today}, device.told());
    QVERIFY(ask(athlete)->permission == Permission::Caution);
    takeClearanceBack(device.keeping, athlete, squat, Method::EccentricRelease, {"the doctor", today}, device.told());
    QVERIFY(find(*ask(athlete), GateCode::ClearanceTakenBack));
    const auto nobody = ask(numbered(3));
    QVERIFY(!nobody && nobody.error() == (Error{Refusal::NotThere, "athlete"}));
    // an added lift goes by the one that it is like
    keepLift(device.keeping, {{}, "press behind the neck", overheadPress, LiftStart::OwnBottom}, device.told());
    const LiftId own = LiftId::added(device.last.id);
    keepDayStatus(device.keeping, somebody::noOverhead(other, today), device.told());
    QVERIFY(find(*mayUse(device.book, other, asking(Method::Plain, own)), GateCode::StatusNames));
    keepLift(device.keeping, {{}, "log row", {}, LiftStart::Floor}, device.told());
    QVERIFY(find(*mayUse(device.book, other, asking(Method::Plain, LiftId::added(device.last.id))), GateCode::StatusMayName));
    // one that a newer app ships
    QVERIFY(find(*mayUse(device.book, other, asking(Method::Plain, LiftId{900})), GateCode::StatusMayName));
}

void MayUseTest::groups()
{
    using Groups = std::vector<LiftGroup>;
    using Methods = std::vector<Method>;
    QVERIFY((groupsOf({20}) == Groups{LiftGroup::Hinge, LiftGroup::Explosive}) && (methodsOf({20}) == Methods{Method::Overhead}));
    QVERIFY((groupsOf({3}) == Groups{LiftGroup::Squat, LiftGroup::OneLeg}) && methodsOf({3}).empty());
    QVERIFY((methodsOf({30}) == Methods{Method::Overhead, Method::Implement}) && (methodsOf({37}) == Methods{Method::Overhead, Method::Carry}));
    QVERIFY(groupsOf({}).empty() && methodsOf({}).empty() && groupsOf({900}).empty() && methodsOf(LiftId::added(numbered(1))).empty());
    // every lift is in a group or brings a method along
    for (const Lift& lift : shippedLifts())
        QVERIFY2(!groupsOf(lift.id).empty() || !methodsOf(lift.id).empty(), lift.term.data());
}

QTEST_APPLESS_MAIN(MayUseTest)
#include "test_mayuse.moc"
