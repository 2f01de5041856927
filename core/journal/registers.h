// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/entry.h"

namespace steelyard::journal {

/// What a register holds. Numbers are stored with the views.
enum class RegisterClass : std::uint8_t {
    Value = 1,      ///< a field of a record
    Record = 2,     ///< an added record as it was added
    Correction = 3, ///< what it should have said; counts before the record itself
    Removal = 4,    ///< whether the record counts as removed; nothing else that is written about the record changes that
    Tag = 5,        ///< a tag is there while the register has a head
    Shift = 6,      ///< moved times of a chain; all heads count, each for its stretch
    Erasure = 7,    ///< an erased athlete
};

/// The one place that entries about the same thing compete for. The athlete is part of it, so that a register goes as a whole when
/// an athlete is erased.
struct RegisterKey {
    RegisterClass holds = RegisterClass::Value;
    std::optional<RecordId> athlete;
    Subject subject;
    std::uint32_t fieldNumber = 0;
    std::string part;

    bool operator==(const RegisterKey&) const = default;
    auto operator<=>(const RegisterKey& other) const
    {
        return std::tie(holds, athlete, subject, fieldNumber, part) <=> std::tie(other.holds, other.athlete, other.subject, other.fieldNumber, other.part);
    }
};

/// The register that an entry of this body belongs to.
[[nodiscard]] RegisterKey keyOf(const Body& body);

/// The order of heads, the same on every device: the highest clock wins, then the higher origin, then the higher id.
struct Rank {
    Clock clock;
    OriginId origin;
    EntryId id;

    constexpr bool operator==(const Rank&) const = default;
    constexpr auto operator<=>(const Rank& other) const { return std::tie(clock, origin, id) <=> std::tie(other.clock, other.origin, other.id); }
};

/// The rank of an entry among the heads of its register.
[[nodiscard]] Rank rankOf(const Held& entry);

/// What the views already know when an entry comes to them.
struct Before {
    bool athleteErased = false; ///< the body's athlete has been erased
    bool superseded = false;    ///< an entry of the same register replaces this one
};

/// What an entry does to the views, in whatever order entries come and however often: first each superseded id is marked in the
/// register (whether or not that entry is there yet) and taken off its heads, then the entry becomes a head unless it is one.
/// Marks stay for as long as the register does. Marks and heads belong to one register: an id of another one means nothing there.
struct Step {
    RegisterKey key;
    bool becomesHead = false;
    std::vector<EntryId> supersedes;
    std::optional<RecordId> erases; ///< every register and body of this athlete goes, but not the register of the erasure
};

/// Nothing where the athlete has been erased: then the body is to be dropped too, and only the header is kept.
[[nodiscard]] std::optional<Step> stepOf(const Held& entry, const Before& before);

/// Whether several heads of such a register with unequal contents are a matter to be looked at.
[[nodiscard]] bool isReviewed(RegisterClass holds);

}
