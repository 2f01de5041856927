// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/outcome.h"

#include <cstdint>

namespace steelyard::vault {

/// Why the vault refused, and what to do next. Codes are fixed; sentences for people are made from them elsewhere.
/// Whatever the code, what had been reported as kept stands.
enum class Code {
    WrongSecretTypeAgain,            ///< the key file is whole, and this secret does not open it
    NoSuchWayInUseAnother,           ///< this vault has no such way in: use the passphrase or the recovery code
    SecretUnfitTypeAgain,            ///< the secret is too long, or the recovery code is not complete or has a mistake in it
    KeyFileMissingFindFolder,        ///< a database without a key file: look for the folder that the key file is in
    KeyFileDamagedRestoreBackup,     ///< neither copy of the key file is whole: no secret was tried
    KeyFileForgedRestoreBackup,      ///< the key file was not written by one who knew the vault key, or has been weakened
    KeyFilesOfTwoVaultsSortOut,      ///< the two copies of the key file belong to different vaults
    NewerVersionUpdateApp,           ///< a newer version of the app wrote key file or database: untouched
    MemoryRefusedCloseOthers,        ///< no memory for keys or for stretching a secret: close other programs, then try again
    NoVaultHereCreateOne,            ///< nothing of a vault is in the folder
    VaultThereUnlockIt,              ///< a vault, or what is left of one, is in the folder already: nothing was created
    SyncedFolderChooseOther,         ///< the folder is carried to other machines as it stands: choose one on this device alone
    SecondInstanceCloseOther,        ///< another running copy of the app has this vault open
    DatabaseMissingRestoreBackup,    ///< the key file names a database that is not there
    DatabaseEmptyRestoreBackup,      ///< the database has no bytes at all: the storage lost them, it is not a new vault
    DatabaseTornRestoreBackup,       ///< the database ends within a page, and no journal is there to put it right
    DatabasePlainRefuse,             ///< the database is not encrypted: it is none of ours
    DatabaseForeignRefuse,           ///< it opens with the key, and was not written by this app
    PageDamagedRestoreBackup,        ///< a page does not agree with its checksum, or tables do not agree with one another
    MigrationStoppedOldVaultStands,  ///< a change of the layout did not go through: the vault stands as it was, use the older app
    EngineUnfitReinstall,            ///< the database engine does not do what was asked of it: install the app anew
    FolderReadOnlyChooseOther,       ///< nothing can be written into the folder
    DiskFullFreeSpace,               ///< not kept: sizeNeeded and sizeFree say how much room is wanting
    WriteFailedTryAgain,             ///< not kept: the storage gave an error while writing
    FileUnreadableTryAgain,          ///< the storage gave an error while reading
    LockedUnlockFirst,               ///< the vault is not open
    OpenAlreadyLockFirst,            ///< a vault is open in this process
    DraftUnfitShorten,               ///< an entry does not fit into the journal's bounds: nothing of the batch was kept
    AthleteErasedStartAnew,          ///< the athlete has been erased: nothing more is written about that one
    SampleMarkMissingLeaveIt,        ///< not a sample vault: it is not taken away
    StoppedTryAgain,                 ///< reading was broken off by something more urgent
};

/// A code with what its sentence tells besides; a size or count of zero is not known.
struct Refusal {
    Code code = Code::WriteFailedTryAgain;
    std::uint64_t sizeNeeded = 0;  ///< bytes
    std::uint64_t sizeFree = 0;    ///< bytes
    std::uint64_t entryCount = 0;  ///< entries that cannot be read
    bool operator==(const Refusal&) const = default;
};

using seal::Done;

/// A value that may be move-only, or why there is none.
template <typename T>
class [[nodiscard]] Outcome : public seal::Outcome<T, Refusal> {
public:
    using seal::Outcome<T, Refusal>::Outcome;
    Outcome(Code code) : seal::Outcome<T, Refusal>(Refusal{code}) {}

    [[nodiscard]] Refusal refusal() const { return seal::Outcome<T, Refusal>::code(); }
    [[nodiscard]] Code code() const { return refusal().code; }
};

/// What a refusal about keys is called here.
[[nodiscard]] Code codeOf(seal::Code code);

}
