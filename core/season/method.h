// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/lifts.h"

#include <cstdint>
#include <span>
#include <vector>

namespace steelyard {

/// What is done with a lift that somebody may have to be cleared for. Each number is written down for ever and never used again.
enum class Method : std::uint8_t {
    Plain = 1,            ///< plain iron, or the lift as it is
    MaximalTest = 2,      ///< for one repetition or as many as go
    EccentricRelease = 3, ///< more on the way down than on the way up, by whichever way it is let go
    Chains = 4,
    BandsBelow = 5,
    BandsAbove = 6,
    BenchAid = 7,
    Machine = 8,       ///< cam and other machines
    Overhead = 9,      ///< the load ends over the head
    Tyre = 10,
    Implement = 11,    ///< log, keg, sandbag, stone
    Carry = 12,
    Sled = 13,
    Kettlebell = 14,   ///< swings, cleans, presses
    IsometricTest = 15,
    Jumps = 16,        ///< and landings
    Throws = 17,
};

inline constexpr Method lastMethod = Method::Throws;
/// Whether it is one that is known here.
[[nodiscard]] constexpr bool isMethod(Method method) { return method >= Method::Plain && method <= lastMethod; }

/// Lifts that somebody is kept from together. Each number is written down for ever and never used again.
enum class LiftGroup : std::uint8_t {
    Squat = 1,     ///< deep in knee and hip: squats, step-up, leg press
    Hinge = 2,     ///< bent over at the hip, or from the floor
    Press = 3,     ///< pushed away by the arms
    Pull = 4,      ///< pulled in by the arms
    Explosive = 5, ///< thrown, jumped or caught
    OneLeg = 6,
};

inline constexpr LiftGroup lastLiftGroup = LiftGroup::OneLeg;
/// Whether it is one that is known here.
[[nodiscard]] constexpr bool isLiftGroup(LiftGroup group) { return group >= LiftGroup::Squat && group <= lastLiftGroup; }

/// Methods that a lift that ships brings with it, however it is loaded: a snatch goes overhead, a tyre flip is done with a tyre. In the
/// order of their numbers; none for a lift that is not known. Common practice, no source.
[[nodiscard]] std::vector<Method> methodsOf(const LiftId& shipped);

/// The groups that a lift that ships belongs to, in the order of their numbers; none for a lift that is not known. Common practice, no
/// source.
[[nodiscard]] std::vector<LiftGroup> groupsOf(const LiftId& shipped);

}
