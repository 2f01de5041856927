// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/kit.h"
#include "core/season/lifts.h"
#include "core/season/setuprecord.h"
#include "core/work/weighup.h"

#include <optional>
#include <vector>

namespace steelyard {

/// What a measurement of a chain would gain most by.
enum class ChainGain : std::uint8_t {
    Nothing,   ///< good as it is
    Weigh,     ///< gauged, which is 3 % whatever the care
    FinerScale ///< the step of the scale is more than a hundredth of what was weighed
};
/// Nothing to say, `Nothing`, where the chain has no mass per metre yet.
[[nodiscard]] ChainGain chainGain(const ChainMeasurement& measurement);

/// Whether the links are of the long kind, of which tables give other widths: a pitch above 3.25 wires. Short links have 2.8 (DIN 766)
/// to 3 (EN 818-7), long ones 3.5 (DIN 763); figures of the standards from memory.
[[nodiscard]] bool isLongLink(const ChainMeasurement& measurement);

/// The longest that a band gets in a set-up, along all of it: `√(z²+x²)` to the bar at bottom or top, twice that and the wrap when
/// doubled. Nothing where it does not hang there or the bar has no path yet.
[[nodiscard]] std::optional<Length> longestUse(const SetupRecord& setup, const std::optional<LiftPath>& path, const RecordId& band);

/// Lifts in which the bar goes about the same way for one lifter, so that marks may be copied until there is time to measure: the two
/// squats on two legs, the two on one, overhead press, push press and jerk, the two deadlifts, the two pulls (common practice, no source).
[[nodiscard]] std::vector<LiftId> similarLifts(LiftId lift);

/// How far a band should be measured: the longest that the set-up stretches it, else twice its rest. Nothing without a rest length.
[[nodiscard]] std::optional<Length> measureUpTo(const BandMeasurement& measurement, const std::optional<Length>& longestUse);

/// About what hangs on a band at a length: by its fit, else in proportion to the stretch of the longest reading. Only to choose plates
/// by; nothing before the first reading.
[[nodiscard]] std::optional<Mass> massFor(const BandMeasurement& measurement, Length length);

}
