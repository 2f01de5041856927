// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/gates/mayuse.h"

#include "core/work/gates/methodrules.h"
#include "core/work/records/seasonbook.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

bool finite(Mass mass)
{
    return std::isfinite(mass.si());
}

std::optional<Error> unfitLoad(const LoadAtWorst& load)
{
    if (!finite(load.value) || !finite(load.giveOrTake))
        return Error{Refusal::NotFinite, "load"};
    const bool fits = load.value.si() >= 0 && load.giveOrTake.si() >= 0;
    return fits ? std::nullopt : std::optional(Error{Refusal::OutOfRange, "load"});
}

std::optional<Error> unfitMaximum(const KnownMaximum& maximum, std::chrono::sys_days day)
{
    if (!finite(maximum.lowest) || !finite(maximum.value) || !finite(maximum.u))
        return Error{Refusal::NotFinite, "maximum"};
    const bool fits = maximum.lowest.si() > 0 && maximum.lowest <= maximum.value && maximum.u.si() >= 0 && maximum.day <= day;
    return fits ? std::nullopt : std::optional(Error{Refusal::OutOfRange, "maximum"});
}

std::optional<Error> unfit(const UseQuestion& question, const GateFacts& facts)
{
    if (question.lift == LiftId{})
        return Error{Refusal::OutOfRange, "lift"};
    if (!isMethod(question.method))
        return Error{Refusal::OutOfRange, "method"};
    if (!canBeLimits(facts.limits))
        return Error{Refusal::OutOfRange, "limits"};
    if (question.load)
        if (auto error = unfitLoad(*question.load))
            return error;
    return question.maximum ? unfitMaximum(*question.maximum, question.day) : std::nullopt;
}

/// The method asked about, then those that the lift brings along.
std::vector<Method> methodsAsked(const UseQuestion& question, const GateFacts& facts)
{
    std::vector<Method> methods{question.method};
    for (const Method own : methodsOf(facts.alike))
        if (own != question.method)
            methods.push_back(own);
    return methods;
}

Mass atWorst(const LoadAtWorst& load)
{
    return load.value + load.giveOrTake;
}

/// Puts an answer together, rule by rule.
class Weighing {
public:
    Weighing(const UseQuestion& question, const GateFacts& facts)
        : m_question(question), m_facts(facts), m_methods(methodsAsked(question, facts)), m_maximal(isMaximal())
    {
    }

    [[nodiscard]] GateAnswer answer()
    {
        for (const Method method : m_methods)
            weigh(method);
        weighEffort();
        for (const DayStatus& status : m_facts.statuses)
            if (holdsOn(status, m_question.day))
                weighStatus(status);
        return finished();
    }

private:
    Reason& against(GateCode code, Method method, Permission alone, const RecordId& record = {})
    {
        Reason reason;
        reason.key = {code, method, record};
        reason.alone = alone;
        const auto& looked = m_question.lookedOver;
        reason.lookedOver = alone == Permission::Caution && std::find(looked.begin(), looked.end(), reason.key) != looked.end();
        m_answer.reasons.push_back(std::move(reason));
        return m_answer.reasons.back();
    }

    void weigh(Method method)
    {
        const MethodRules rules = rulesOf(method, m_facts.limits);
        weighClearance(method, rules);
        if (rules.minorsApproval)
            weighAge(method);
        weighMaximum(method, rules);
        if (rules.capPercent)
            weighCap(method, rules);
        if (rules.caution)
            against(GateCode::CautionWaits, method, Permission::Caution);
    }

    /// Those of the lift and a method, by their state on the day.
    [[nodiscard]] std::vector<const Clearance*> clearancesFor(Method method, ClearanceState state) const
    {
        std::vector<const Clearance*> those;
        for (const Clearance& clearance : m_facts.clearances)
            if (clearance.lift == m_question.lift && clearance.method == method && stateOn(clearance, m_question.day) == state)
                those.push_back(&clearance);
        return those;
    }

    [[nodiscard]] const Clearance* lastTakenBack(Method method) const
    {
        const auto taken = clearancesFor(method, ClearanceState::TakenBack);
        const auto last = std::max_element(taken.begin(), taken.end(), [](const Clearance* a, const Clearance* b) { return a->takenBack->day < b->takenBack->day; });
        return last == taken.end() ? nullptr : *last;
    }

    /// Those that are valid; what was given before another was taken back went with it.
    [[nodiscard]] std::vector<const Clearance*> validFor(Method method) const
    {
        auto valid = clearancesFor(method, ClearanceState::Valid);
        std::erase_if(valid, [this](const Clearance* clearance) { return stateAmong(m_facts.clearances, *clearance, m_question.day) != ClearanceState::Valid; });
        return valid;
    }

