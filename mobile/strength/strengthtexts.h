// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/strength/percentof.h"
#include "core/work/strength/standing.h"
#include "mobile/text/sentences.h"

#include <QString>

/** How strong somebody is, in words. */
namespace strengthtexts {

/// "98 to 112 kg".
[[nodiscard]] QString range(const steelyard::OneRepMax& max);
/// "105 ± 7 kg".
[[nodiscard]] QString middle(const steelyard::OneRepMax& max);
/// "tested 12 Oct", "estimated 12 Oct".
[[nodiscard]] QString when(const steelyard::DayMaximum& maximum, std::chrono::sys_days today);
/// "100 kg × 5, 2 in reserve", "tried out: 115 kg, next 2.5 kg too much".
[[nodiscard]] QString set(const steelyard::StrengthTest& test);
/// "chains, in the kept set-up of 3 Nov"; plain iron in words.
[[nodiscard]] QString conditions(const steelyard::TestConditions& conditions, const steelyard::SeasonBook& book, std::chrono::sys_days today);
/// "chains", "bands from below".
[[nodiscard]] QString hung(steelyard::Method method);
/// Why that evidence was taken.
[[nodiscard]] QString why(const steelyard::DayMaximum& maximum);
/// Why nothing follows from a test, and what would settle it.
[[nodiscard]] sentences::Said refusal(const steelyard::Error& error, const steelyard::StrengthTest& test);
/// "F/M 1.47 ± 0.08 · F/M^0.67 6.0 ± 0.3"; empty where body mass is not known.
[[nodiscard]] QString scaled(const steelyard::LiftStanding& standing);
/// "62 ± 3 %".
[[nodiscard]] QString percent(const steelyard::PercentReached& reached);
/// The same of the mean of the path; "not tested" or "not known" where there is none.
[[nodiscard]] QString percentOnMean(const steelyard::WeighedUp& weighed, const std::optional<steelyard::DayMaximum>& maximum);
/// Of what, at what: "62 ± 3 % at the bottom, 71 ± 3 % on the mean of 105 ± 7 kg (98 to 112 kg), tested 12 Oct"; else why there is none.
[[nodiscard]] QString percents(const steelyard::WeighedUp& weighed, const std::optional<steelyard::DayMaximum>& maximum, std::chrono::sys_days today);

}
