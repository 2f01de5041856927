// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/keyfile.h"
#include "core/seal/storage.h"
#include "core/season/recordid.h"
#include "core/vault/refusal.h"

namespace steelyard::vault {

/// Whether a folder looks as if something carried its files to other machines as they stand: a word of its path begins or ends with
/// "sync" or "cloud", or a folder on the way holds the marker of such a program, or it lies on a file system of the network.
/// A vault there would come apart, since its files belong together. Marks only: silence proves nothing.
[[nodiscard]] bool looksSynced(const std::filesystem::path& folder);

/// Held while a vault is open: the file `lock`, locked by the system, which lets go when the process ends in whatever way.
[[nodiscard]] Outcome<seal::Descriptor> takeLock(const std::filesystem::path& folder);

/// Two MiB that are given up when the disk is full, so that what is being kept still fits.
class Reserve {
public:
    static constexpr std::size_t size = std::size_t{2} << 20;

    explicit Reserve(const std::filesystem::path& folder) : m_file(folder / "reserve.bin") {}
    /// False where there is no room for it.
    [[nodiscard]] bool setAside() const;
    /// False where there was none.
    [[nodiscard]] bool giveUp() const;

private:
    std::filesystem::path m_file;
};

/// Bytes that the file system still has for us; 0 when it does not say.
[[nodiscard]] std::uint64_t freeSize(const std::filesystem::path& folder);

/// Why the folder takes no more, found out by writing something into it and removing it: the engine does not always say. Where it
/// takes it, the code is WriteFailedTryAgain.
[[nodiscard]] Code whyNotWritten(const std::filesystem::path& folder);

/// `vault-N.db` in the folder.
[[nodiscard]] std::filesystem::path databaseFile(const std::filesystem::path& folder, const seal::KeyFile& keys);

/// Sixteen random bytes that this install and the database both know: where they differ, one of the two came from elsewhere.
class InstallMark {
public:
    using Bytes = seal::ByteArray<16>;

    InstallMark(const std::filesystem::path& installFolder, const seal::ByteArray<16>& vaultId);
    /// Nothing where there is none, or it cannot be read.
    [[nodiscard]] std::optional<Bytes> read() const;
    [[nodiscard]] Outcome<Done> write(const Bytes& bytes) const;
    /// Of a vault that is no more.
    void forget() const;

private:
    std::filesystem::path m_file;
};

}
