// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vault/migrations/migrations.h"

namespace steelyard::vault {

// An entry's place is its chain's number and its sequence number in one: 2^40 of them a chain. So a chain lies together on the disk,
// and every table that points to entries does so with one whole number.
// The salt and body of an entry are one blob, and go together when an athlete is erased.
void layout1(Database& database)
{
    database.runScript("CREATE TABLE meta(name TEXT PRIMARY KEY, value) WITHOUT ROWID;"
                       "CREATE TABLE chains(number INTEGER PRIMARY KEY, origin BLOB NOT NULL, incarnation INTEGER NOT NULL,"
                       " sequence INTEGER NOT NULL, id BLOB NOT NULL, UNIQUE(origin, incarnation));"
                       "CREATE TABLE entries(place INTEGER PRIMARY KEY, header BLOB NOT NULL, payload BLOB);"
                       "CREATE TABLE erased(athlete BLOB PRIMARY KEY) WITHOUT ROWID;"
                       "CREATE TABLE drafts(name TEXT PRIMARY KEY, bytes BLOB NOT NULL) WITHOUT ROWID;");
}

}
