// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/gates/setupgate.h"

#include "core/resistance/pullsum.h"
#include "core/work/gates/methodrules.h"
#include "core/work/records/seasonbook.h"
#include "core/work/strength/maxima.h"

#include <algorithm>
#include <set>

namespace steelyard {

namespace {

Method methodOf(const HungRecord& hung)
{
    if (const auto* band = std::get_if<BandPlacing>(&hung.placing))
        return band->above ? Method::BandsAbove : Method::BandsBelow;
    return std::holds_alternative<AidPlacing>(hung.placing) ? Method::BenchAid : Method::Chains;
}

Method methodOf(CautionCode code)
{
    switch (code) {
    case CautionCode::Chains: return Method::Chains;
    case CautionCode::BandsBelow: return Method::BandsBelow;
    case CautionCode::BandsAbove: return Method::BandsAbove;
    case CautionCode::BenchAid: return Method::BenchAid;
    case CautionCode::Release: break;
    }
    return Method::EccentricRelease;
}

/// Whether a method's caution is said with the kit that hangs.
bool isSaidWithKit(Method method)
{
    return method == Method::Chains || method == Method::BandsBelow || method == Method::BandsAbove || method == Method::BenchAid
        || method == Method::EccentricRelease;
}

bool goesByDeadlift(Method method, const GateFacts& facts)
{
    std::vector<Method> asked = methodsOf(facts.alike);
    asked.push_back(method);
    return std::any_of(asked.begin(), asked.end(), [&](Method one) { return rulesOf(one, facts.limits).ofDeadlift; });
}

/// The same but for the method that each stands against.
bool isSameReason(const Reason& a, Reason b)
{
    b.key.method = a.key.method;
    b.lookedOver = a.lookedOver;
    return a == b;
}

/// Each method's caution is one of its own; a status is one, whatever it stands against.
void add(std::vector<GateReason>& reasons, const Reason& reason)
{
    const auto same = std::find_if(reasons.begin(), reasons.end(), [&](const GateReason& known) {
        return reason.key.code == GateCode::CautionWaits ? known.reason.key == reason.key : isSameReason(known.reason, reason);
    });
    if (same == reasons.end()) {
        reasons.push_back({reason, {reason.key.method}});
        return;
    }
    if (std::find(same->methods.begin(), same->methods.end(), reason.key.method) == same->methods.end())
        same->methods.push_back(reason.key.method);
    same->reason.lookedOver = same->reason.lookedOver && reason.lookedOver;
}

}

std::optional<GateLifter> gateLifter(const SeasonBook& book, const RecordId& athlete, const LiftId& lift, std::chrono::sys_days day)
{
    auto facts = lift == LiftId{} ? std::nullopt : gateFacts(book, athlete, lift);
    if (!facts)
        return std::nullopt;
    return GateLifter{lift, day, std::move(*facts), knownMaximum(book, athlete, lift, day), knownMaximum(book, athlete, deadliftId, day)};
}

std::vector<Method> methodsHung(const SetupRecord& setup)
{
    std::set<Method> methods;
    for (const HungRecord& hung : setup.hung)
        methods.insert(methodOf(hung));
    if (setup.release)
        methods.insert(Method::EccentricRelease);
    if (methods.empty())
        methods.insert(Method::Plain);
    return {methods.begin(), methods.end()};
}

std::optional<LoadAtWorst> loadAtWorst(const WeighedUp& weighed)
{
    if (!weighed.curve || !weighed.setup || !weighed.curve->ready || weighed.curve->samples.empty())
        return std::nullopt;
    const PullCurve& curve = *weighed.curve;
    if (!std::all_of(curve.samples.begin(), curve.samples.end(), [](const CurveSample& sample) { return sample.known; }))
        return std::nullopt;
    const auto highest = std::max_element(curve.samples.begin(), curve.samples.end(), [](const CurveSample& a, const CurveSample& b) {
        return a.total + a.giveOrTake < b.total + b.giveOrTake;
    });
    // a sample's give-or-take is good enough to draw, not to be held against a limit
    Reading worst = PullSum(*weighed.setup).at(highest->height);
    for (const auto& reading : {curve.bottom, curve.zoneGreatest, curve.top})
        if (reading && reading->unfavourable() > worst.unfavourable())
            worst = *reading;
    return LoadAtWorst{asMass(worst.value), asMass(worst.giveOrTake)};
}

SetupGate setupGate(const GateLifter& lifter, const SetupRecord& setup, const WeighedUp& weighed, const std::optional<ReleaseAnswer>& release,
                    std::span<const ReasonKey> lookedOver)
{
    SetupGate out;
    UseQuestion question;
    question.lift = lifter.lift;
    question.day = lifter.day;
    const auto lifted = loadAtWorst(weighed);
    question.lookedOver.assign(lookedOver.begin(), lookedOver.end());
    for (const Caution& caution : weighed.cautions)
        if (caution.lookedOver)
            question.lookedOver.push_back({GateCode::CautionWaits, methodOf(caution.code), {}});
    for (const Method method : methodsHung(setup)) {
        question.method = method;
        const bool down = method == Method::EccentricRelease;
        question.load = !down ? lifted : release ? release->worst : std::nullopt;
        question.maximum = goesByDeadlift(method, lifter.facts) ? lifter.deadlift : lifter.maximum;
        const auto answer = mayUse(question, lifter.facts);
        if (!answer) {
            out.permission = Permission::Not;
            out.error = answer.error();
            return out;
        }
        for (const Reason& reason : answer->reasons) {
            if (down && !(release && release->load) && reason.key.code == GateCode::LoadUnknown)
                continue;
            if (!reason.lookedOver)
                out.permission = std::max(out.permission, reason.alone);
            if (reason.key.code != GateCode::CautionWaits || !isSaidWithKit(reason.key.method))
                add(out.reasons, reason);
        }
    }
    std::stable_sort(out.reasons.begin(), out.reasons.end(), [](const GateReason& a, const GateReason& b) { return a.reason.alone > b.reason.alone; });
    return out;
}

std::vector<ReasonKey> keysOf(const GateReason& reason)
{
    std::vector<ReasonKey> keys;
    for (const Method method : reason.methods)
        keys.push_back({reason.reason.key.code, method, reason.reason.key.record});
    return keys;
}

Readiness gatedReadiness(Readiness setup, Permission permission, ReleaseWants wants)
{
    if (permission == Permission::Not && setup != Readiness::Refused)
        return Readiness::NotToBeUsed;
    const bool isKnown = setup == Readiness::Ready || setup == Readiness::LookOver;
    if (isKnown && wants != ReleaseWants::Nothing)
        return Readiness::ReleaseOpen;
    return permission == Permission::Caution && setup == Readiness::Ready ? Readiness::LookOver : setup;
}

}
