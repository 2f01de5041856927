// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vault/database.h"

namespace steelyard::vault {

/// The mark by which a database is known as ours ("Stlv").
inline constexpr std::int64_t applicationMarkNumber = 0x53746C76;

/// Looks at the file before the engine does, which would take a file without bytes for an empty database: missing, empty, plain and
/// torn are codes. A file that a journal lies beside may end anywhere: the engine puts it right.
[[nodiscard]] Outcome<Done> checkFile(const std::filesystem::path& file);

/// The one way to a connection: file checked, key, page size, first read, then journal TRUNCATE, synchronous FULL and the rest,
/// every setting read back, since the engine passes over what it does not know without a word.
/// Wrong keys and damage look alike here: only keys out of a checked key file may be brought.
[[nodiscard]] Outcome<std::unique_ptr<Database>> openSealed(const std::filesystem::path& file, const seal::SecretBytes& keyText);

/// A new file, readable by its owner alone, with nothing but the mark in it, opened the same way; one that is there is refused.
[[nodiscard]] Outcome<std::unique_ptr<Database>> createSealed(const std::filesystem::path& file, const seal::SecretBytes& keyText);

/// What the engine calls itself, or nothing where it cannot encrypt.
[[nodiscard]] std::optional<std::string> cipherVersion(Database& database);

}
