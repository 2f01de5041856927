// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace steelyard {

/// Names a record on every device for ever: 16 random bytes. All zero is none.
struct RecordId {
    std::array<std::byte, 16> bytes{};

    constexpr bool operator==(const RecordId&) const = default;
    constexpr auto operator<=>(const RecordId& other) const { return bytes <=> other.bytes; }
    [[nodiscard]] constexpr bool isNone() const { return *this == RecordId{}; }
    /// 32 lower-case hexadecimal digits; nothing when it is none.
    [[nodiscard]] std::string hex() const;
    /// The id of such a text. An empty text, or one of noughts, is none; any other that is not 32 digits is refused.
    [[nodiscard]] static std::optional<RecordId> fromHex(std::string_view text);
};

/// Makes ids that were never there before; tests hand in one that counts.
using NewIds = std::function<RecordId()>;

}

/// Random bytes are as good a hash as any other.
template <>
struct std::hash<steelyard::RecordId> {
    [[nodiscard]] std::size_t operator()(const steelyard::RecordId& id) const noexcept
    {
        std::uint64_t front = 0, back = 0;
        std::memcpy(&front, id.bytes.data(), sizeof front);
        std::memcpy(&back, id.bytes.data() + sizeof front, sizeof back);
        return static_cast<std::size_t>(front ^ back);
    }
};
