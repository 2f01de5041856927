// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/limits.h"
#include "core/season/method.h"

#include <optional>

namespace steelyard {

/// How much a method asks of something.
enum class Asks : std::uint8_t { No, Wants, Needs };

/// What a method asks of whoever is to do it.
struct MethodRules {
    bool clearance = false;      ///< somebody qualified has cleared the athlete for it with this lift
    bool minorsApproval = false; ///< who may be under age needs an approval by name
    bool caution = false;        ///< has a caution to be looked over
    Asks maximum = Asks::No;     ///< an estimate of the maximum: how steady the lift is, and what percent is of
    bool ofDeadlift = false;     ///< that is the deadlift's, whatever lift is asked about
    std::optional<int> capPercent; ///< what the load may come to, of the lowest estimate
};

/// The rules of a method under the coach's limits. Sources: none but those of the limits; it is common practice, no source, that
/// maximal and isometric tests are supervised and follow a screening; that eccentric overload needs a proven plain lift, a fresh
/// maximum and somebody's word; that chains, bands, a bench aid and loads over the head come after a steady plain lift; and that minors
/// do no maximal lifts, eccentric overload or tyres unless somebody approves it by name. Local rules and licensed practice go before.
/// A method that is none has no rules; ask isMethod first.
[[nodiscard]] MethodRules rulesOf(Method method, const CoachLimits& limits);

}
