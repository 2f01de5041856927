// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/entry.h"
#include "core/seal/keys.h"
#include "core/vault/refusal.h"

#include <filesystem>
#include <vector>

namespace steelyard::vault {

/// What the database held when it was last looked at: where each chain ended.
struct Witness {
    std::uint64_t counterNumber = 0; ///< one more with every writing
    std::vector<journal::ChainEnd> ends;
    bool operator==(const Witness&) const = default;
};

/// Two files beside the database, `witness.a` and `witness.b`, written in turn, so that one that was torn in writing leaves the other.
/// They tell an older database that was put back, which by itself looks as good as any.
///
/// Bytes, whole numbers with the high byte first: 4 magic "SYWT" · 4 version, 1 · 16 vault id · 8 counter · 4 number of chains ·
/// a chain: 16 origin, 4 incarnation, 8 sequence number, 32 entry id · at the end 32 keyed BLAKE2b-256 of everything before.
class WitnessFiles {
public:
    WitnessFiles(std::filesystem::path folder, const seal::ByteArray<16>& vaultId, seal::SubKey key);

    /// The newer one of those whose MAC holds; nothing where there is none.
    [[nodiscard]] std::optional<Witness> read() const;
    /// Into the file that `read` would not give; on the disk when done. Takes the next counter.
    [[nodiscard]] Outcome<Done> write(const std::vector<journal::ChainEnd>& ends);

private:
    [[nodiscard]] std::optional<Witness> readOne(std::size_t index) const;

    std::filesystem::path m_folder;
    seal::ByteArray<16> m_vaultId;
    seal::SubKey m_key;
};

}
