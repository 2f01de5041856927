// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/recordid.h"

namespace steelyard {

namespace {

constexpr std::string_view digits = "0123456789abcdef";

std::optional<unsigned> valueOf(char digit)
{
    if (digit >= 'A' && digit <= 'F')
        digit = static_cast<char>(digit - 'A' + 'a');
    const auto at = digits.find(digit);
    return at == std::string_view::npos ? std::nullopt : std::optional(static_cast<unsigned>(at));
}

}

std::string RecordId::hex() const
{
    std::string text;
    if (isNone())
        return text;
    text.reserve(2 * bytes.size());
    for (const std::byte b : bytes) {
        text += digits[std::to_integer<unsigned>(b) >> 4];
        text += digits[std::to_integer<unsigned>(b) & 15];
    }
    return text;
}

std::optional<RecordId> RecordId::fromHex(std::string_view text)
{
    RecordId id;
    if (text.empty())
        return id;
    if (text.size() != 2 * id.bytes.size())
        return std::nullopt;
    for (std::size_t i = 0; i < id.bytes.size(); ++i) {
        const auto high = valueOf(text[2 * i]), low = valueOf(text[2 * i + 1]);
        if (!high || !low)
            return std::nullopt;
        id.bytes[i] = static_cast<std::byte>(*high << 4 | *low);
    }
    return id;
}

}
