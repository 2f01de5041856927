// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/secretmemory.h"
#include "core/vault/refusal.h"

#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

namespace steelyard::vault {

using seal::ByteBuffer;
using seal::ByteView;

class Database;

/// A prepared statement, finalized at the end. Parameters and columns count from 1 and 0, as the engine has it.
class Statement {
public:
    Statement(Database& database, std::string_view text);
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;
    ~Statement();

    void bindAt(int index, std::int64_t number);
    void bindAt(int index, ByteView blob);
    void bindAt(int index, std::string_view text);
    /// False at the end and after a failure, which the database remembers.
    bool next();
    void reset();

    [[nodiscard]] std::int64_t number(int index) const;
    [[nodiscard]] ByteBuffer blob(int index) const;
    /// Good until the next row.
    [[nodiscard]] ByteView view(int index) const;
    [[nodiscard]] std::string text(int index) const;
    [[nodiscard]] bool isNull(int index) const;

    bool busy = false; ///< lent out by its database

private:
    Database& m_database;
    sqlite3_stmt* m_handle = nullptr;
};

/// The rows of a query while somebody looks at them; gives its statement back at the end.
class Rows {
public:
    explicit Rows(Statement& lent) : m_lent(&lent) {}
    Rows(Rows&& other) noexcept : m_lent(std::exchange(other.m_lent, nullptr)), m_own(std::move(other.m_own)) {}
    explicit Rows(std::unique_ptr<Statement> own) : m_lent(own.get()), m_own(std::move(own)) {}
    Rows(const Rows&) = delete;
    Rows& operator=(const Rows&) = delete;
    Rows& operator=(Rows&&) = delete;
    ~Rows();

    bool next() { return m_lent->next(); }
    [[nodiscard]] const Statement* operator->() const { return m_lent; }
    [[nodiscard]] const Statement& row() const { return *m_lent; }
    [[nodiscard]] Statement& statement() { return *m_lent; }

private:
    Statement* m_lent;
    std::unique_ptr<Statement> m_own;
};

/// One connection. After a failure it does nothing more, and remembers the first one, until somebody takes it with takeFailure:
/// so a chain of statements is checked once, at its end.
class Database {
public:
    /// Never creates a file.
    [[nodiscard]] static Outcome<std::unique_ptr<Database>> open(const std::filesystem::path& file);
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;
    ~Database();

    /// The raw key of 96 hexadecimal digits, kept out of every statement's text.
    void setKey(const seal::SecretBytes& keyText);

    /// Runs one statement; its text has to be a literal or otherwise outlive the connection.
    template <typename... Values>
    void run(std::string_view text, const Values&... values)
    {
        Rows rows = query(text, values...);
        while (rows.next())
            continue;
    }
    template <typename... Values>
    [[nodiscard]] Rows query(std::string_view text, const Values&... values)
    {
        Rows rows = lend(text);
        int index = 0;
        (bind(rows, ++index, values), ...);
        return rows;
    }
    /// Several statements without parameters.
    void runScript(const std::string& text);
    /// The first column of the first row, as a text; nothing where there is no row.
    [[nodiscard]] std::optional<std::string> answer(std::string_view text);

    [[nodiscard]] bool failed() const { return m_failure.has_value(); }
    [[nodiscard]] const std::optional<Refusal>& failure() const { return m_failure; }
    std::optional<Refusal> takeFailure() { return std::exchange(m_failure, std::nullopt); }
    /// Done, or the failure, which is taken.
    [[nodiscard]] Outcome<Done> outcome();
    void fail(Refusal refusal);

    /// Rows that the last statement changed.
    [[nodiscard]] std::int64_t changedCount() const;
    [[nodiscard]] bool insideTransaction() const;

private:
    friend class Statement;
    explicit Database(sqlite3* handle);
    void failWith(int engineCode);
    [[nodiscard]] Rows lend(std::string_view text);
    static void bind(Rows& rows, int index, std::int64_t number);
    static void bind(Rows& rows, int index, ByteView blob);
    static void bind(Rows& rows, int index, std::string_view text);

    sqlite3* m_handle;
    std::optional<Refusal> m_failure;
    std::map<std::string_view, std::unique_ptr<Statement>> m_prepared;
};

/// All or nothing: what is not committed by the end is taken back.
class Transaction {
public:
    explicit Transaction(Database& database);
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    ~Transaction();

    /// On the disk, or the first failure since the beginning, with everything taken back.
    [[nodiscard]] Outcome<Done> commit();

private:
    void takeBack();

    Database& m_database;
    bool m_open = true;
    bool m_joined = false; ///< another one left open, which only a planted mistake does
};

}
