// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sample/season.h"
#include "core/work/keeping/seasonkeeping.h"

namespace steelyard::sample {

/// How the days of a season go by while it is kept.
struct Passing {
    /// From now on this is the day at the place where the device is.
    std::function<void(std::chrono::sys_days)> enter;
    /// Has what was asked for kept, and comes back once something has been told; never called where the keeper answers at once.
    std::function<void()> await;
};

/// What was not kept, and what was told about it.
struct NotKept {
    std::string what;
    Told told;
};

/// Keeps a season day by day through the use-cases that pages use, so that it is held to all that a coach's entries are held to.
/// Ends at the first thing that is refused.
[[nodiscard]] std::optional<NotKept> keepSeason(SeasonKeeping& keeping, const Season& season, const Passing& passing);

}
