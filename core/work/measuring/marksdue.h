// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/measuring/due.h"
#include "core/work/records/seasonbook.h"

namespace steelyard {

/// A lift of which an athlete's bar marks should be taken again, and why.
struct MarksDue {
    LiftId lift;
    Remeasure why = Remeasure::No;
    bool operator==(const MarksDue&) const = default;
};

/// Of one lift; No where it has no marks.
[[nodiscard]] Remeasure remeasureMarks(const SeasonBook& book, const Athlete& athlete, const LiftId& lift, std::chrono::sys_days day);

/// Of all that she has marks for, in the order of the lifts; those of a height that has changed come first.
[[nodiscard]] std::vector<MarksDue> marksDue(const SeasonBook& book, const Athlete& athlete, std::chrono::sys_days day);

}
