// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/method.h"

#include <chrono>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

namespace steelyard {

/// Who said so, and the day: that a clearance is taken back, that a day status is lifted.
struct SaidSo {
    std::string who; ///< empty where a newer app said it in a way that cannot be read here
    std::chrono::sys_days day{};
    bool operator==(const SaidSo&) const = default;
};

/// That somebody qualified lets an athlete do a method with a lift, from a day on. It is no medical clearance: that is for licensed
/// clinicians, and what they decide goes before it.
struct Clearance {
    RecordId id;
    RecordId athlete;
    LiftId lift;
    Method method = Method::Plain;
    std::string who;                             ///< who gave it; never empty
    std::chrono::sys_days day{};                 ///< from which on
    std::optional<std::chrono::sys_days> until;  ///< the last day; none: until it is taken back
    bool approvesMinor = false;                  ///< given knowing that the athlete may be under age
    std::optional<SaidSo> takenBack;
    bool operator==(const Clearance&) const = default;
};

/// How a clearance stands on a day.
enum class ClearanceState : std::uint8_t { Valid, NotYet, Expired, TakenBack };

/// Its first and its last day count. Taken back on a day it is not valid on that day any more, whatever else its days say.
[[nodiscard]] ClearanceState stateOn(const Clearance& clearance, std::chrono::sys_days day);

/// The same among all that somebody has: one that was given before another of the same lift and method was taken back went with it.
[[nodiscard]] ClearanceState stateAmong(std::span<const Clearance> all, const Clearance& clearance, std::chrono::sys_days day);

/// How much somebody may train.
enum class Fitness : std::uint8_t { All = 1, Some = 2, None = 3 };
/// Whether it is one that is known here.
[[nodiscard]] constexpr bool isFitness(Fitness fitness) { return fitness >= Fitness::All && fitness <= Fitness::None; }

/// What an athlete may do from a day on, and who said so. Where several hold on a day, each of them does: one that says less keeps
/// nobody from what another forbids.
struct DayStatus {
    RecordId id;
    RecordId athlete;
    std::chrono::sys_days day{};                ///< from which on
    std::optional<std::chrono::sys_days> until; ///< the last day; none: until it is lifted
    Fitness fitness = Fitness::All;
    std::string who;                            ///< who set it; never empty in one that could be read
    std::set<Method> notMethods;                ///< what not, where only some may be done
    std::set<LiftGroup> notGroups;
    std::set<LiftId> notLifts;
    std::string text;                           ///< in words, for people to read: "left shoulder, nothing above the head"
    std::optional<SaidSo> lifted;
    bool unread = false;                        ///< a newer app wrote it: what it forbids is not known here
    bool operator==(const DayStatus&) const = default;
};

/// Whether it is in force on a day: from its first day to its last, and not lifted. The day on which it is lifted is free of it.
[[nodiscard]] bool holdsOn(const DayStatus& status, std::chrono::sys_days day);

/// What several come to on a day: each of them forbids what it names.
struct DayStanding {
    Fitness fitness = Fitness::All;             ///< of the strictest
    bool unread = false;                        ///< one of them cannot be read here
    std::optional<std::chrono::sys_days> until; ///< last day on which any of it is forbidden; none where nobody said or nothing is
    std::set<Method> notMethods;
    std::set<LiftGroup> notGroups;
    std::set<LiftId> notLifts;
    std::vector<std::string> texts;             ///< each once
    bool operator==(const DayStanding&) const = default;
};
/// Those that hold on the day; of the others nothing counts.
[[nodiscard]] DayStanding standingOn(std::span<const DayStatus> statuses, std::chrono::sys_days day);

}
