// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/recordid.h"

#include <cstdint>
#include <memory>

/// Ids that a test can write down and have again.
namespace numberedids {

/// The id with this number in its last bytes; 0 is none.
inline steelyard::RecordId numbered(std::uint64_t number)
{
    steelyard::RecordId id;
    for (std::size_t i = id.bytes.size(); number != 0; number >>= 8)
        id.bytes[--i] = static_cast<std::byte>(number & 0xff);
    return id;
}

/// New ids counted up from the one after `last`.
inline steelyard::NewIds counted(std::uint64_t last = 1000)
{
    return [next = std::make_shared<std::uint64_t>(last)] { return numbered(++*next); };
}

}
