// SPDX-License-Identifier: GPL-3.0-or-later
// One source for two programs that differ in the engine alone: with encryption, and the plain one of the system. They cannot be one
// program, since the engines' functions have the same names. Prints milliseconds for a million entries inserted, and for look-ups.
#ifdef STEELYARD_SEALED_ENGINE
#define SQLITE_HAS_CODEC
#include <sqlcipher/sqlite3.h>
#else
#include <sqlite3.h>
#endif

#include <array>
#include <chrono>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <string>

namespace {

constexpr int entryCount = 1'000'000;
constexpr int lookUps = 100'000;
constexpr int athleteCount = 24;

sqlite3* database = nullptr;

void must(int code, int wanted)
{
    if (code == wanted)
        return;
    std::fprintf(stderr, "%s\n", sqlite3_errmsg(database));
    std::exit(1);
}

void run(const char* script)
{
    must(sqlite3_exec(database, script, nullptr, nullptr, nullptr), SQLITE_OK);
}

sqlite3_stmt* prepared(const char* text)
{
    sqlite3_stmt* statement = nullptr;
    must(sqlite3_prepare_v2(database, text, -1, &statement, nullptr), SQLITE_OK);
    return statement;
}

double millisecondsSince(std::chrono::steady_clock::time_point start)
{
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

void open(const char* file)
{
    must(sqlite3_open(file, &database), SQLITE_OK);
#ifdef STEELYARD_SEALED_ENGINE
    const std::string key = "x'" + std::string(96, '7') + "'";
    must(sqlite3_key_v2(database, "main", key.data(), static_cast<int>(key.size())), SQLITE_OK);
    run("PRAGMA cipher_page_size=4096");
#else
    run("PRAGMA page_size=4096");
#endif
    run("PRAGMA journal_mode=TRUNCATE; PRAGMA synchronous=FULL; PRAGMA secure_delete=ON; PRAGMA temp_store=MEMORY; PRAGMA mmap_size=0;"
        "PRAGMA locking_mode=EXCLUSIVE; PRAGMA cache_size=-65536;");
}

/// The tables of the vault that grow with every set, with the same columns and keys.
double insertAll()
{
    run("CREATE TABLE entries(place INTEGER PRIMARY KEY, header BLOB NOT NULL, payload BLOB);"
        "CREATE TABLE added(kind INTEGER NOT NULL, athlete INTEGER NOT NULL, day INTEGER NOT NULL,"
        " place INTEGER NOT NULL, PRIMARY KEY(kind, athlete, day, place)) WITHOUT ROWID;");
    std::mt19937 engine(1);
    std::array<std::uint32_t, 24> header{};
    std::array<std::uint32_t, 40> payload{};
    sqlite3_stmt* const entry = prepared("INSERT INTO entries VALUES(?, ?, ?)");
    sqlite3_stmt* const record = prepared("INSERT INTO added VALUES(16, ?, ?, ?)");
    const auto start = std::chrono::steady_clock::now();
    run("BEGIN");
    for (int place = 1; place <= entryCount; ++place) {
        for (std::uint32_t& word : header)
            word = engine();
        for (std::uint32_t& word : payload)
            word = engine();
        sqlite3_bind_int64(entry, 1, place);
        sqlite3_bind_blob(entry, 2, header.data(), sizeof header, SQLITE_TRANSIENT);
        sqlite3_bind_blob(entry, 3, payload.data(), sizeof payload, SQLITE_TRANSIENT);
        must(sqlite3_step(entry), SQLITE_DONE);
        sqlite3_reset(entry);
        sqlite3_bind_int64(record, 1, engine() % athleteCount);
        sqlite3_bind_int64(record, 2, 20'000 + place / 2'000);
        sqlite3_bind_int64(record, 3, place);
        must(sqlite3_step(record), SQLITE_DONE);
        sqlite3_reset(record);
    }
    run("COMMIT");
    const double spent = millisecondsSince(start);
    sqlite3_finalize(entry);
    sqlite3_finalize(record);
    return spent;
}

double lookUpSome()
{
    std::mt19937 engine(2);
    sqlite3_stmt* const entry = prepared("SELECT header, payload FROM entries WHERE place=?");
    const auto start = std::chrono::steady_clock::now();
    for (int count = 0; count < lookUps; ++count) {
        sqlite3_bind_int64(entry, 1, 1 + engine() % entryCount);
        must(sqlite3_step(entry), SQLITE_ROW);
        sqlite3_reset(entry);
    }
    const double spent = millisecondsSince(start);
    sqlite3_finalize(entry);
    return spent;
}

}

int main(int argc, char** argv)
{
    if (argc != 2)
        return 2;
    open(argv[1]);
    const double inserted = insertAll();
    std::printf("%.3f %.3f\n", inserted, lookUpSome());
    sqlite3_close(database);
    return 0;
}
