// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/marks.h"

#include <compare>
#include <span>
#include <string_view>

namespace steelyard {

/// Which lift: numbers below 1000 ship with the app, are written down for ever and never used again. 0 is none.
struct LiftId {
    std::uint16_t number = 0;
    constexpr bool operator==(const LiftId&) const = default;
    constexpr std::strong_ordering operator<=>(const LiftId& other) const { return number <=> other.number; }
};

/// A lift that ships.
struct Lift {
    LiftId id;
    std::string_view term; ///< in the field's own English words, for the interface to translate
    bool onBar = false;    ///< a bar moves along a path that has marks
    LiftStart start = LiftStart::OwnBottom;
};

/// All of them, in the order of their numbers.
[[nodiscard]] std::span<const Lift> shippedLifts();

/// Nothing for a number that no lift here has.
[[nodiscard]] const Lift* shippedLift(LiftId id);

}