    void weighClearance(Method method, const MethodRules& rules)
    {
        if (!validFor(method).empty())
            return;
        const Permission without = rules.clearance ? Permission::Not : Permission::Caution;
        const Clearance* taken = lastTakenBack(method);
        if (taken) {
            Reason& reason = against(GateCode::ClearanceTakenBack, method, Permission::Not, taken->id);
            reason.who = taken->takenBack->who;
            reason.from = taken->takenBack->day;
        }
        const auto expired = clearancesFor(method, ClearanceState::Expired), ahead = clearancesFor(method, ClearanceState::NotYet);
        if (const auto last = std::max_element(expired.begin(), expired.end(), [](const Clearance* a, const Clearance* b) { return a->until < b->until; }); last != expired.end()) {
            Reason& reason = against(GateCode::ClearanceExpired, method, without, (*last)->id);
            reason.who = (*last)->who;
            reason.from = (*last)->day;
            reason.until = (*last)->until;
        }
        if (const auto first = std::min_element(ahead.begin(), ahead.end(), [](const Clearance* a, const Clearance* b) { return a->day < b->day; }); first != ahead.end()) {
            Reason& reason = against(GateCode::ClearanceNotYet, method, without, (*first)->id);
            reason.who = (*first)->who;
            reason.from = reason.until = (*first)->day;
        }
        if (rules.clearance && !taken && expired.empty() && ahead.empty())
            against(GateCode::ClearanceMissing, method, Permission::Not);
    }

    void weighAge(Method method)
    {
        if (!isOfAgeOrApproved(method))
            against(m_facts.birthYear ? GateCode::Minor : GateCode::AgeUnknown, method, Permission::Not);
    }

    [[nodiscard]] bool isOfAgeOrApproved(Method method) const
    {
        const auto valid = validFor(method);
        return majorityOn(m_facts.birthYear, m_question.day, m_facts.limits.adultFrom()) == Majority::Adult
            || std::any_of(valid.begin(), valid.end(), [](const Clearance* clearance) { return clearance->approvesMinor; });
    }

    void weighMaximum(Method method, const MethodRules& rules)
    {
        // whoever cleared the athlete for what only wants one has seen the lift
        if (rules.maximum == Asks::No || (rules.maximum == Asks::Wants && !validFor(method).empty()))
            return;
        const Permission without = rules.maximum == Asks::Needs ? Permission::Not : Permission::Caution;
        const KnownMaximum* maximum = maximumFor(rules);
        if (!maximum) {
            against(GateCode::MaximumMissing, method, without);
            return;
        }
        if (!maximum->plain)
            sayMaximum(against(GateCode::MaximumNotPlain, method, without));
        if (m_question.day - maximum->day > m_facts.limits.maximumGoodFor()) {
            Reason& old = against(GateCode::MaximumOld, method, without);
            sayMaximum(old);
            old.until = maximum->day + m_facts.limits.maximumGoodFor();
        }
    }

    void sayMaximum(Reason& reason) const
    {
        reason.from = m_question.maximum->day;
        reason.tested = m_question.maximum->tested;
    }

    /// Of the lift that the method's rules go by.
    [[nodiscard]] const KnownMaximum* maximumFor(const MethodRules& rules) const
    {
        const LiftId of = rules.ofDeadlift ? deadliftId : m_question.lift;
        return m_question.maximum && m_question.maximum->lift == of ? &*m_question.maximum : nullptr;
    }

    void weighCap(Method method, const MethodRules& rules)
    {
        if (!m_question.load) {
            against(GateCode::LoadUnknown, method, Permission::Not).capPercent = *rules.capPercent;
            return;
        }
        if (maximumFor(rules) && atWorst(*m_question.load).si() * 100 > *rules.capPercent * m_question.maximum->lowest.si())
            sayLoad(against(GateCode::OverCap, method, Permission::Not), *rules.capPercent);
    }

    void sayLoad(Reason& reason, double capPercent) const
    {
        const Mass lowest = m_question.maximum->lowest, cap = lowest * (capPercent / 100);
        reason.percent = atWorst(*m_question.load) / lowest * 100;
        reason.capPercent = capPercent;
        sayMaximum(reason);
        if (cap > m_question.load->giveOrTake)
            reason.atMost = cap - m_question.load->giveOrTake;
    }

    /// What has a cap of its own goes by that, and a maximal test is asked about as one.
    [[nodiscard]] bool hasOwnRules() const
    {
        return m_question.method == Method::MaximalTest
            || std::any_of(m_methods.begin(), m_methods.end(), [this](Method method) { return rulesOf(method, m_facts.limits).capPercent.has_value(); });
    }

    [[nodiscard]] bool hasPlainMaximum() const
    {
        return m_question.maximum && m_question.maximum->lift == m_question.lift && m_question.maximum->plain;
    }

    /// Whether it is a maximal lift though it is not asked about as one.
    [[nodiscard]] bool isMaximal() const
    {
        return !hasOwnRules() && m_question.load && hasPlainMaximum() && atWorst(*m_question.load) >= m_question.maximum->lowest;
    }

