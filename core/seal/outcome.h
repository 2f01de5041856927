// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <utility>
#include <variant>

namespace steelyard::seal {

/// Why something about keys was refused, and what to do next. Codes are fixed; sentences for people are made from them elsewhere.
enum class Code {
    MemoryRefusedCloseOthers,      ///< no protected memory for a secret: close other programs, then try again
    StretchRefusedCloseOthers,     ///< no memory to stretch a secret into a key: close other programs, then try again
    StretchTooCostlyRestoreBackup, ///< a key file asks for more memory or passes than any vault of ours: do not spend them
    StretchTooWeakRestoreBackup,   ///< a key file asks for less than the floor: somebody has weakened it
    TextTooLongShorten,            ///< longer than a passphrase may be; nothing was cut off
    WrongSecretTypeAgain,          ///< the key file is whole, and this secret does not open it
    NoSuchSlotUseAnother,          ///< this vault has no such way in: use the passphrase or the recovery code
    RecoveryCodeTypeOn,            ///< the recovery code is not complete yet
    RecoveryCodeGroupTypeAgain,    ///< a group of the recovery code does not agree with its check symbol
    KeyFileMissingFindFolder,      ///< neither copy of the key file is there: this is not the folder of a vault
    KeyFileDamagedRestoreBackup,   ///< no copy of the key file is whole: no secret was tried on it
    KeyFileForgedRestoreBackup,    ///< whole and opened, yet not written by one who knew the vault key
    KeyFileNewerUpdateApp,         ///< written by a newer version of the app: untouched
    KeyFilesOfTwoVaultsSortOut,    ///< the two copies belong to different vaults: one was put there by mistake
    SignatureWrongRefuse,          ///< the signature does not belong to this message and key
    SealNotForUsRefuse,            ///< the sealed bytes are damaged, or were sealed for another key
    FileUnreadableTryAgain,        ///< the storage gave an error while reading
    FolderReadOnlyChooseOther,     ///< nothing can be written into the folder
    DiskFullFreeSpace,             ///< no room to write; the old file stands
    WriteFailedTryAgain,           ///< the storage gave an error while writing; the old file stands
};

/// What is returned where there is nothing to return but success.
struct Done {};

/// A value that may be move-only, or the code why there is none. Reading the wrong side is a programming fault and ends the process.
/// Other folders give codes of their own.
template <typename T, typename Why = Code>
class [[nodiscard]] Outcome {
public:
    Outcome(T value) : m_state(std::in_place_index<0>, std::move(value)) {}
    Outcome(Why code) : m_state(std::in_place_index<1>, code) {}

    [[nodiscard]] bool ok() const { return m_state.index() == 0; }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] const T& operator*() const& { return *std::get_if<0>(&m_state); }
    [[nodiscard]] T&& operator*() && { return std::move(*std::get_if<0>(&m_state)); }
    [[nodiscard]] T& operator*() & { return *std::get_if<0>(&m_state); }
    [[nodiscard]] const T* operator->() const { return std::get_if<0>(&m_state); }
    [[nodiscard]] T* operator->() { return std::get_if<0>(&m_state); }
    [[nodiscard]] Why code() const { return *std::get_if<1>(&m_state); }

private:
    std::variant<T, Why> m_state;
};

}
