// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/entered.h"
#include "core/season/isometricpull.h"
#include "core/season/lifts.h"
#include "core/season/marks.h"
#include "core/season/recordid.h"

#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace steelyard {

/// A guardian's agreement that data about a minor are kept: who gave it, and the day.
struct GuardianAgreement {
    std::string who;
    std::chrono::sys_days day{};
    bool operator==(const GuardianAgreement&) const = default;
};

/// Body mass, height or both, as measured on a day.
struct BodySize {
    RecordId id;
    std::chrono::sys_days day{};
    std::optional<Entered<Mass>> mass;
    std::optional<Entered<Length>> height;
    bool operator==(const BodySize&) const = default;
};

/// What the coach holds a load in one lift against: a share of the lowest estimate of another, give-or-take included.
struct CapRule {
    LiftId of;
    int percent = 0; ///< 1 to 100, as that of tyres
    bool operator==(const CapRule&) const = default;
};
/// Whether there is such a lift and such a share.
[[nodiscard]] constexpr bool canBeCap(const CapRule& rule) { return rule.of != LiftId{} && rule.percent >= 1 && rule.percent <= 100; }

/// One of the people who lift. An empty text is one that was not given.
struct Athlete {
    RecordId id;
    std::string name, squad;
    std::optional<std::chrono::year> birthYear;
    std::optional<GuardianAgreement> agreement;
    std::string notes;
    std::map<LiftId, BarMarks> marks; ///< per lift, measured once
    std::vector<BodySize> sizes;      ///< by day, the earliest first; they are added one by one and never changed
    std::vector<IsometricPull> pulls; ///< of every lift, by day, likewise
    std::map<LiftId, CapRule> caps;   ///< per lift that is done with what has no honest number
    bool operator==(const Athlete&) const = default;
};

/// Body mass or height as it was on a day: the last one measured by then; nothing before the first.
[[nodiscard]] std::optional<Entered<Mass>> bodyMassOn(const Athlete& athlete, std::chrono::sys_days day);
[[nodiscard]] std::optional<Entered<Length>> bodyHeightOn(const Athlete& athlete, std::chrono::sys_days day);

/// What the birth year says of somebody's age on a day.
enum class Majority : std::uint8_t {
    Unknown,    ///< no birth year
    MayBeMinor, ///< comes of age this year at the earliest, so that it takes the birthday to know
    Adult,      ///< has come of age before this year
};

/// Of age is 18, as in most places and in the Convention on the Rights of the Child, article 1; local rules may say otherwise.
inline constexpr std::chrono::years usuallyOfAge{18};

/// Whether somebody of that birth year, or of none that is known, is of age on a day.
[[nodiscard]] Majority majorityOn(const std::optional<std::chrono::year>& birthYear, std::chrono::sys_days day,
                                  std::chrono::years ofAge = usuallyOfAge);

}
