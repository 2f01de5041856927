// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/registers.h"
#include "core/seal/keyfile.h"
#include "core/vault/refusal.h"

#include <map>

namespace steelyard::vault {

using journal::ByteBuffer;
using journal::ByteView;

/// An entry that no other of its register replaces. Of several heads the one of the highest rank wins; the others wait for review.
struct Head {
    journal::Held held;
    bool winner = false;

    bool operator==(const Head&) const = default;
};

/// Which part of the vault to read: the records of these kinds, and what was put right or removed about them.
struct Wanted {
    std::vector<journal::RecordKind> kinds;
};

/// What holds now of the kinds that were asked for.
struct Snapshot {
    std::vector<Head> heads;              ///< of all registers but those of added records, in the order of their keys, the winner first
    std::vector<journal::Held> added;     ///< records added, by kind, athlete and day, each head of its register
    std::vector<RecordId> erasedAthletes; ///< for ever
    std::uint64_t entryCount = 0;         ///< in the whole journal
};

/// A slice of one person's record, or of everybody's.
struct Query {
    std::vector<journal::RecordKind> kinds;
    std::optional<RecordId> athlete;
    std::chrono::sys_days firstDay = std::chrono::sys_days::min();
    std::chrono::sys_days lastDay = std::chrono::sys_days::max();
};

/// An added record with what was put right or removed about it since.
struct Record {
    journal::Held added;
    std::vector<Head> since;
};

/// How the witness file, which remembers the ends of all chains, agrees with the database.
enum class WitnessState {
    Agrees,
    DatabaseAhead,  ///< the app was ended between keeping and witnessing: nothing is wrong
    DatabaseBehind, ///< entries that had been kept are missing: an older database was put back
    Missing,        ///< no witness can be read
};

/// What opening found out besides; each is worth a sentence where it is not as usual.
struct Findings {
    bool keyFileHealed = false;            ///< one copy of the key file was damaged and has been written anew
    WitnessState witness = WitnessState::Agrees;
    std::uint64_t entriesMissingCount = 0; ///< against the witness
    bool movedHere = false;                ///< the folder came from another install: from here on it writes a chain of its own
    bool folderSynced = false;             ///< something may carry the folder to other machines: move the vault out of it
    bool checkDue = false;                 ///< the whole journal was last checked a week ago or longer: VaultAccess::checkAll
    bool viewsRebuilt = false;             ///< the tables were made anew from the journal
    bool reserveMissing = false;           ///< no room for the reserve: the disk is as good as full
};

/// A half-typed form: its key and its bytes, as they were saved.
using Drafts = std::map<std::string, ByteBuffer>;

/// An open vault.
struct Opened {
    Snapshot snapshot;
    Drafts drafts;
    Findings findings;
    seal::VaultNature nature = seal::VaultNature::Own;
};

/// What was kept, on the disk when this is reported.
struct Kept {
    std::vector<journal::Held> entries; ///< one for each draft, in their order
    bool reserveUsed = false;           ///< the disk is full, and the reserve has been given up for these entries
};

}
