// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/recordid.h"
#include "core/seal/bytes.h"

#include <compare>
#include <cstdint>
#include <cstring>
#include <string>
#include <tuple>

namespace steelyard::seal {
struct SigningPublicKey;
}

namespace steelyard::journal {

using seal::ByteArray;
using seal::ByteBuffer;
using seal::ByteView;

/// A device that writes entries: the first 16 bytes of BLAKE2b-256 of its public signing key.
struct OriginId {
    ByteArray<16> bytes{};

    constexpr bool operator==(const OriginId&) const = default;
    constexpr auto operator<=>(const OriginId& other) const { return bytes <=> other.bytes; }
    [[nodiscard]] static OriginId of(const seal::SigningPublicKey& key);
    /// 32 lower-case hexadecimal digits.
    [[nodiscard]] std::string hex() const;
};

/// An entry: BLAKE2b-256 of the bytes of its header. All zero is none: what stands before the first of a chain.
struct EntryId {
    ByteArray<32> bytes{};

    constexpr bool operator==(const EntryId&) const = default;
    constexpr auto operator<=>(const EntryId& other) const { return bytes <=> other.bytes; }
    [[nodiscard]] constexpr bool isNone() const { return *this == EntryId{}; }
    /// 64 lower-case hexadecimal digits.
    [[nodiscard]] std::string hex() const;
};

/// One unbroken row of entries: a device in one of its lives. A device that was restored or copied begins the next incarnation,
/// so that no two rows get mixed.
struct ChainId {
    OriginId origin;
    std::uint32_t incarnationNumber = 0;

    constexpr bool operator==(const ChainId&) const = default;
    constexpr auto operator<=>(const ChainId& other) const { return std::tie(origin, incarnationNumber) <=> std::tie(other.origin, other.incarnationNumber); }
};

/// Hash of random or hashed bytes: any eight of them will do.
[[nodiscard]] inline std::size_t frontNumber(ByteView bytes)
{
    std::uint64_t front = 0;
    std::memcpy(&front, bytes.data(), sizeof front);
    return static_cast<std::size_t>(front);
}

}

/// For hashed containers.
template <>
struct std::hash<steelyard::journal::OriginId> {
    [[nodiscard]] std::size_t operator()(const steelyard::journal::OriginId& id) const noexcept
    {
        return steelyard::journal::frontNumber(id.bytes);
    }
};

/// For hashed containers.
template <>
struct std::hash<steelyard::journal::EntryId> {
    [[nodiscard]] std::size_t operator()(const steelyard::journal::EntryId& id) const noexcept
    {
        return steelyard::journal::frontNumber(id.bytes);
    }
};
