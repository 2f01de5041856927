// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace steelyard::vault {

/// Mistakes that a library for tests alone can be told to make, to show that the tests notice each of them.
enum class Fault : std::uint8_t {
    None,
    NothingForced,      ///< the engine forces nothing to the disk
    WriteAheadLog,      ///< the engine keeps a log beside the database, forced now and then
    JournalDeleted,     ///< the engine's journal is removed instead of emptied
    ToldTooEarly,       ///< reported as kept one batch before it is on the disk
    HalfBatches,        ///< each entry by itself, whatever becomes of its batch
    RowsReplaced,       ///< an entry takes the place of whatever stands there
    KeyFileFirst,       ///< a vault has its key file before its database
    DoubtNotCleared,    ///< after an error of the storage the database is not asked what it holds
    ReserveHeldBack,    ///< a full disk does not cost the reserve
    WitnessUnread,      ///< an older database is taken for the latest
    MarksForgotten,     ///< what replaces an entry that is not there yet is forgotten
    DraftsUncommitted,  ///< a draft is reported as saved and never gets to the disk
};

#ifdef STEELYARD_PLANTED_FAULTS
/// The mistake being made now.
inline Fault plantedFault = Fault::None;

/// Whether this mistake is to be made.
[[nodiscard]] inline bool planted(Fault fault)
{
    return plantedFault == fault;
}
#else
/// Never, in the library that the app is built from.
[[nodiscard]] constexpr bool planted(Fault)
{
    return false;
}
#endif

}
