// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vault/opening.h"

#include "core/seal/hash.h"
#include "core/seal/storage.h"
#include "core/vault/faults.h"

#include <array>
#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace steelyard::vault {

namespace {

constexpr std::int64_t pageSize = 4096;
constexpr std::string_view plainHead("SQLite format 3\0", 16);

/// A setting, and what the engine answers when it holds.
struct Setting {
    std::string_view order;
    std::string_view question;
    std::string_view expected;
};

constexpr std::array settings{
    Setting{"PRAGMA journal_mode=TRUNCATE", "PRAGMA journal_mode", "truncate"},
    Setting{"PRAGMA synchronous=FULL", "PRAGMA synchronous", "2"},
    Setting{"PRAGMA secure_delete=ON", "PRAGMA secure_delete", "1"},
    Setting{"PRAGMA temp_store=MEMORY", "PRAGMA temp_store", "2"},
    Setting{"PRAGMA mmap_size=0", "PRAGMA mmap_size", "0"},
    Setting{"PRAGMA locking_mode=EXCLUSIVE", "PRAGMA locking_mode", "exclusive"},
    Setting{"PRAGMA foreign_keys=ON", "PRAGMA foreign_keys", "1"},
    Setting{"PRAGMA cell_size_check=ON", "PRAGMA cell_size_check", "1"},
    Setting{"PRAGMA cache_size=-65536", "PRAGMA cache_size", "-65536"},
};

/// The size of a file; nothing where it cannot be looked at.
std::optional<std::int64_t> sizeOf(const std::filesystem::path& file)
{
    struct stat about{};
    return ::stat(file.c_str(), &about) == 0 ? std::optional(static_cast<std::int64_t>(about.st_size)) : std::nullopt;
}

bool journalBeside(std::filesystem::path file)
{
    file += "-journal";
    return sizeOf(file).value_or(0) > 0;
}

Outcome<bool> beginsPlain(const std::filesystem::path& file)
{
    const auto head = seal::readWhole(file, plainHead.size() - 1);
    if (!head)
        return codeOf(head.code());
    return *head && seal::sameBytes(**head, seal::bytesOf(plainHead));
}

void apply(Database& database, const Setting& setting)
{
    database.runScript(std::string(setting.order));
    if (!database.failed() && database.answer(setting.question) != setting.expected)
        database.fail({Code::EngineUnfitReinstall});
}

/// The settings that a library for tests can be told to make wrong.
void setWrongly(Database& database)
{
    if (planted(Fault::NothingForced))
        database.runScript("PRAGMA synchronous=OFF");
    if (planted(Fault::WriteAheadLog))
        database.runScript("PRAGMA synchronous=NORMAL; PRAGMA journal_mode=WAL");
    if (planted(Fault::JournalDeleted))
        database.runScript("PRAGMA locking_mode=NORMAL; PRAGMA journal_mode=DELETE; SELECT count(*) FROM sqlite_master");
}

/// From version 4 on the engine has other defaults; the profile of 3 is the one that every version reads.
void setProfile(Database& database)
{
    const std::optional<std::string> version = cipherVersion(database);
    if (!version)
        return database.fail({Code::EngineUnfitReinstall});
    if (version->front() >= '4' || version->find('.') > 1)
        database.runScript("PRAGMA cipher_compatibility=3");
    apply(database, {"PRAGMA cipher_page_size=4096", "PRAGMA cipher_page_size", "4096"});
}

/// A connection with everything set but the mark looked at.
Outcome<std::unique_ptr<Database>> connect(const std::filesystem::path& file, const seal::SecretBytes& keyText)
{
    Outcome<std::unique_ptr<Database>> opened = Database::open(file);
    if (!opened)
        return opened;
    Database& database = **opened;
    database.setKey(keyText);
    setProfile(database);
    database.run("SELECT count(*) FROM sqlite_master");
    for (const Setting& setting : settings)
        apply(database, setting);
    setWrongly(database);
    if (const Outcome<Done> fit = database.outcome(); !fit)
        return fit.refusal();
    return opened;
}

}

Outcome<Done> checkFile(const std::filesystem::path& file)
{
    const std::optional<std::int64_t> size = sizeOf(file);
    if (!size)
        return errno == ENOENT ? Code::DatabaseMissingRestoreBackup : Code::FileUnreadableTryAgain;
    const bool journal = journalBeside(file);
    if (*size == 0 && !journal)
        return Code::DatabaseEmptyRestoreBackup;
    const Outcome<bool> plain = beginsPlain(file);
    if (!plain)
        return plain.refusal();
    if (*plain)
        return Code::DatabasePlainRefuse;
    if (*size % pageSize != 0 && !journal)
        return Code::DatabaseTornRestoreBackup;
    return Done{};
}

std::optional<std::string> cipherVersion(Database& database)
{
    std::optional<std::string> version = database.answer("PRAGMA cipher_version");
    return version && !version->empty() ? version : std::nullopt;
}

Outcome<std::unique_ptr<Database>> openSealed(const std::filesystem::path& file, const seal::SecretBytes& keyText)
{
    if (const Outcome<Done> fit = checkFile(file); !fit)
        return fit.refusal();
    Outcome<std::unique_ptr<Database>> opened = connect(file, keyText);
    if (!opened)
        return opened;
    if ((*opened)->answer("PRAGMA application_id") != std::to_string(applicationMarkNumber))
        (*opened)->fail({Code::DatabaseForeignRefuse});
    if (const Outcome<Done> ours = (*opened)->outcome(); !ours)
        return ours.refusal();
    return opened;
}

Outcome<std::unique_ptr<Database>> createSealed(const std::filesystem::path& file, const seal::SecretBytes& keyText)
{
    const int made = ::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, S_IRUSR | S_IWUSR);
    if (made < 0)
        return errno == EEXIST ? Code::VaultThereUnlockIt : codeOf(seal::codeOfWriteError(errno));
    ::close(made);
    Outcome<std::unique_ptr<Database>> opened = connect(file, keyText);
    if (!opened)
        return opened;
    (*opened)->runScript("PRAGMA application_id=" + std::to_string(applicationMarkNumber));
    if (const Outcome<Done> marked = (*opened)->outcome(); !marked)
        return marked.refusal();
    const Outcome<bool> plain = beginsPlain(file);
    if (!plain)
        return plain.refusal();
    if (*plain)
        return Code::EngineUnfitReinstall;
    return opened;
}

}
