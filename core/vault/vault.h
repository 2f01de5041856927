// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vault/access.h"
#include "core/vault/folder.h"
#include "core/vault/store.h"
#include "core/vault/witness.h"

namespace steelyard::vault {

/// An open vault with all its files, synchronous: for the one thread that owns it. Everybody else goes through VaultAccess.
class Vault {
public:
    [[nodiscard]] static Look look(const std::filesystem::path& folder);
    /// The database is made whole under another name before there is a key file, and gets its name last; so at any moment there is
    /// either nothing, or a vault that unlock can finish.
    [[nodiscard]] static Outcome<std::unique_ptr<Vault>> create(
        const std::filesystem::path& folder, seal::Keyring ring, const Surroundings& surroundings);
    [[nodiscard]] static Outcome<std::unique_ptr<Vault>> unlock(
        const std::filesystem::path& folder, const seal::Opener& opener, const Surroundings& surroundings);

    /// The folder gets another name first, so that nothing of a vault is left under its own when this is broken off; what this
    /// install remembers of it goes as well.
    [[nodiscard]] static Outcome<Done> removeSample(const std::filesystem::path& folder, const Surroundings& surroundings);

    Vault(const Vault&) = delete;
    Vault& operator=(const Vault&) = delete;
    ~Vault() { witness(); }

    [[nodiscard]] Outcome<Opened> opened(const Wanted& wanted);
    /// After an error of the storage the database is opened anew, which tells what is there; a full disk costs the reserve first.
    [[nodiscard]] Outcome<Kept> keep(const std::vector<journal::Draft>& drafts);
    /// Remembers in the witness what has been kept; may come a little later, and comes at the latest when the vault is closed.
    /// A witness that cannot be written is no fault: the next one makes it good.
    void witness();
    [[nodiscard]] Outcome<Done> saveDraft(const std::string& key, const std::optional<ByteBuffer>& bytes);
    /// Reads on from where a slice ended, records of one kind after those of another.
    struct Reading {
        Query query;
        std::size_t kindIndex = 0;
        Views::Cursor behind;
        std::vector<Record> records;
    };
    /// True when all has been read.
    [[nodiscard]] Outcome<bool> readOn(Reading& reading, std::int64_t mostCount);
    /// A slice of the check of everything; what is damaged is counted.
    [[nodiscard]] Outcome<bool> checkOn(Store::Checking& checking, std::int64_t mostCount);
    [[nodiscard]] Store& store() { return *m_store; }

private:
    Vault(std::filesystem::path folder, seal::Descriptor lock, seal::Keyring ring, seal::SubKey witnessKey, const Surroundings& surroundings);
    [[nodiscard]] static Outcome<std::unique_ptr<Vault>> open(
        const std::filesystem::path& folder, seal::Descriptor lock, seal::Keyring ring, const Surroundings& surroundings);
    [[nodiscard]] Outcome<Done> connect();
    [[nodiscard]] Refusal withCounts(Refusal refusal);
    void compareWitness();
    [[nodiscard]] Outcome<Done> settleIncarnation();
    [[nodiscard]] Outcome<Done> ready();
    [[nodiscard]] Outcome<Done> keepOnce(const std::vector<journal::Draft>& drafts, std::vector<journal::Held>& tried);
    /// The same, and in case of doubt what the database says when it is opened anew.
    [[nodiscard]] Outcome<Done> keepSurely(const std::vector<journal::Draft>& drafts, std::vector<journal::Held>& tried);
    /// Closes and opens the database after an error of the storage; whether it then holds the whole batch.
    [[nodiscard]] bool reopenedWith(const std::vector<journal::Held>& tried, std::size_t draftCount);

    std::filesystem::path m_folder;
    seal::Descriptor m_lock;
    seal::Keyring m_ring;
    WitnessFiles m_witness;
    Reserve m_reserve;
    InstallMark m_install;
    const Surroundings& m_surroundings;
    std::unique_ptr<Store> m_store; ///< none after an error from which the database could not be opened again
    Findings m_findings;
    bool m_incarnationDue = false;
    bool m_witnessDue = false;
};

}
