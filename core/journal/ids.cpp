// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/ids.h"

#include "core/seal/hash.h"
#include "core/seal/identity.h"

namespace steelyard::journal {

namespace {

std::string hexOf(ByteView bytes)
{
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    text.reserve(2 * bytes.size());
    for (const std::byte b : bytes) {
        text += digits[std::to_integer<unsigned>(b) >> 4];
        text += digits[std::to_integer<unsigned>(b) & 15];
    }
    return text;
}

}

OriginId OriginId::of(const seal::SigningPublicKey& key)
{
    OriginId id;
    seal::copyBytes(seal::hash(key.bytes), id.bytes);
    return id;
}

std::string OriginId::hex() const
{
    return hexOf(bytes);
}

std::string EntryId::hex() const
{
    return hexOf(bytes);
}

}
