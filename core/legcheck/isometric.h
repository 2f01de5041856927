// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/legcheck/forcerecord.h"

#include <array>
#include <chrono>

namespace steelyard {

/// After the onset, the times that pulls are told apart by.
inline constexpr std::array isometricTimes{std::chrono::milliseconds{50}, std::chrono::milliseconds{100}, std::chrono::milliseconds{150}, std::chrono::milliseconds{200},
                                           std::chrono::milliseconds{250}};

/// A pull at one of those times.
struct PullAt {
    std::chrono::milliseconds after{};
    Force gross;           ///< all of it, the body's weight among it
    ForceRate development; ///< (F(t) − F(onset))/t
    Impulse netImpulse;    ///< of the force over the weight, from the onset
};

/// An isometric pull or push as its record of force tells it.
struct IsometricTry {
    Steady weighing;          ///< on the first second: body, and what is pulled before the pull
    std::size_t onsetIndex = 0;
    Seconds onset{};          ///< from the start of the record
    Force grossPeak, netPeak; ///< net: over the weight
    Force uNetPeak;           ///< of the weighing's mean; the plate's own accuracy is in neither
    std::array<std::optional<PullAt>, isometricTimes.size()> at{}; ///< none past the end of the record
};

/// Weighed on the first second, refused as not still above 2 %. Onset: the last sample within weight ± max(5 SD, 1 N) before the first outside
/// (5 SD: Dos'Santos et al. 2017), without a step back; all times from it, between samples on a straight line. Impulse by trapezoids.
/// Refuses what faultOf does (under 1.1 s), a first second that is not still, a record that never leaves the band, and a dip below it
/// between the first second and the peak: such a pull begins with a drop of the body.
[[nodiscard]] Result<IsometricTry> isometricTry(const ForceRecord& record);

}
