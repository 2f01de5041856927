// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/entered.h"

#include <cstdint>
#include <optional>

namespace steelyard {

/// Where a lift starts: from a rack or the lifter's own bottom, or from plates that stand on the floor.
enum class LiftStart : std::uint8_t { OwnBottom, Floor };

/// An athlete's bar marks for one lift, measured from the floor to the bar's centre line at the sleeve.
struct BarMarks {
    LiftStart start = LiftStart::OwnBottom;
    std::optional<Entered<Height>> bottom;   ///< unused from the floor: there the plates decide
    std::optional<Entered<Length>> blocks;   ///< what the plates stand on, from the floor only
    std::optional<Entered<Height>> zoneFrom, zoneTo;
    std::optional<Entered<Height>> top;
    std::optional<Entered<Height>> rack;
    bool operator==(const BarMarks&) const = default;
};

/// Standard uncertainty of one bar mark read by tape or rack hole (our choice).
inline constexpr Length uBarMark = metres(0.01);

}
