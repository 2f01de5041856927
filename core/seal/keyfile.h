// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/hash.h"
#include "core/seal/identity.h"
#include "core/seal/stretch.h"

#include <optional>

namespace steelyard::seal {

/// A way in. Numbers are written down for ever.
enum class SlotKind : std::uint8_t {
    Passphrase = 1,
    RecoveryCode = 2,
    DeviceKeystore = 3, ///< a key that the platform keeps: its cost and salt are zero, and it is never the only slot
};

/// The vault key under one secret, with what it takes to stretch that secret.
struct Slot {
    SlotKind kind = SlotKind::Passphrase;
    StretchCost cost;
    Salt salt{};
    Wrapped<VaultKey::size> vaultKey;
    bool operator==(const Slot&) const = default;
};

/// What a vault is there for. It stands in the first 8 bytes of the vault's id, which every wrapping has as associated data, and
/// nothing changes it: what was made as a sample stays one, wherever it is copied to, and what was not never becomes one.
enum class VaultNature : std::uint8_t {
    Own,    ///< a coach's
    Sample, ///< an invented season, whose passphrase everybody knows
};

/// The nature that an id says, before any secret is known.
[[nodiscard]] VaultNature natureOf(const ByteArray<16>& vaultId);
/// A new random id of that nature.
[[nodiscard]] ByteArray<16> newVaultId(VaultNature nature, const RandomSource& random);

/// What a key file says. Nothing in it is secret without a slot's secret.
///
/// Bytes of version 1, integers with the low byte first:
///
///       0  8   magic: 8F 53 59 56 4B 0D 0A 1A (no text; mangled line ends show)
///       8  2   version, 1
///      10  2   number of slots, 1 to 3
///      12  4   size of the whole file
///      16 16   vault id, random; of a sample vault the first 8 bytes are "SAMPLE", 0, 1
///      32  8   generation, from 1, one more with every change
///      40  4   number of the current database file, from 1
///      44  4   epoch of the receive key, from 1
///      48 16   salt of the database
///      64  …   slots of 100, by rising kind, each kind once:
///                1 kind · 3 zero · 4 memory in KiB · 4 passes · 16 salt · 24 nonce · 48 wrapped vault key
///           72   data key: 24 nonce · 48 wrapped
///          136   device identity: 24 nonce · 112 wrapped
///           32   keyed BLAKE2b-256 over everything before, by a subkey: shows forgery after unlocking
///           32   BLAKE2b-256 over everything before: shows damage before any secret is tried
///
/// Magic, version and the last 32 bytes keep place and meaning in every version. Associated data of each wrapping: magic, version and
/// vault id; then a slot's kind, cost and salt, or 40 and the number and salt of the database, or 41 and the receive epoch.
/// The generation is in none, so that a slot whose secret is not at hand lasts through changes.
struct KeyFile {
    ByteArray<16> vaultId{};
    std::uint64_t generationNumber = 1;
    std::uint32_t databaseNumber = 1;
    std::uint32_t epochNumber = 1;
    Salt databaseSalt{};
    std::vector<Slot> slots;
    Wrapped<DataKey::size> dataKey;
    Wrapped<DeviceIdentity::storedSize> identity;
    Digest mac{};
    bool operator==(const KeyFile&) const = default;

    [[nodiscard]] const Slot* slot(SlotKind kind) const;
};

/// No key file of any version may be larger.
inline constexpr std::size_t largestKeyFileSize = 65536;

/// The bytes of a file; the slots are put in order, the checksum is worked out, the MAC is taken as it stands.
[[nodiscard]] ByteBuffer encode(const KeyFile& file);

/// The file that the bytes say, whatever they are: damaged where the checksum, or with a right checksum the layout, does not hold;
/// newer where the checksum holds and the version is above ours. Costs are not judged here, but when they are to be spent.
[[nodiscard]] Outcome<KeyFile> decode(ByteView bytes);

/// The bytes that the MAC stands for.
[[nodiscard]] ByteBuffer bytesUnderMac(const KeyFile& file);

/// The associated data of a slot, of the data key and of the device identity.
[[nodiscard]] ByteBuffer associatedOf(const KeyFile& file, const Slot& slot);
[[nodiscard]] ByteBuffer associatedOfDataKey(const KeyFile& file);
[[nodiscard]] ByteBuffer associatedOfIdentity(const KeyFile& file);

}
