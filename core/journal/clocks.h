// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <compare>
#include <cstdint>
#include <optional>
#include <tuple>

namespace steelyard::journal {

/// A point in time as a device's clock says it, in UTC, which may be years off.
using Instant = std::chrono::sys_time<std::chrono::milliseconds>;

/// Times of entries lie within 2^60 milliseconds (36 million years) of 1970, so that sums of them stay numbers.
inline constexpr Instant latestInstant{std::chrono::milliseconds(INT64_C(1) << 60)};
inline constexpr Instant earliestInstant{-std::chrono::milliseconds(INT64_C(1) << 60)};
/// Days of entries, and how far they are moved, lie within ten million (27,000 years) of 1970, which a calendar can still show.
inline constexpr std::chrono::days furthestDay{10'000'000};

/// A hybrid logical clock (Kulkarni, Demirbas, Madappa, Avva and Leone: Logical Physical Clocks, 2014): the highest wall clock that
/// the writer had seen, counted on where that stood still. Whatever was written in the knowledge of an entry has a higher one.
struct Clock {
    Instant wall{};
    std::uint32_t count = 0;

    constexpr bool operator==(const Clock&) const = default;
    constexpr auto operator<=>(const Clock& other) const { return std::tie(wall, count) <=> std::tie(other.wall, other.count); }
};

/// What is written into an entry about its time.
struct Stamp {
    Clock clock;
    bool doubtful = false;             ///< the writer's own clock did not fit what it had seen
    std::optional<Instant> reading;    ///< the writer's own clock, where that is not the wall of `clock`

    bool operator==(const Stamp&) const = default;
};

/// An own clock further behind the last one seen is doubtful. Ours: two devices set by hand differ by less.
inline constexpr std::chrono::milliseconds furthestBehind = std::chrono::minutes(1);
/// An own clock further ahead of the last one seen is doubtful. Ours: a squad pauses for weeks, not for months.
inline constexpr std::chrono::milliseconds furthestAhead = std::chrono::days(30);

/// Stamps entries of one device. What it sees is taken as it is, years ahead or behind: a stamp that was clamped, refused or
/// repaired on receipt would order entries differently on every device.
class Stamper {
public:
    Stamper() = default;
    /// Goes on where the highest clock in the vault left off.
    explicit Stamper(const std::optional<Clock>& highest) : m_highest(highest) {}

    /// Called for every entry that arrives.
    void see(const Clock& clock);
    /// Higher than all that were seen or given before.
    [[nodiscard]] Stamp stamp(Instant now);
    [[nodiscard]] const std::optional<Clock>& highest() const { return m_highest; }

private:
    std::optional<Clock> m_highest;
};

}
