// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vault/database.h"
#include "core/vault/snapshot.h"

#include <limits>
#include <set>

namespace steelyard::vault {

/// Number of the way in which the tables below are made; another number in a database has them made anew from the journal.
inline constexpr std::int64_t viewsVersionNumber = 1;

/// Tables that could be made from the journal at any time, and are kept so that nobody has to fold a million entries to see one page:
/// registers with their heads and marks, and added records clustered by kind, athlete and day. What an entry does to them is the
/// journal's rule (stepOf). Every entry is taken in once, in any order, within the transaction that stores it.
class Views {
public:
    explicit Views(Database& database) : m_database(database) {}

    /// Empty tables, in place of whatever was there.
    void make();
    /// Which athletes are erased, and what numbers they have in the tables.
    void load();
    /// False where the athlete has been erased: then the body is to be dropped.
    [[nodiscard]] bool add(std::int64_t placeNumber, const journal::Held& held);
    /// The whole journal; drops the bodies that are to be dropped.
    void addAll();
    [[nodiscard]] bool isErased(const std::optional<RecordId>& athlete) const;

    /// Heads of the registers of records of one kind, those of one register together, the winner first.
    [[nodiscard]] std::vector<Head> heads(journal::RecordKind kind);
    /// The same of one record, its own registers as an added one apart.
    [[nodiscard]] std::vector<Head> headsAbout(const journal::Subject& subject);
    [[nodiscard]] std::vector<RecordId> erasedAthletes() const;

    /// A place among the added records of a kind.
    struct Cursor {
        std::int64_t athleteNumber = std::numeric_limits<std::int64_t>::min();
        std::int64_t dayNumber = 0;
        std::int64_t placeNumber = 0;
    };
    /// A stretch of added records that has been read, and behind which one to go on; nothing at the end.
    struct Slice {
        std::vector<journal::Held> added;
        std::optional<Cursor> last;
    };
    [[nodiscard]] Slice added(journal::RecordKind kind, const Query& query, const Cursor& behind, std::int64_t mostCount);

private:
    std::int64_t athleteNumber(const std::optional<RecordId>& athlete);
    [[nodiscard]] std::optional<std::int64_t> findRegister(const journal::RegisterKey& key, std::int64_t athlete);
    [[nodiscard]] std::int64_t registerNumber(const journal::RegisterKey& key, std::int64_t athlete);
    void mark(std::int64_t registerNumber, const journal::EntryId& id);
    void erase(const RecordId& athlete);
    void dropBodies(const std::vector<std::int64_t>& places);
    [[nodiscard]] std::vector<Head> readHeads(Rows rows);
    [[nodiscard]] std::optional<journal::Held> entryAt(const Statement& row) const;

    Database& m_database;
    std::set<RecordId> m_erased;
    std::map<RecordId, std::int64_t> m_athletes;
};

}
