// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/machine.h"
#include "core/season/kit.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace steelyard {

/// The bar stood at a height above the chest to a centimetre, the chest itself among it (our choice, as for every tape).
inline constexpr Length uAboveChest = metres(0.01);
/// Where nothing rests on it the aid hangs slack; from there up it helps nothing, as far as a bar goes.
inline constexpr Length slackAbove = metres(2);

/// Help by height above the chest, from the readings that have both numbers and are not left out. What rests on it are plates that nobody
/// weighed: 2 % either way, rectangular (our choice). A reading with nothing on it says where it goes slack: above that it helps nothing.
/// Refuses fewer than two readings, two at one height, numbers below 0 or not finite, and help that grows with height: less stretched,
/// rubber pulls less. The refusal names the reading, counted from 1.
[[nodiscard]] Result<MeasuredPull> aidFrom(const AidMeasurement& measurement, SourceId source = ownSource);

/// The readings that count, by their index in the list, the lowest first.
[[nodiscard]] std::vector<std::size_t> aidReadingsThatCount(const AidMeasurement& measurement);

/// The reading that alone keeps the help from falling with height, by its index in the list; of several that would do, the one furthest
/// from the curve through the others. Nothing where the help falls, or no single reading is at fault.
[[nodiscard]] std::optional<std::size_t> oddAidReadingIndex(const AidMeasurement& measurement);

/// Why an aid should be read at a height.
enum class AidReason : std::uint8_t {
    Slack, ///< nobody has said yet where it begins to help: with nothing on it
    Chest, ///< it was not read with the bar at the chest, where it helps most
    Gap,   ///< there the readings are furthest apart for how the help bends
};

/// Where to read an aid next.
struct AidAdvice {
    Length aboveChest;
    AidReason reason = AidReason::Slack;
};

/// So many heights make a curve, and more are not asked for (our choice).
inline constexpr std::size_t fewestAidReadingCount = 4, mostAidReadingCount = 8;

/// The next height to read: first both ends, then the middle of the widest gap until there are four, then of the gap over which curve and
/// straight line differ most, while that is above `goodShare` of the greatest help. Nothing when it is good enough, with
/// `mostAidReadingCount` readings, or while a reading is odd.
[[nodiscard]] std::optional<AidAdvice> nextAidReading(const AidMeasurement& measurement, double goodShare = 0.03);

}
