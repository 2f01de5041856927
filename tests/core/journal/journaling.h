// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/entry.h"
#include "tests/core/seal/sealing.h"

namespace journaling {

using namespace steelyard;
using namespace steelyard::journal;
using sealing::countingRandom;
using sealing::fromHex;
using sealing::toHex;

inline RecordId record(unsigned value)
{
    RecordId id;
    id.bytes.fill(static_cast<std::byte>(value));
    return id;
}

inline EntryId entryId(unsigned value)
{
    EntryId id;
    id.bytes.fill(static_cast<std::byte>(value));
    return id;
}

inline OriginId origin(unsigned value)
{
    OriginId id;
    id.bytes.fill(static_cast<std::byte>(value));
    return id;
}

inline Instant at(std::int64_t milliseconds)
{
    return Instant{std::chrono::milliseconds(milliseconds)};
}

inline std::chrono::sys_days day(int days)
{
    return std::chrono::sys_days(std::chrono::days(days));
}

/// The codes as numbers, so that a failed comparison prints them.
template <typename T>
int codeOf(const Outcome<T>& outcome)
{
    return outcome ? -1 : static_cast<int>(outcome.code());
}

inline int number(Code code)
{
    return static_cast<int>(code);
}

inline constexpr int accepted = -1;

}
