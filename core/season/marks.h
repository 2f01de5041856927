// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/entered.h"
#include "core/season/recordid.h"

#include <cstdint>
#include <optional>

namespace steelyard {

/// Where a lift starts: from a rack or the lifter's own bottom, or from plates that stand on the floor.
enum class LiftStart : std::uint8_t { OwnBottom, Floor };

/// The hole of a rack that a mark was read at, the lowest being 1. The mark's height stands as it was then.
struct HoleRead {
    RecordId rack;
    int hole = 0;
    bool operator==(const HoleRead&) const = default;
};

/// Which marks were read at a hole; the others by tape.
struct MarkHoles {
    std::optional<HoleRead> bottom, zoneFrom, zoneTo, top, rack;
    bool operator==(const MarkHoles&) const = default;
};

/// An athlete's bar marks for one lift, measured from the floor to the bar's centre line at the sleeve.
struct BarMarks {
    LiftStart start = LiftStart::OwnBottom;
    std::optional<Entered<Height>> bottom;   ///< unused from the floor: there the plates decide
    std::optional<Entered<Length>> blocks;   ///< what the plates stand on, from the floor only
    std::optional<Entered<Height>> zoneFrom, zoneTo;
    std::optional<Entered<Height>> top;
    std::optional<Entered<Height>> rack;
    MarkHoles holes{};
    bool operator==(const BarMarks&) const = default;
};

/// Standard uncertainty of one bar mark read by tape or rack hole (our choice).
inline constexpr Length uBarMark = metres(0.01);

}
