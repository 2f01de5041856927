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

/// A map: 1 incarnation · 2 first and 3 last sequence number · 4 milliseconds · 5 days. Milliseconds reach to 2^60 either way.
[[nodiscard]] ByteBuffer writeClockShift(const ClockShift& shift);

/// Nothing where it is none, or ends before it begins.
[[nodiscard]] std::optional<ClockShift> readClockShift(ByteView content);

}
