// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/isometricpull.h"
#include "core/strength/strengthcurve.h"

#include <span>
#include <vector>

namespace steelyard {

/// Pulls that belong to one picture of her: within so many days of the last of them (our choice: strength that is months old is
/// another's).
inline constexpr std::chrono::days pullsTogether{28};

/// Those of a lift that count together, the earliest first.
[[nodiscard]] std::vector<IsometricPull> pullsThatCount(std::span<const IsometricPull> pulls, const LiftId& lift);

/// Her strength over height from the pulls given. Standard uncertainty of one by its scale's step, d/√12 (JCGM 100:2008, 4.3.7), where
/// it is known; the spread of her pulls is the curve's own. Refuses as `StrengthCurve::of` does.
[[nodiscard]] Result<StrengthCurve> strengthOf(std::span<const IsometricPull> pulls);

}
