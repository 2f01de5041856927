// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/clocks.h"

namespace steelyard::journal {

/// Mistakes that a library for tests alone can be told to make, to show that the tests notice each of them.
enum class Fault : std::uint8_t {
    None,
    ClampedClocks,       ///< a received stamp far ahead of all seen is brought down
    RefusedClocks,       ///< an entry with such a stamp is left out
    SeenClocksIgnored,   ///< an own stamp takes no account of those that arrived
    CountIgnored,        ///< of equal wall clocks the count does not matter
    TiesByOriginAlone,   ///< of equal clocks of one device whatever came first wins
    ArrivalWins,         ///< the latest to arrive wins
    LosersDropped,       ///< one head is kept, the others go
    EverythingReplaced,  ///< a new value takes off every head, seen by its writer or not
    MarksIgnored,        ///< what replaces an entry that is not there yet is forgotten
    MarksExpire,         ///< marks go once the register has moved on by 90 days
    EditRevives,         ///< a new value of a field brings a removed record back
    TagRemovedByName,    ///< a tag taken away takes adding entries along that its writer had not seen
    LateBodiesComeBack,  ///< what arrives after an erasure is shown again
    ErasureLeavesHeads,  ///< an erasure stops what comes, and leaves what is there
    ErasuresNotRepeated, ///< a device that is told of an erasure waits for the entry of it
    RepeatsCount,        ///< an entry that comes twice stands there twice
    VectorsBySequence,   ///< version vectors compare numbers and not ids
    ForkOverwritten,     ///< of two entries at one place in a chain the first stays alone
    GapsAccepted,        ///< an entry is taken without the one before it
    CommitmentUnchecked, ///< a body is taken that the header was not made for
};

#ifdef STEELYARD_PLANTED_FAULTS
/// The mistake being made now.
inline Fault plantedFault = Fault::None;
/// What the clock of the device says that makes it.
inline Instant plantedNow{};

/// Whether this mistake is to be made.
[[nodiscard]] inline bool planted(Fault fault)
{
    return plantedFault == fault;
}
#else
inline constexpr Instant plantedNow{};
/// Never, in the library that the app is built from.
[[nodiscard]] constexpr bool planted(Fault)
{
    return false;
}
#endif

}
