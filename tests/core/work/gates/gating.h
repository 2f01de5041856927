// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/gates/mayuse.h"
#include "tests/core/numberedids.h"

#include <algorithm>

/// Questions that are permitted as they stand, for one thing at a time to be changed.
namespace gating {

using namespace steelyard;
using numberedids::numbered;
using std::chrono::days;

inline constexpr std::chrono::sys_days today = std::chrono::year(2026) / 11 / 2;
inline constexpr LiftId squat{1}, overheadPress{8}, tyreFlip{32};

inline KnownMaximum maximumOf(LiftId lift, double lowestKg = 100)
{
    return {lift, true, kilograms(lowestKg), kilograms(lowestKg + 4), kilograms(2), today - days(30), false};
}

inline Clearance clearance(LiftId lift, Method method, std::uint64_t number = 1)
{
    Clearance c;
    c.id = numbered(number);
    c.lift = lift;
    c.method = method;
    c.who = "the head coach";
    c.day = today - days(40);
    c.until = today + days(40);
    return c;
}

inline DayStatus status(Fitness fitness, std::uint64_t number = 20)
{
    DayStatus s;
    s.id = numbered(number);
    s.fitness = fitness;
    s.who = "the physiotherapist";
    s.day = today - days(3);
    s.until = today + days(12);
    return s;
}

/// An adult who has squatted.
inline GateFacts adult(LiftId lift = squat)
{
    GateFacts facts;
    facts.birthYear = std::chrono::year(1999);
    facts.alike = lift;
    return facts;
}

inline UseQuestion asking(Method method, LiftId lift = squat, double kg = 60, double giveOrTakeKg = 1)
{
    UseQuestion question;
    question.lift = lift;
    question.method = method;
    question.day = today;
    question.load = LoadAtWorst{kilograms(kg), kilograms(giveOrTakeKg)};
    question.maximum = maximumOf(method == Method::Tyre ? deadliftId : lift);
    return question;
}

/// The same question with every caution that it meets looked over.
inline UseQuestion lookedOver(UseQuestion question, const GateFacts& facts)
{
    const auto answer = mayUse(question, facts);
    for (const Reason& reason : answer->reasons)
        if (reason.alone == Permission::Caution)
            question.lookedOver.push_back(reason.key);
    return question;
}

inline std::optional<Reason> find(const GateAnswer& answer, GateCode code)
{
    const auto at = std::find_if(answer.reasons.begin(), answer.reasons.end(), [code](const Reason& reason) { return reason.key.code == code; });
    return at == answer.reasons.end() ? std::nullopt : std::optional(*at);
}

}
