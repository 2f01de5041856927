// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/keyfolder.h"
#include "core/vault/snapshot.h"

#include <memory>

namespace steelyard::vault {

/// Hands a piece of work to the thread that results are wanted on; tests give a queue.
using Executor = std::function<void(std::function<void()>)>;

/// What a vault gets from outside; the app gives the system's, tests their own. Clock and randomness are asked on the vault's own thread.
struct Surroundings {
    Executor post;
    std::function<journal::Instant()> now;
    seal::RandomSource random;
    /// This install's own folder, never inside a vault: remembers which vaults were last written from here.
    std::filesystem::path installFolder;
};

/// How a folder stands before any secret is asked for.
enum class Standing {
    None,    ///< nothing of a vault there: one can be created
    Locked,  ///< a vault to be unlocked
    Trouble, ///< neither: the refusal says why
};

/// The standing of a folder, with the reason where it is in trouble, and what the vault there is for.
struct Look {
    Standing standing = Standing::None;
    std::optional<Refusal> trouble;
    seal::VaultNature nature = seal::VaultNature::Own;
};

/// What a new vault is made with. The passphrase has at least 12 characters, in NFC; the recovery code has been typed again.
struct NewVault {
    static constexpr std::size_t fewestCharacterCount = 12;

    seal::SecretText passphrase;
    seal::RecoveryCode recovery;
    /// Measured when not given; only tests and benches give one. A sample, whose passphrase is no secret, takes the least.
    std::optional<seal::StretchCost> cost;
    Wanted wanted;
    seal::VaultNature nature = seal::VaultNature::Own;
};

/// A way to get the keys out of a key file; what a person knows, stretched on the vault's own thread.
[[nodiscard]] seal::Opener byPassphrase(seal::SecretText passphrase);
[[nodiscard]] seal::Opener byRecoveryCode(seal::RecoveryCode code);

template <typename T>
using WhenDone = std::function<void(Outcome<T>)>;

/// Which of the waiting work goes first. Keeping goes before both.
enum class Urgency { Page, Background };

/// The way to a vault for everybody outside this folder: every call returns at once, is done on the one thread that owns the one
/// connection, and reports through the executor. What is asked first is kept first; reading is done in slices, between which
/// keeping gets its turn. The destructor finishes what is to be kept, drops what is to be read, and ends the thread.
class VaultAccess {
public:
    explicit VaultAccess(Surroundings surroundings);
    VaultAccess(const VaultAccess&) = delete;
    VaultAccess& operator=(const VaultAccess&) = delete;
    ~VaultAccess();

    void look(std::filesystem::path folder, std::function<void(Look)> done);
    /// Makes the folder where it is not there. Refused, nothing is left that stands in the way of another try.
    void create(std::filesystem::path folder, NewVault how, WhenDone<Opened> done);
    void unlock(std::filesystem::path folder, seal::Opener opener, Wanted wanted, WhenDone<Opened> done);
    /// Takes a sample vault away, folder and all, while none is open. Any other is left as it is: SampleMarkMissingLeaveIt.
    void removeSample(std::filesystem::path folder, WhenDone<Done> done);
    /// All of them or none; reported once they are on the disk.
    void keep(std::vector<journal::Draft> drafts, WhenDone<Kept> done);
    /// Nothing in place of bytes removes the draft. Encrypted, outside the journal, one for each key.
    void saveDraft(std::string key, std::optional<ByteBuffer> bytes, WhenDone<Done> done);
    void read(Query query, Urgency urgency, WhenDone<std::vector<Record>> done);
    /// Every entry whole and every chain unbroken, from its beginning: for a quiet hour, in slices behind everything else.
    void checkAll(WhenDone<Done> done);
    /// Waits for everything kept and saved before; then the database is closed and the keys are wiped. Locking twice is no fault.
    void lock(WhenDone<Done> done);

private:
    class Worker;
    std::unique_ptr<Worker> m_worker;
};

}
