// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/entry.h"

#include <functional>
#include <map>

namespace steelyard::journal {

/// Where a chain, or one branch of a forked one, ends.
struct Tip {
    std::uint64_t sequenceNumber = 0;
    EntryId id;

    constexpr bool operator==(const Tip&) const = default;
    constexpr auto operator<=>(const Tip& other) const { return std::tie(sequenceNumber, id) <=> std::tie(other.sequenceNumber, other.id); }
};

/// What a device has: for each chain where it ends, in rising order. More than one tip means that the chain was forked, by a copy of
/// a device that wrote on beside the original. With the id in it, the two branches of a copy never look equal.
using VersionVector = std::map<ChainId, std::vector<Tip>>;

/// How our part of a chain stands to another's.
enum class Standing : std::uint8_t {
    Equal,
    Ahead,  ///< we have all of theirs, and more
    Behind, ///< they end where we have nothing yet; that it goes on from ours shows once it comes
    Forked, ///< they have another entry at a place where we have one
};

/// The entries that we have at one place of a chain: none, one, or one for each branch.
using IdsAt = std::function<std::vector<EntryId>(const ChainId&, std::uint64_t sequenceNumber)>;

/// One chain compared. Without tips on a side, that side has nothing of it.
[[nodiscard]] Standing compare(const ChainId& chain, const std::vector<Tip>& ours, const std::vector<Tip>& theirs, const IdsAt& idsAt);

/// A stretch of a chain, both ends included.
struct Stretch {
    ChainId chain;
    std::uint64_t firstNumber = 0, lastNumber = 0;

    bool operator==(const Stretch&) const = default;
};

/// What they have and we have not, as far as numbers tell: "812 to 840". A forked chain is not among it: see compare.
[[nodiscard]] std::vector<Stretch> missing(const VersionVector& ours, const VersionVector& theirs);

}
