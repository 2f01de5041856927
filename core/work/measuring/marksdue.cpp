// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/marksdue.h"

#include "core/work/records/codec.h"

#include <algorithm>

namespace steelyard {

Remeasure remeasureMarks(const SeasonBook& book, const Athlete& athlete, const LiftId& lift, std::chrono::sys_days day)
{
    const journal::Held* marks = book.said(athletePlace(athlete.id), field::athleteMarksNumber, partOf(lift));
    return marks ? remeasureMarks(athlete, marks->body.localDay, day) : Remeasure::No;
}

std::vector<MarksDue> marksDue(const SeasonBook& book, const Athlete& athlete, std::chrono::sys_days day)
{
    std::vector<MarksDue> due;
    for (const auto& [lift, marks] : athlete.marks)
        if (const Remeasure why = remeasureMarks(book, athlete, lift, day); why != Remeasure::No)
            due.push_back({lift, why});
    std::stable_partition(due.begin(), due.end(), [](const MarksDue& one) { return one.why == Remeasure::Grown; });
    return due;
}

}
