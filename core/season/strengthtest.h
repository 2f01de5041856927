// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/entered.h"
#include "core/season/method.h"
#include "core/season/recordid.h"

#include <chrono>
#include <optional>
#include <set>
#include <string>

namespace steelyard {

/// What was lifted under: two tests under unlike conditions are not compared.
struct TestConditions {
    std::set<Method> hung;                 ///< what hung besides iron: chains, bands below or above, a bench aid; a machine
    RecordId setup;                        ///< the kept set-up that was lifted; none where it was none
    std::optional<Entered<Mass>> bodyMass; ///< where the body is lifted too: chins, dips

    [[nodiscard]] bool isPlainIron() const { return hung.empty() && setup.isNone(); }
    bool operator==(const TestConditions&) const = default;
};

/// One set that says how strong somebody was on a day.
struct StrengthTest {
    RecordId id;
    RecordId athlete;
    LiftId lift;
    std::chrono::sys_days day{};
    Entered<Mass> load;                       ///< as typed; what was added where the body is lifted too, below nothing for help
    int reps = 0;                             ///< done; those missed are not among them
    std::optional<int> repsInReserve;         ///< how many more would have gone, as the athlete said
    bool missed = false;                      ///< a rep was tried behind them and not done
    bool maximum = false;                     ///< a maximum tried out, jump by jump: one rep done, and the next load too much
    std::optional<Entered<Mass>> leastJump{}; ///< the smallest step to the next load that was tried; of a maximum only
    TestConditions conditions;
    std::string note;
    bool operator==(const StrengthTest&) const = default;
};

/// What may hang in a test, and be said of it.
[[nodiscard]] constexpr bool canHangInTest(Method method)
{
    return method == Method::Chains || method == Method::BandsBelow || method == Method::BandsAbove || method == Method::BenchAid || method == Method::Machine;
}

}
