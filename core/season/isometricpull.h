// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/entered.h"
#include "core/season/lifts.h"
#include "core/season/recordid.h"

#include <chrono>
#include <optional>

namespace steelyard {

/// One isometric pull of an athlete in a lift, on a day: the greatest that she pulled or pushed on a bar that could not move, read on a
/// scale with the bar's weight on it, and the height of the bar's centre line.
struct IsometricPull {
    RecordId id;
    std::chrono::sys_days day{};
    LiftId lift;
    Entered<Height> height;
    Entered<Mass> pull;                     ///< as a mass, as scales show it
    std::optional<Entered<Mass>> scaleStep; ///< the smallest step that the scale shows
    bool operator==(const IsometricPull&) const = default;
};

}
