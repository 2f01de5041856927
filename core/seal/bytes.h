// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <functional>
#include <span>
#include <string_view>
#include <vector>

namespace steelyard::seal {

using ByteView = std::span<const std::byte>;
using ByteRoom = std::span<std::byte>;
using ByteBuffer = std::vector<std::byte>;
template <std::size_t count>
using FixedView = std::span<const std::byte, count>;
template <std::size_t count>
using FixedRoom = std::span<std::byte, count>;
template <std::size_t count>
using ByteArray = std::array<std::byte, count>;

/// Public randomness that makes equal secrets give unequal keys.
using Salt = ByteArray<16>;

/// Fills what it is given with bytes nobody can guess; tests hand in a fixed one.
using RandomSource = std::function<void(ByteRoom)>;

/// The same bytes as the type that the C interface takes.
[[nodiscard]] inline auto raw(ByteView bytes)
{
    return reinterpret_cast<const unsigned char*>(bytes.data());
}

/// The same room as the type that the C interface takes.
[[nodiscard]] inline auto rawRoom(ByteRoom room)
{
    return reinterpret_cast<unsigned char*>(room.data());
}

/// The bytes of a text.
[[nodiscard]] inline ByteView bytesOf(std::string_view text)
{
    return std::as_bytes(std::span(text.data(), text.size()));
}

/// Copies as much as both sides have.
inline void copyBytes(ByteView from, ByteRoom to)
{
    std::copy_n(from.begin(), std::min(from.size(), to.size()), to.begin());
}

}
