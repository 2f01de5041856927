// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/marks.h"
#include "core/season/recordid.h"

#include <compare>
#include <span>
#include <string>
#include <string_view>

namespace steelyard {

/// Which lift. Numbers below 1000 ship with the app, are written down for ever and never used again; one that a coach added has the
/// id of its record instead, and the number 0. Neither is none.
struct LiftId {
    std::uint16_t number = 0;
    RecordId own{};

    [[nodiscard]] static constexpr LiftId added(const RecordId& id) { return {0, id}; }
    constexpr bool operator==(const LiftId&) const = default;
    constexpr std::strong_ordering operator<=>(const LiftId& other) const
    {
        const std::strong_ordering order = number <=> other.number;
        return std::is_eq(order) ? own <=> other.own : order;
    }
};

/// The one that other loads are held against.
inline constexpr LiftId deadliftId{14};

/// A lift that ships.
struct Lift {
    LiftId id;
    std::string_view term; ///< in the field's own English words, for the interface to translate
    bool onBar = false;    ///< a bar moves along a path that has marks
    LiftStart start = LiftStart::OwnBottom;
};

/// A lift that a coach added: a bar moves along a path that has marks.
struct OwnLift {
    RecordId id;
    std::string name;
    LiftId like; ///< the one of those that ship that it is most like; none where it is like none
    LiftStart start = LiftStart::OwnBottom;
    bool operator==(const OwnLift&) const = default;
};

/// All of them, in the order of their numbers.
[[nodiscard]] std::span<const Lift> shippedLifts();

/// Nothing for a number that no lift here has.
[[nodiscard]] const Lift* shippedLift(LiftId id);

}
