// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/entry.h"

namespace steelyard::journal {

/// Content of Kind::ClockShifted: how far the shown time and day of a stretch of the subject's chain are moved. What is stored stays,
/// and so does the order of entries.
struct ClockShift {
    std::uint32_t incarnationNumber = 0;
    std::uint64_t firstNumber = 1, lastNumber = 1; ///< sequence numbers, both included
    std::chrono::milliseconds time{};
    std::chrono::days day{};

    bool operator==(const ClockShift&) const = default;
};

/// A map: 1 incarnation · 2 first and 3 last sequence number · 4 milliseconds · 5 days. Milliseconds reach to 2^60 either way, days to furthestDay.
[[nodiscard]] ByteBuffer writeClockShift(const ClockShift& shift);

/// Nothing where it is none, or ends before it begins.
[[nodiscard]] std::optional<ClockShift> readClockShift(ByteView content);

/// When an entry was made as shown to people.
struct ShownTime {
    Instant time{};
    std::chrono::sys_days day{};
    bool moved = false;    ///< by a shift
    bool doubtful = false; ///< as flagged by its writer, and not moved since

    bool operator==(const ShownTime&) const = default;
};

/// Own reading and typed day of `entry`, moved by the shift of highest rank among `shifts` (the heads of the chain's register) that
/// covers its place in its chain.
[[nodiscard]] ShownTime shownTime(const Held& entry, const std::vector<Held>& shifts);

}
