// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/setuprecord.h"
#include "core/strength/scaled.h"
#include "core/work/strength/maxima.h"

namespace steelyard {

/// Whether a maximum of the lift can be said in kilograms: the lifts of a bar, chins and dips, presses of legs, log, keg and kettlebell,
/// and each that a coach added. No carries, jumps, throws, sleds, swings and isometric pulls. Common practice, no source.
[[nodiscard]] bool hasMaximum(const LiftId& lift);
/// Whether the body is lifted too, so that a test says nothing without its mass: pull-ups, chin-ups and dips. What a coach adds is a lift of
/// a bar.
[[nodiscard]] bool liftsTheBody(const LiftId& lift);

/// What hangs in a set-up besides iron, as conditions of a test.
[[nodiscard]] std::set<Method> hungInTest(const SetupRecord& setup);

/// How far body mass may be off what was weighed last: clothes, meals, the scale, and what the days since have changed. Our choice.
inline constexpr Mass uOfBodyMass = kilograms(1);

/// What is known of somebody's strength in one lift.
struct LiftStanding {
    LiftId lift;
    std::optional<DayMaximum> maximum;    ///< what counts; nothing where nothing follows from any test
    bool isOld = false;                   ///< older than the coach's limit
    std::optional<ScaledStrength> byMass, byShape; ///< F/M and F/M^0.67 of it in kg, where body mass is known for its day
};

/// Of every lift with a test by a day, in the order of the lifts.
[[nodiscard]] std::vector<LiftStanding> standingOn(const SeasonBook& book, const RecordId& athlete, std::chrono::sys_days day);
/// Of one lift, with a test or none.
[[nodiscard]] LiftStanding standingOn(const SeasonBook& book, const RecordId& athlete, const LiftId& lift, std::chrono::sys_days day);

}