    void weighEffort()
    {
        if (m_maximal) {
            sayLoad(against(GateCode::OverMaximum, m_question.method, Permission::Caution), 100);
            weighAge(Method::MaximalTest);
            return;
        }
        // nobody knows whether it is one
        const Lift* alike = shippedLift(m_facts.alike);
        const bool unknown = !hasOwnRules() && !(m_question.load && hasPlainMaximum()) && !(alike && !alike->onBar);
        if (unknown && !isOfAgeOrApproved(Method::MaximalTest))
            against(m_question.load ? GateCode::MaximumMissing : GateCode::LoadUnknown, Method::MaximalTest, Permission::Caution);
    }

    void weighStatus(const DayStatus& status)
    {
        if (status.unread)
            sayStatus(GateCode::StatusUnread, Permission::Not, status);
        else if (status.fitness == Fitness::None)
            sayStatus(GateCode::StatusNone, Permission::Not, status);
        else if (!status.text.empty())
            sayStatus(GateCode::StatusText, Permission::Caution, status);
        if (!status.unread && status.fitness == Fitness::Some)
            weighNames(status);
    }

    void weighNames(const DayStatus& status)
    {
        if (status.notLifts.contains(m_question.lift)) {
            sayStatus(GateCode::StatusNames, Permission::Not, status);
            return;
        }
        std::vector<Method> methods = m_methods;
        if (m_maximal)
            methods.push_back(Method::MaximalTest);
        for (const Method method : methods)
            if (status.notMethods.contains(method)) {
                sayStatus(GateCode::StatusNames, Permission::Not, status).key.method = method;
                return;
            }
        for (const LiftGroup group : groupsOf(m_facts.alike))
            if (status.notGroups.contains(group)) {
                sayStatus(GateCode::StatusNames, Permission::Not, status).group = group;
                return;
            }
        const bool namesKinds = !status.notGroups.empty() || !status.notMethods.empty();
        if (namesKinds && !shippedLift(m_facts.alike))
            sayStatus(GateCode::StatusMayName, Permission::Caution, status);
    }

    Reason& sayStatus(GateCode code, Permission alone, const DayStatus& status)
    {
        Reason& reason = against(code, m_question.method, alone, status.id);
        reason.who = status.who;
        reason.from = status.day;
        reason.until = status.until;
        reason.text = status.text;
        return reason;
    }

    GateAnswer finished()
    {
        std::sort(m_answer.reasons.begin(), m_answer.reasons.end(), [](const Reason& a, const Reason& b) {
            return a.alone != b.alone ? a.alone > b.alone : a.key < b.key;
        });
        for (const Reason& reason : m_answer.reasons)
            if (!reason.lookedOver)
                m_answer.permission = std::max(m_answer.permission, reason.alone);
        return std::move(m_answer);
    }

    const UseQuestion& m_question;
    const GateFacts& m_facts;
    std::vector<Method> m_methods;
    bool m_maximal;
    GateAnswer m_answer;
};

}

Remedy remedyFor(GateCode code)
{
    switch (code) {
    case GateCode::ClearanceMissing:
    case GateCode::ClearanceExpired:
    case GateCode::ClearanceTakenBack: return Remedy::GetClearance;
    case GateCode::ClearanceNotYet: return Remedy::WaitUntil;
    case GateCode::StatusNone:
    case GateCode::StatusNames: return Remedy::AskWhoSetIt;
    case GateCode::StatusMayName: return Remedy::SayWhatItIsLike;
    case GateCode::StatusText:
    case GateCode::CautionWaits: return Remedy::ReadAndLookOver;
    case GateCode::StatusUnread: return Remedy::UpdateApp;
    case GateCode::Minor: return Remedy::GetApproval;
    case GateCode::AgeUnknown: return Remedy::EnterBirthYear;
    case GateCode::MaximumMissing:
    case GateCode::MaximumNotPlain: return Remedy::TestPlainLift;
    case GateCode::MaximumOld: return Remedy::TestAgain;
    case GateCode::LoadUnknown: return Remedy::MeasureLoad;
    case GateCode::OverCap:
    case GateCode::OverMaximum: return Remedy::HangLess;
    }
    return Remedy::ReadAndLookOver;
}

Result<GateAnswer> mayUse(const UseQuestion& question, const GateFacts& facts)
{
    if (auto error = unfit(question, facts))
        return *std::move(error);
    return Weighing(question, facts).answer();
}

std::optional<GateFacts> gateFacts(const SeasonBook& book, const RecordId& athlete, const LiftId& lift)
{
    const Athlete* known = book.athlete(athlete);
    if (!known)
        return std::nullopt;
    GateFacts facts;
    facts.birthYear = known->birthYear;
    for (const Clearance* clearance : book.clearancesOf(athlete))
        facts.clearances.push_back(*clearance);
    for (const DayStatus* status : book.statusesOf(athlete))
        facts.statuses.push_back(*status);
    const OwnLift* own = book.lift(lift.own);
    facts.alike = own ? own->like : lift;
    facts.limits = book.limits();
    return facts;
}

Result<GateAnswer> mayUse(const SeasonBook& book, const RecordId& athlete, const UseQuestion& question)
{
    const auto facts = gateFacts(book, athlete, question.lift);
    return facts ? mayUse(question, *facts) : Result<GateAnswer>(Error{Refusal::NotThere, "athlete"});
}

}
