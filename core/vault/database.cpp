// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vault/database.h"

#include "core/vault/faults.h"

#include <cerrno>
#include <cstring>

#define SQLITE_HAS_CODEC
#include <sqlcipher/sqlite3.h>

namespace steelyard::vault {

namespace {

/// Foreign files and code from files stay out, whatever a statement says.
int allowed(void*, int action, const char*, const char* what, const char*, const char*)
{
    if (action == SQLITE_ATTACH || action == SQLITE_DETACH)
        return SQLITE_DENY;
    if (action == SQLITE_FUNCTION && what && std::strcmp(what, "load_extension") == 0)
        return SQLITE_DENY;
    return SQLITE_OK;
}

bool saysFull(int systemError)
{
    return systemError == ENOSPC || systemError == EDQUOT || systemError == EFBIG;
}

Code codeOfIo(int engineCode, int systemError)
{
    if (saysFull(systemError))
        return Code::DiskFullFreeSpace;
    switch (engineCode) {
    case SQLITE_IOERR_READ:
    case SQLITE_IOERR_SHORT_READ:
    case SQLITE_IOERR_FSTAT:
    case SQLITE_IOERR_ACCESS:
        return Code::FileUnreadableTryAgain;
    default:
        return Code::WriteFailedTryAgain;
    }
}

/// A page whose checksum is wrong comes back as the plain error 1 from this engine, as does a wrong statement; ours are constant.
Code codeOfEngine(int engineCode, int systemError)
{
    switch (engineCode & 0xFF) {
    case SQLITE_FULL:
        return Code::DiskFullFreeSpace;
    case SQLITE_IOERR:
        return codeOfIo(engineCode, systemError);
    case SQLITE_CANTOPEN:
        return saysFull(systemError) ? Code::DiskFullFreeSpace : Code::FileUnreadableTryAgain;
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return Code::FolderReadOnlyChooseOther;
    case SQLITE_NOMEM:
        return Code::MemoryRefusedCloseOthers;
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return Code::SecondInstanceCloseOther;
    case SQLITE_INTERRUPT:
        return Code::StoppedTryAgain;
    case SQLITE_AUTH:
    case SQLITE_MISUSE:
        return Code::EngineUnfitReinstall;
    default:
        return Code::PageDamagedRestoreBackup;
    }
}

}

Statement::Statement(Database& database, std::string_view text) : m_database(database)
{
    if (database.failed())
        return;
    const int code = sqlite3_prepare_v2(database.m_handle, text.data(), static_cast<int>(text.size()), &m_handle, nullptr);
    if (code != SQLITE_OK)
        database.failWith(code);
}

Statement::~Statement()
{
    sqlite3_finalize(m_handle);
}

void Statement::bindAt(int index, std::int64_t number)
{
    if (m_handle && !m_database.failed() && sqlite3_bind_int64(m_handle, index, number) != SQLITE_OK)
        m_database.failWith(SQLITE_MISUSE);
}

void Statement::bindAt(int index, ByteView blob)
{
    // An empty view may have no address, which would bind NULL.
    const void* const start = blob.empty() ? "" : static_cast<const void*>(blob.data());
    if (m_handle && !m_database.failed() && sqlite3_bind_blob64(m_handle, index, start, blob.size(), SQLITE_TRANSIENT) != SQLITE_OK)
        m_database.failWith(SQLITE_MISUSE);
}

void Statement::bindAt(int index, std::string_view text)
{
    const char* const start = text.empty() ? "" : text.data();
    if (m_handle && !m_database.failed()
        && sqlite3_bind_text64(m_handle, index, start, text.size(), SQLITE_TRANSIENT, SQLITE_UTF8) != SQLITE_OK)
        m_database.failWith(SQLITE_MISUSE);
}

bool Statement::next()
{
    if (!m_handle || m_database.failed())
        return false;
    const int code = sqlite3_step(m_handle);
    if (code == SQLITE_ROW)
        return true;
    if (code != SQLITE_DONE)
        m_database.failWith(code);
    return false;
}

void Statement::reset()
{
    if (m_handle) {
        sqlite3_reset(m_handle);
        sqlite3_clear_bindings(m_handle);
    }
}

std::int64_t Statement::number(int index) const
{
    return sqlite3_column_int64(m_handle, index);
}

ByteView Statement::view(int index) const
{
    const void* const data = sqlite3_column_blob(m_handle, index);
    return {static_cast<const std::byte*>(data), static_cast<std::size_t>(sqlite3_column_bytes(m_handle, index))};
}

ByteBuffer Statement::blob(int index) const
{
    const ByteView bytes = view(index);
    return {bytes.begin(), bytes.end()};
}

std::string Statement::text(int index) const
{
    const auto* const data = reinterpret_cast<const char*>(sqlite3_column_text(m_handle, index));
    return data ? std::string(data, static_cast<std::size_t>(sqlite3_column_bytes(m_handle, index))) : std::string();
}

bool Statement::isNull(int index) const
{
    return sqlite3_column_type(m_handle, index) == SQLITE_NULL;
}

Rows::~Rows()
{
    if (m_lent) {
        m_lent->reset();
        m_lent->busy = false;
    }
}

Database::Database(sqlite3* handle) : m_handle(handle)
{
    sqlite3_extended_result_codes(handle, 1);
    sqlite3_set_authorizer(handle, allowed, nullptr);
}

Database::~Database()
{
    m_prepared.clear();
    sqlite3_close(m_handle);
}

Outcome<std::unique_ptr<Database>> Database::open(const std::filesystem::path& file)
{
    constexpr int flags = SQLITE_OPEN_READWRITE | SQLITE_OPEN_FULLMUTEX;
    sqlite3* handle = nullptr;
    const int code = sqlite3_open_v2(file.c_str(), &handle, flags, nullptr);
    if (code != SQLITE_OK) {
        const int systemError = handle ? sqlite3_system_errno(handle) : ENOMEM;
        sqlite3_close(handle);
        if (systemError == EROFS || systemError == EACCES)
            return Code::FolderReadOnlyChooseOther;
        return codeOfEngine(code, systemError);
    }
    return std::unique_ptr<Database>(new Database(handle));
}

void Database::setKey(const seal::SecretBytes& keyText)
{
    // The engine takes the key as the body of a blob literal.
    const auto literal = seal::SecretBytes::make(keyText.size() + 3, [&keyText](seal::ByteRoom room) -> seal::Outcome<Done> {
        room[0] = std::byte{'x'};
        room[1] = room[room.size() - 1] = std::byte{'\''};
        seal::copyBytes(keyText.view(), room.subspan(2));
        return Done{};
    });
    if (!literal)
        return fail({codeOf(literal.code())});
    const int code = sqlite3_key_v2(m_handle, "main", literal->view().data(), static_cast<int>(literal->size()));
    if (code != SQLITE_OK)
        failWith(code);
}

void Database::runScript(const std::string& text)
{
    if (failed())
        return;
    const int code = sqlite3_exec(m_handle, text.c_str(), nullptr, nullptr, nullptr);
    if (code != SQLITE_OK)
        failWith(code);
}

std::optional<std::string> Database::answer(std::string_view text)
{
    Statement statement(*this, text);
    return statement.next() ? std::optional(statement.text(0)) : std::nullopt;
}

Outcome<Done> Database::outcome()
{
    if (const std::optional<Refusal> failure = takeFailure())
        return *failure;
    return Done{};
}

void Database::fail(Refusal refusal)
{
    if (!m_failure)
        m_failure = refusal;
}

void Database::failWith(int engineCode)
{
    fail({codeOfEngine(engineCode, sqlite3_system_errno(m_handle))});
}

std::int64_t Database::changedCount() const
{
    return sqlite3_changes(m_handle);
}

bool Database::insideTransaction() const
{
    return sqlite3_get_autocommit(m_handle) == 0;
}

Rows Database::lend(std::string_view text)
{
    std::unique_ptr<Statement>& prepared = m_prepared[text];
    if (prepared && prepared->busy)
        return Rows(std::make_unique<Statement>(*this, text));
    if (!prepared)
        prepared = std::make_unique<Statement>(*this, text);
    prepared->busy = true;
    if (failed()) {
        // What could not be prepared while something else was wrong is prepared anew the next time.
        auto unfit = std::move(prepared);
        m_prepared.erase(text);
        return Rows(std::move(unfit));
    }
    return Rows(*prepared);
}

void Database::bind(Rows& rows, int index, std::int64_t number)
{
    rows.statement().bindAt(index, number);
}

void Database::bind(Rows& rows, int index, ByteView blob)
{
    rows.statement().bindAt(index, blob);
}

void Database::bind(Rows& rows, int index, std::string_view text)
{
    rows.statement().bindAt(index, text);
}

Transaction::Transaction(Database& database) : m_database(database)
{
    m_joined = planted(Fault::ToldTooEarly) && m_database.insideTransaction();
    if (!m_joined)
        m_database.run("BEGIN IMMEDIATE");
}

Transaction::~Transaction()
{
    if (m_open)
        takeBack();
}

Outcome<Done> Transaction::commit()
{
    m_open = false;
    if (planted(Fault::ToldTooEarly) && !m_joined && !m_database.failed())
        return Done{};
    m_database.run("COMMIT");
    if (!m_database.failed())
        return Done{};
    const Refusal refusal = *m_database.failure();
    takeBack();
    return refusal;
}

void Transaction::takeBack()
{
    m_open = false;
    m_database.takeFailure();
    if (m_database.insideTransaction())
        m_database.run("ROLLBACK");
    // What goes wrong while taking back is told by the next use; the first failure is the one to report.
    m_database.takeFailure();
}

}
