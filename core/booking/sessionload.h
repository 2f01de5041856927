// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"

#include <chrono>
#include <cstddef>
#include <optional>
#include <span>

namespace steelyard {

using Minutes = std::chrono::duration<double, std::ratio<60>>;

/// A number without a unit, with its standard uncertainty.
struct Score {
    double score = 0, uScore = 0;
};

/// The most that an athlete can say on the scale of exertion, and the most minutes of a day.
inline constexpr double greatestRpe = 10;
inline constexpr Minutes longestSession{1440};

/// Session load, RPE × minutes, in arbitrary units (Foster et al. 2001, J Strength Cond Res 15:109–115): RPE 0–10 for the whole session, asked
/// about 30 minutes after it. u from what the two are known to: of a scale in whole steps 1/√12. Refuses RPE outside 0–10, minutes outside a
/// day, uncertainties below 0 and numbers that are not finite.
[[nodiscard]] Result<Score> sessionLoad(double rpe, Minutes lasted, double uRpe = 0, Minutes uLasted = {});

/// A day's load, the sum of its sessions; a day that was rest is reported as 0.
[[nodiscard]] Score dayLoad(std::span<const Score> sessions);

/// A week of session loads. What nobody reported is not 0: everything here is of the reported days, and `reportedCount` belongs beside it.
struct WeekLoad {
    std::size_t reportedCount = 0;
    std::optional<Score> load;     ///< sum; none when no day was reported
    std::optional<Score> monotony; ///< mean/SD, SD by n − 1; none for fewer than two days and where they are all alike
    std::optional<Score> strain;   ///< load × monotony
};

/// Load, monotony and strain (Foster 1998, 2001) of up to seven days; u by propagation, days independent. Refuses more than seven days, loads
/// outside 0 to RPE 10 for a whole day, and numbers that are not finite.
[[nodiscard]] Result<WeekLoad> weekLoad(std::span<const std::optional<Score>> days);

}
