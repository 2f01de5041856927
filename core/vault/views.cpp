// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vault/views.h"

#include "core/vault/faults.h"

#include <algorithm>

namespace steelyard::vault {

namespace {

using journal::Held;
using journal::Kind;

// The number of records about nobody in particular.
constexpr std::int64_t nobody = 0;

std::int64_t numberOf(auto kind)
{
    return static_cast<std::int64_t>(kind);
}

std::int64_t numberOf(std::chrono::sys_days day)
{
    return day.time_since_epoch().count();
}

std::vector<Head> sorted(std::vector<Held> entries)
{
    std::map<journal::RegisterKey, std::vector<Held>> registers;
    for (Held& held : entries) {
        std::vector<Held>& several = registers[journal::keyOf(held.body)];
        several.push_back(std::move(held));
    }
    std::vector<Head> heads;
    heads.reserve(entries.size());
    for (auto& [key, several] : registers) {
        std::sort(several.begin(), several.end(), [](const Held& one, const Held& other) { return journal::rankOf(one) > journal::rankOf(other); });
        bool winner = true;
        for (Held& held : several)
            heads.push_back({std::move(held), std::exchange(winner, false)});
    }
    return heads;
}

}

void Views::make()
{
    for (const char* const table : {"registers", "heads", "marks", "added", "athletes"})
        m_database.runScript(std::string("DROP TABLE IF EXISTS ") + table);
    m_database.runScript("CREATE TABLE registers(number INTEGER PRIMARY KEY, subjectKind INTEGER NOT NULL, subject BLOB NOT NULL,"
                         " holds INTEGER NOT NULL, athlete INTEGER NOT NULL, field INTEGER NOT NULL, part TEXT NOT NULL,"
                         " UNIQUE(subjectKind, subject, holds, athlete, field, part));"
                         "CREATE TABLE heads(register INTEGER NOT NULL, place INTEGER NOT NULL, id BLOB NOT NULL,"
                         " PRIMARY KEY(register, place)) WITHOUT ROWID;"
                         "CREATE TABLE marks(register INTEGER NOT NULL, id BLOB NOT NULL, PRIMARY KEY(register, id)) WITHOUT ROWID;"
                         "CREATE TABLE added(kind INTEGER NOT NULL, athlete INTEGER NOT NULL, day INTEGER NOT NULL,"
                         " place INTEGER NOT NULL, PRIMARY KEY(kind, athlete, day, place)) WITHOUT ROWID;"
                         "CREATE TABLE athletes(number INTEGER PRIMARY KEY, id BLOB NOT NULL UNIQUE);");
    m_athletes.clear();
}

void Views::load()
{
    m_athletes.clear();
    m_erased.clear();
    RecordId id;
    for (Rows rows = m_database.query("SELECT id, number FROM athletes"); rows.next();) {
        seal::copyBytes(rows->view(0), id.bytes);
        m_athletes[id] = rows->number(1);
    }
    for (Rows rows = m_database.query("SELECT athlete FROM erased"); rows.next();) {
        seal::copyBytes(rows->view(0), id.bytes);
        m_erased.insert(id);
    }
}

bool Views::isErased(const std::optional<RecordId>& athlete) const
{
    return athlete && m_erased.contains(*athlete);
}

std::vector<RecordId> Views::erasedAthletes() const
{
    return {m_erased.begin(), m_erased.end()};
}

bool Views::add(std::int64_t placeNumber, const Held& held)
{
    const journal::Body& body = held.body;
    const journal::RegisterKey key = journal::keyOf(body);
    const bool erased = isErased(body.athlete);
    const std::int64_t athlete = erased && body.kind != Kind::Erased ? nobody : athleteNumber(body.athlete);
    const std::optional<std::int64_t> present = findRegister(key, athlete);
    const bool superseded =
        present && m_database.query("SELECT 1 FROM marks WHERE register=? AND id=?", *present, held.id.bytes).next();
    const std::optional<journal::Step> step = journal::stepOf(held, {erased, superseded});
    if (!step)
        return false;
    if (step->erases && m_erased.insert(*step->erases).second)
        erase(*step->erases);
    if (!step->supersedes.empty()) {
        const std::int64_t number = registerNumber(key, athlete);
        for (const journal::EntryId& id : step->supersedes)
            mark(number, id);
    }
    if (!step->becomesHead)
        return true;
    if (key.holds == journal::RegisterClass::Record) // which nothing replaces: it is put right
        m_database.run("INSERT INTO added VALUES(?, ?, ?, ?)", numberOf(body.subject.kind), athlete, numberOf(body.localDay), placeNumber);
    else
        m_database.run("INSERT INTO heads VALUES(?, ?, ?)", registerNumber(key, athlete), placeNumber, held.id.bytes);
    return true;
}

void Views::addAll()
{
    std::vector<std::int64_t> dropped;
    for (Rows rows = m_database.query("SELECT header, payload, place FROM entries WHERE payload NOT NULL ORDER BY place"); rows.next();) {
        const std::optional<Held> held = entryAt(rows.row());
        if (held && !add(rows->number(2), *held))
            dropped.push_back(rows->number(2));
    }
    dropBodies(dropped);
}

void Views::dropBodies(const std::vector<std::int64_t>& places)
{
    for (const std::int64_t place : places)
        m_database.run("UPDATE entries SET payload=NULL WHERE place=?", place);
}

std::optional<std::int64_t> Views::findRegister(const journal::RegisterKey& key, std::int64_t athlete)
{
    Rows rows = m_database.query("SELECT number FROM registers"
                                 " WHERE subjectKind=? AND subject=? AND holds=? AND athlete=? AND field=? AND part=?",
        numberOf(key.subject.kind), key.subject.id.bytes, numberOf(key.holds), athlete, static_cast<std::int64_t>(key.fieldNumber),
        key.part);
    return rows.next() ? std::optional(rows->number(0)) : std::nullopt;
}

std::int64_t Views::registerNumber(const journal::RegisterKey& key, std::int64_t athlete)
{
    if (const std::optional<std::int64_t> present = findRegister(key, athlete))
        return *present;
    m_database.run("INSERT INTO registers(subjectKind, subject, holds, athlete, field, part) VALUES(?, ?, ?, ?, ?, ?)",
        numberOf(key.subject.kind), key.subject.id.bytes, numberOf(key.holds), athlete, static_cast<std::int64_t>(key.fieldNumber),
        key.part);
    return findRegister(key, athlete).value_or(0);
}

void Views::mark(std::int64_t registerNumber, const journal::EntryId& id)
{
    if (!planted(Fault::MarksForgotten))
        m_database.run("INSERT OR IGNORE INTO marks VALUES(?, ?)", registerNumber, id.bytes);
    m_database.run("DELETE FROM heads WHERE register=? AND id=?", registerNumber, id.bytes);
}

void Views::erase(const RecordId& athlete)
{
    m_database.run("INSERT OR IGNORE INTO erased VALUES(?)", athlete.bytes);
    const std::int64_t number = athleteNumber(athlete);
    const std::int64_t erasure = numberOf(journal::RegisterClass::Erasure);
    m_database.run("DELETE FROM heads WHERE register IN (SELECT number FROM registers WHERE athlete=? AND holds<>?)", number, erasure);
    m_database.run("DELETE FROM marks WHERE register IN (SELECT number FROM registers WHERE athlete=? AND holds<>?)", number, erasure);
    m_database.run("DELETE FROM registers WHERE athlete=? AND holds<>?", number, erasure);
    m_database.run("DELETE FROM added WHERE athlete=?", number);
    std::vector<std::int64_t> places;
    for (Rows rows = m_database.query("SELECT header, payload, place FROM entries WHERE payload NOT NULL"); rows.next();) {
        const std::optional<Held> held = entryAt(rows.row());
        if (held && held->body.athlete == athlete && held->body.kind != Kind::Erased)
            places.push_back(rows->number(2));
    }
    dropBodies(places);
}

std::int64_t Views::athleteNumber(const std::optional<RecordId>& athlete)
{
    if (!athlete)
        return nobody;
    const auto known = m_athletes.find(*athlete);
    if (known != m_athletes.end())
        return known->second;
    const auto number = static_cast<std::int64_t>(m_athletes.size()) + 1;
    m_database.run("INSERT INTO athletes VALUES(?, ?)", number, athlete->bytes);
    return m_athletes[*athlete] = number;
}

std::optional<Held> Views::entryAt(const Statement& row) const
{
    journal::Entry entry;
    const auto header = journal::decodeHeader(row.view(0));
    if (!header) {
        m_database.fail({Code::PageDamagedRestoreBackup});
        return std::nullopt;
    }
    entry.header = *header;
    if (!row.isNull(1)) {
        const ByteView payload = row.view(1);
        entry.payload.emplace();
        seal::copyBytes(payload, entry.payload->salt);
        const ByteView body = payload.subspan(std::min(payload.size(), entry.payload->salt.size()));
        entry.payload->body.assign(body.begin(), body.end());
    }
    auto held = journal::held(entry);
    return held ? std::optional(*std::move(held)) : std::nullopt;
}

std::vector<Head> Views::readHeads(Rows rows)
{
    std::vector<Held> entries;
    while (rows.next())
        if (std::optional<Held> held = entryAt(rows.row()))
            entries.push_back(*std::move(held));
    return sorted(std::move(entries));
}

std::vector<Head> Views::heads(journal::RecordKind kind)
{
    return readHeads(m_database.query(
        "SELECT header, payload FROM registers CROSS JOIN heads ON register=number CROSS JOIN entries USING(place) WHERE subjectKind=?",
        numberOf(kind)));
}

std::vector<Head> Views::headsAbout(const journal::Subject& subject)
{
    return readHeads(m_database.query("SELECT header, payload FROM registers CROSS JOIN heads ON register=number CROSS JOIN entries USING(place)"
                                      " WHERE subjectKind=? AND subject=?",
        numberOf(subject.kind), subject.id.bytes));
}

Views::Slice Views::added(journal::RecordKind kind, const Query& query, const Cursor& behind, std::int64_t mostCount)
{
    const std::int64_t first = numberOf(query.firstDay);
    const std::int64_t last = numberOf(query.lastDay);
    Slice slice;
    const auto take = [&](Rows rows) {
        std::int64_t count = 0;
        Cursor at;
        for (; rows.next(); ++count) {
            at = {rows->number(2), rows->number(3), rows->number(4)};
            if (std::optional<Held> held = entryAt(rows.row()))
                slice.added.push_back(*std::move(held));
        }
        if (count == mostCount)
            slice.last = at;
    };
    if (!query.athlete) {
        take(m_database.query("SELECT header, payload, athlete, day, place FROM added CROSS JOIN entries USING(place)"
                              " WHERE kind=? AND (athlete, day, place) > (?, ?, ?) AND day BETWEEN ? AND ?"
                              " ORDER BY athlete, day, place LIMIT ?",
            numberOf(kind), behind.athleteNumber, behind.dayNumber, behind.placeNumber, first, last, mostCount));
        return slice;
    }
    const auto known = m_athletes.find(*query.athlete);
    if (known == m_athletes.end())
        return slice;
    const bool begun = behind.athleteNumber == known->second;
    take(m_database.query("SELECT header, payload, athlete, day, place FROM added CROSS JOIN entries USING(place)"
                          " WHERE kind=? AND athlete=? AND (day, place) > (?, ?) AND day <= ?"
                          " ORDER BY day, place LIMIT ?",
        numberOf(kind), known->second, begun ? behind.dayNumber : first - 1,
        begun ? behind.placeNumber : std::numeric_limits<std::int64_t>::max(), last, mostCount));
    return slice;
}

}
