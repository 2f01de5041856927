// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vault/faults.h"
#include "core/vault/opening.h"
#include "core/vault/vault.h"

#include <cerrno>
#include <string>
#include <unistd.h>

namespace steelyard::vault {

namespace {

constexpr std::array keyFiles{"vault.key", "vault.key.2", "vault.key.part", "vault.key.2.part"};

std::filesystem::path unfinished(std::filesystem::path database)
{
    database += ".part";
    return database;
}

/// An unfinished database, which has no key file, is worth nothing to anybody.
void removeUnfinished(const std::filesystem::path& database)
{
    for (const char* const tail : {"", "-journal"}) {
        std::filesystem::path file = unfinished(database);
        file += tail;
        ::unlink(file.c_str());
    }
}

/// Whether anything is there that the key file of a vault would belong to.
bool holdsDatabase(const std::filesystem::path& folder)
{
    std::error_code trouble;
    std::filesystem::directory_iterator entries(folder, trouble);
    for (; !trouble && entries != std::filesystem::directory_iterator(); entries.increment(trouble)) {
        const std::filesystem::path name = entries->path().filename();
        if (name.extension() == ".db" && name.string().starts_with("vault-"))
            return true;
    }
    return false;
}

Outcome<Done> giveName(const std::filesystem::path& database)
{
    if (::rename(unfinished(database).c_str(), database.c_str()) != 0)
        return codeOf(seal::codeOfWriteError(errno));
    return seal::forceFolder(database.parent_path()) ? Outcome<Done>(Done{}) : Code::WriteFailedTryAgain;
}

/// A creation that was ended between key file and name is finished here: the database was whole before the key file was written.
Outcome<Done> finishCreation(const std::filesystem::path& database)
{
    const bool there = ::access(database.c_str(), F_OK) == 0;
    const bool waiting = ::access(unfinished(database).c_str(), F_OK) == 0;
    return !there && waiting ? giveName(database) : Done{};
}

Outcome<Done> makeDatabase(const std::filesystem::path& database, const seal::Keyring& ring, const InstallMark& install,
    const seal::RandomSource& random)
{
    const auto keyText = ring.databaseKeyText();
    if (!keyText)
        return codeOf(keyText.code());
    Outcome<std::unique_ptr<Database>> made = createSealed(unfinished(database), *keyText);
    if (!made)
        return made.refusal();
    Outcome<std::unique_ptr<Store>> store =
        Store::open(*std::move(made), journal::OriginId::of(ring.identity().signing().publicKey()));
    if (!store)
        return store.refusal();
    InstallMark::Bytes mark{};
    random(mark);
    if (const Outcome<Done> begun = (*store)->beginIncarnation(mark, random); !begun)
        return begun;
    return install.write(mark);
}

}

Look Vault::look(const std::filesystem::path& folder)
{
    const auto copies = seal::KeyFolder(folder).read();
    if (!copies && copies.code() == seal::Code::KeyFileMissingFindFolder)
        return holdsDatabase(folder) ? Look{Standing::Trouble, Refusal{Code::KeyFileMissingFindFolder}} : Look{};
    if (!copies)
        return {Standing::Trouble, Refusal{codeOf(copies.code())}};
    const seal::VaultNature nature = seal::natureOf(copies->candidates.front().vaultId);
    if (const auto lock = takeLock(folder); !lock)
        return {Standing::Trouble, lock.refusal(), nature};
    const std::filesystem::path database = databaseFile(folder, copies->candidates.front());
    if (::access(unfinished(database).c_str(), F_OK) == 0)
        return {Standing::Locked, std::nullopt, nature};
    if (const Outcome<Done> fit = checkFile(database); !fit)
        return {Standing::Trouble, fit.refusal(), nature};
    return {Standing::Locked, std::nullopt, nature};
}

Outcome<std::unique_ptr<Vault>> Vault::create(
    const std::filesystem::path& folder, seal::Keyring ring, const Surroundings& surroundings)
{
    if (looksSynced(folder))
        return Code::SyncedFolderChooseOther;
    std::error_code trouble;
    std::filesystem::create_directories(folder, trouble);
    if (trouble)
        return codeOf(seal::codeOfWriteError(trouble.value()));
    Outcome<seal::Descriptor> lock = takeLock(folder);
    if (!lock)
        return lock.refusal();
    const auto copies = seal::KeyFolder(folder).read();
    if (copies || copies.code() != seal::Code::KeyFileMissingFindFolder || holdsDatabase(folder))
        return Code::VaultThereUnlockIt;

    const std::filesystem::path database = databaseFile(folder, ring.file());
    removeUnfinished(database);
    const InstallMark install(surroundings.installFolder, ring.file().vaultId);
    if (planted(Fault::KeyFileFirst))
        (void)seal::KeyFolder(folder).write(ring.file());
    Outcome<Done> made = makeDatabase(database, ring, install, surroundings.random);
    if (made)
        if (const auto written = seal::KeyFolder(folder).write(ring.file()); !written)
            made = codeOf(written.code());
    if (made)
        made = giveName(database);
    if (!made) {
        for (const char* const name : keyFiles)
            ::unlink((folder / name).c_str());
        removeUnfinished(database);
        ::unlink(database.c_str());
        return made.refusal();
    }
    return open(folder, *std::move(lock), std::move(ring), surroundings);
}

Outcome<std::unique_ptr<Vault>> Vault::unlock(
    const std::filesystem::path& folder, const seal::Opener& opener, const Surroundings& surroundings)
{
    const auto copies = seal::KeyFolder(folder).read();
    if (!copies && copies.code() == seal::Code::KeyFileMissingFindFolder && !holdsDatabase(folder))
        return Code::NoVaultHereCreateOne;
    if (!copies)
        return codeOf(copies.code());
    Outcome<seal::Descriptor> lock = takeLock(folder);
    if (!lock)
        return lock.refusal();
    auto ring = seal::openNewest(*copies, opener);
    if (!ring)
        return codeOf(ring.code());
    if (const Outcome<Done> finished = finishCreation(databaseFile(folder, ring->file())); !finished)
        return finished.refusal();
    return open(folder, *std::move(lock), *std::move(ring), surroundings);
}

Outcome<Done> Vault::removeSample(const std::filesystem::path& folder, const Surroundings& surroundings)
{
    const auto copies = seal::KeyFolder(folder).read();
    if (!copies)
        return codeOf(copies.code());
    const seal::ByteArray<16>& vaultId = copies->candidates.front().vaultId;
    if (seal::natureOf(vaultId) != seal::VaultNature::Sample)
        return Code::SampleMarkMissingLeaveIt;
    const Outcome<seal::Descriptor> lock = takeLock(folder);
    if (!lock)
        return lock.refusal();
    std::filesystem::path gone = folder;
    gone += ".gone";
    std::error_code trouble;
    std::filesystem::remove_all(gone, trouble);
    if (!trouble)
        std::filesystem::rename(folder, gone, trouble);
    if (!trouble)
        std::filesystem::remove_all(gone, trouble);
    if (trouble)
        return codeOf(seal::codeOfWriteError(trouble.value()));
    InstallMark(surroundings.installFolder, vaultId).forget();
    return Done{};
}

}
