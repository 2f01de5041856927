// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/kit.h"

#include <optional>

namespace steelyard {

/// Why a band should be read at a length.
enum class LengthReason : std::uint8_t {
    Spread,  ///< three lengths, spread over what will be used, make a curve at all
    Further, ///< the longest read falls short of what will be used: past it the pull is unknown
    Weakest, ///< there the curve through the points so far is least sure
};

/// Where to read a band next.
struct LengthAdvice {
    Length length;
    LengthReason reason = LengthReason::Spread;
};

/// So many lengths make a good curve, and more are not asked for (our choice).
inline constexpr std::size_t fewestLengthCount = 3, mostLengthCount = 8;

/// The next length to read a band at, `furthest` being the longest it will be used at. First a quarter, a half and all of the way
/// from rest to there; then, while the give-or-take anywhere up to there is above `goodShare` of the pull at the furthest, where it is
/// widest and nothing was read nearby. Nothing when it is good enough, when `mostLengthCount` are on the fit, and without a rest length
/// shorter than `furthest`.
[[nodiscard]] std::optional<LengthAdvice> nextLength(const BandMeasurement& measurement, Length furthest, double goodShare = 0.03);

/// What a band pulls on the way back beside its pull under load, at one length.
struct WayBack {
    Length length;
    Force loading, unloading;
    [[nodiscard]] double lessShare() const { return (loading - unloading) / loading; }
};
/// At the middle of the lengths read both ways; nothing until each way has a curve of its own and they have lengths in common.
[[nodiscard]] std::optional<WayBack> wayBack(const BandMeasurement& measurement);

}
