// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/outcome.h"

#include <cstdint>
#include <utility>
#include <variant>

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

/// A value that may be move-only, or why there is none. Reading the wrong side is a programming fault and ends the process.
template <typename T>
class [[nodiscard]] Outcome {
public:
    Outcome(T value) : m_state(std::in_place_index<0>, std::move(value)) {}
    Outcome(Refusal refusal) : m_state(std::in_place_index<1>, refusal) {}
    Outcome(Code code) : m_state(std::in_place_index<1>, Refusal{code}) {}

    [[nodiscard]] bool ok() const { return m_state.index() == 0; }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] const T& operator*() const& { return *std::get_if<0>(&m_state); }
    [[nodiscard]] T&& operator*() && { return std::move(*std::get_if<0>(&m_state)); }
    [[nodiscard]] T& operator*() & { return *std::get_if<0>(&m_state); }
    [[nodiscard]] const T* operator->() const { return std::get_if<0>(&m_state); }
    [[nodiscard]] T* operator->() { return std::get_if<0>(&m_state); }
    [[nodiscard]] const Refusal& refusal() const { return *std::get_if<1>(&m_state); }
    [[nodiscard]] Code code() const { return refusal().code; }

private:
    std::variant<T, Refusal> m_state;
};

/// What a refusal about keys is called here.
[[nodiscard]] Code codeOf(seal::Code code);

}
