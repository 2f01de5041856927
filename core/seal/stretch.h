// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/keys.h"

#include <chrono>

namespace steelyard::seal {

/// An amount of memory in units of 1024 bytes, the unit in which Argon2 counts.
struct Kibibytes {
    std::uint32_t count = 0;
    bool operator==(const Kibibytes&) const = default;
};

/// `count` times 1024 KiB.
[[nodiscard]] constexpr Kibibytes mebibytes(std::uint32_t count)
{
    return {count * 1024};
}

/// What guessing a secret costs: memory to fill, and how often.
struct StretchCost {
    Kibibytes memory;
    std::uint32_t passCount = 0;
    bool operator==(const StretchCost&) const = default;
};

/// Floor: RFC 9106, section 4, second recommended option (64 MiB, 3 passes; lanes are 1 instead of 4, as the library has one).
inline constexpr StretchCost weakestStretch{mebibytes(64), 3};
/// The most memory that a new vault takes: more is a hard ask on a phone.
inline constexpr Kibibytes mostMemoryChosen = mebibytes(256);
/// The most that is spent on behalf of a file, which may have been made to exhaust us.
inline constexpr StretchCost costliestStretch{mebibytes(1024), 20};

/// Whether a cost lies within floor and ceiling.
[[nodiscard]] Outcome<Done> checkCost(const StretchCost& cost);

/// Argon2id version 1.3 with one lane (RFC 9106) from a secret of any length to a key of 32 bytes.
/// A cost outside the bounds is refused before any work; memory that is not granted has a code of its own.
[[nodiscard]] Outcome<WrappingKey> stretch(ByteView secret, const Salt& salt, const StretchCost& cost);

/// How long one stretch at a cost takes here.
using StretchTrial = std::function<Outcome<std::chrono::nanoseconds>(const StretchCost&)>;

/// A trial that stretches a public text between two looks at the given clock.
[[nodiscard]] StretchTrial timedTrial(std::function<std::chrono::nanoseconds()> clock);

/// The cost for a new vault: memory is doubled up to 256 MiB, then passes are added up to 20, until a trial takes 0.5 to 1.0 s.
/// Never below the floor, however slow the machine; a step that takes longer than 1.0 s, or whose memory is not granted, is not
/// taken. Refused only where even the floor cannot be had.
[[nodiscard]] Outcome<StretchCost> chooseCost(const StretchTrial& trial);

}
