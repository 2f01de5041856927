// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/strengthtest.h"
#include "core/strength/evidence.h"
#include "core/work/gates/mayuse.h"

#include <span>
#include <vector>

namespace steelyard {

/// What one day says of how strong somebody is in a lift, under one kind of conditions.
struct DayMaximum {
    std::chrono::sys_days day{};
    OneRepMax max;
    StrengthTest test;                  ///< that it comes from
    WhyBest why = WhyBest::OnlyOne;
    bool setsShowMore = false;          ///< a set of the day shows more than its test: what was tested was no maximum
    std::vector<StrengthTest> refused;  ///< of the day and these conditions, of which nothing follows
};

/// One day of a lift under one kind of conditions: everything that was tried, and what it comes to.
struct StrengthDay {
    std::chrono::sys_days day{};
    std::vector<StrengthTest> tests;    ///< in the order they were kept
    std::optional<DayMaximum> maximum;  ///< nothing where nothing follows from any of them
    bool isLikeBefore = false;          ///< under the conditions of the one before it: the two may be compared
};

/// The history of a lift: by day, the earliest first, and of one day plain iron before what was lifted under other conditions, which are
/// never mixed; nor is what was lifted with the body and without it. Tests of other lifts are passed over.
[[nodiscard]] std::vector<StrengthDay> strengthHistory(std::span<const StrengthTest> tests, const LiftId& lift);

/// What follows from one test by itself, or why nothing does.
[[nodiscard]] Result<OneRepMax> oneRepMaxFrom(const StrengthTest& test);
/// What was lifted: where the body is lifted too, all of it is the load; help takes from it.
[[nodiscard]] Mass loadLifted(const StrengthTest& test);

/// A test as evidence. Its load is taken as exact: the spread of the formulas, or the jump that was tried, is far more than what a bar is
/// out by. A maximum whose jump nobody noted has one of `usualJump`.
[[nodiscard]] StrengthEvidence evidenceOf(const StrengthTest& test);
/// The step that two small plates make on most bars (our choice).
inline constexpr Mass usualJump = kilograms(2.5);

/// The history's maxima: a day of which nothing follows is not there.
[[nodiscard]] std::vector<DayMaximum> maximaByDay(std::span<const StrengthTest> tests, const LiftId& lift);

/// What counts on a day: the last day by then that plain iron was lifted on, however old; where there is none, the last under other
/// conditions. Strength is what it was lately, not what it was once.
[[nodiscard]] std::optional<DayMaximum> maximumOn(std::span<const StrengthTest> tests, const LiftId& lift, std::chrono::sys_days day);

/// The same as gates take it.
[[nodiscard]] std::optional<KnownMaximum> knownMaximum(std::span<const StrengthTest> tests, const LiftId& lift, std::chrono::sys_days day);
[[nodiscard]] std::optional<KnownMaximum> knownMaximum(const SeasonBook& book, const RecordId& athlete, const LiftId& lift, std::chrono::sys_days day);

}
