// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"
#include "core/measure/result.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// Vertical force as a plate gives it, at even steps of time; on two plates the sum of both, or one of them.
struct ForceRecord {
    Frequency rate;
    std::vector<Force> force;

    /// When a sample was taken; a sample may be a fraction between two.
    [[nodiscard]] Seconds timeAt(double sampleIndex) const { return Seconds{sampleIndex / rate.si()}; }
    /// How many samples last so long, to the nearest.
    [[nodiscard]] std::size_t samplesIn(Seconds time) const;
};

/// Why a record cannot be read at all; nothing when it can. Refuses a rate outside 50–100 000 a second, a record that is empty, shorter
/// than `least` or longer than 2 million samples, and samples that are not finite or beyond 100 kN.
[[nodiscard]] std::optional<Error> faultOf(const ForceRecord& record, Seconds least);

/// A mean over a stretch of samples with their standard deviation (by n − 1).
struct Steady {
    Force mean, sd;
    std::size_t firstIndex = 0, samplesCount = 0;
    bool isShort = false; ///< weighed on less than a second because that was asked for: the impulse is the less sure

    [[nodiscard]] std::size_t endIndex() const { return firstIndex + samplesCount; }
};

/// A stretch of a record. It must lie in the record and hold two samples.
[[nodiscard]] Steady steadyOf(std::span<const Force> force, std::size_t firstIndex, std::size_t samplesCount);

/// The quietest stretch of so many samples in which every sample is allowed, before `endIndex`: the least SD, the earliest on ties; none
/// where there is no such stretch.
[[nodiscard]] std::optional<Steady> quietest(std::span<const Force> force, const std::vector<bool>& allowed, std::size_t samplesCount, std::size_t endIndex);

/// Standing still is: an SD of at most 2 % of the weight.
[[nodiscard]] bool isStill(const Steady& weighing);

/// How far off the weight a sample still counts as quiet: the larger of 5 SD and 1 N (5 SD: Dos'Santos et al. 2017, J Strength Cond Res
/// 31:3463–3473; the floor is ours, for records without noise).
[[nodiscard]] Force quietBand(const Steady& weighing);

/// The first sample from `firstIndex` to before `endIndex` that lies outside the quiet band; none when all are within.
[[nodiscard]] std::optional<std::size_t> firstOutsideIndex(std::span<const Force> force, const Steady& weighing, std::size_t firstIndex, std::size_t endIndex);

}
