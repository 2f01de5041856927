// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/athlete.h"
#include "core/season/kit.h"

#include <chrono>

namespace steelyard {

/// How long a measurement is good for. Rubber ages with use, heat and light; steel wears slowly. Bands and bench aids are measured again each term,
/// everything else each year: common practice, no source. A maker's or a federation's own interval goes before ours.
[[nodiscard]] std::chrono::days goodFor(const Measured& measured);

enum class DueState : std::uint8_t { Fresh, Soon, Due };

/// A measurement's age on a day and when the next is due.
struct Due {
    std::chrono::days age{};
    std::chrono::sys_days next{};
    DueState state = DueState::Fresh;
};
/// `Soon` is within 14 days of the next; a day before the measurement has age 0.
[[nodiscard]] Due dueOn(const MeasurementRecord& last, std::chrono::sys_days day);

/// Why bar marks should be taken again.
enum class Remeasure : std::uint8_t {
    No,
    Grown,  ///< her height has changed by at least twice what a bar mark is uncertain by since the marks were taken
    MayHave, ///< may still be growing, and nobody has measured her height for half a year
};

/// Whether marks taken on a day still fit an athlete who may be growing. Only while she may be under 18, or is within two years of it,
/// is a missing height a reason; a measured change is one at any age. Half a year and two years are our choice: yearly growth of 5 cm
/// and more is usual in youth (common practice, no source).
[[nodiscard]] Remeasure remeasureMarks(const Athlete& athlete, std::chrono::sys_days marksTaken, std::chrono::sys_days day);

}
