// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/vectors/vectors.h"

#include <set>

namespace steelyard::journal {

/// What became of an entry that came to its chain.
enum class Admission : std::uint8_t {
    Taken,
    Known, ///< it was there already
    Gap,   ///< the one before it, by number and id, is not there yet: keep it aside, it is not part of the chain
};

/// The chains of all devices in memory: which entries are there, and what to send to whom. An entry counts only behind the one
/// before it, so that any chain here is whole from its beginning. Branches of a forked chain stand beside one another.
class Chains {
public:
    Admission admit(const Header& header);
    [[nodiscard]] bool has(const ChainId& chain, std::uint64_t sequenceNumber, const EntryId& id) const;
    [[nodiscard]] std::vector<EntryId> idsAt(const ChainId& chain, std::uint64_t sequenceNumber) const;
    [[nodiscard]] VersionVector vector() const;
    [[nodiscard]] Standing compare(const ChainId& chain, const VersionVector& theirs) const;
    /// Ids of entries to send to one who has `theirs`, those of a chain in the order they can be taken in. Of a chain that they are
    /// further in, nothing; of a forked one, all that they are not known to have.
    [[nodiscard]] std::vector<EntryId> toSend(const VersionVector& theirs) const;
    /// Chains with more than one tip.
    [[nodiscard]] std::vector<ChainId> forked() const;

private:
    using Place = std::map<EntryId, EntryId>; ///< id to the id before it
    struct Chain {
        std::map<std::uint64_t, Place> places;
        std::set<Tip> tips;
    };

    [[nodiscard]] static std::set<EntryId> upTo(const Chain& chain, const std::vector<Tip>& tips);

    std::map<ChainId, Chain> m_chains;
};

}
