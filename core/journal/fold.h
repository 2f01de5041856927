// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/clockshift.h"
#include "core/journal/registers.h"

#include <map>
#include <set>

namespace steelyard::journal {

/// What competes for one place, and what is out of the race. Without a head it counts as not there.
struct Register {
    std::vector<Held> heads; ///< the winner first, then by falling rank
    std::set<EntryId> superseded;

    [[nodiscard]] const Held* winner() const { return heads.empty() ? nullptr : &heads.front(); }
    bool operator==(const Register&) const = default;
};

/// The records in memory, folded from entries in any order, each as often as it comes: the same entries give the same registers.
/// Loaded with the heads alone it goes on rightly with entries written after those; for older ones that arrive late, ask the one
/// who holds all marks.
class Fold {
public:
    using Registers = std::map<RegisterKey, Register>;

    /// The register that is another one now; nothing where the entry changed nothing.
    std::optional<RegisterKey> take(const Held& entry);

    /// Nothing where no head is.
    [[nodiscard]] const Register* find(const RegisterKey& key) const;
    /// Those without a head too.
    [[nodiscard]] const Registers& registers() const { return m_registers; }
    [[nodiscard]] const std::set<RecordId>& erased() const { return m_erased; }
    /// Where heads with unequal contents stand beside one another, in the order of keys.
    [[nodiscard]] std::vector<RegisterKey> toReview() const;
    /// When an entry was made as shown to people: own reading and typed day, moved by the highest shift for its stretch.
    [[nodiscard]] ShownTime shown(const Held& entry) const;
    /// BLAKE2b-256 over erased athletes, keys and ids of heads: equal where the same is shown.
    [[nodiscard]] Digest digest() const;

private:
    void erase(const RecordId& athlete);

    Registers m_registers;
    std::set<RecordId> m_erased;
};

/// Who sends entries says along with them which athletes it knows to be erased, because it sends their entries without bodies. Who is
/// told of one it did not know keeps these drafts (day and zone are left to it) before it takes in any of the entries. Otherwise an
/// erasure that is lost with the only device that wrote it would leave entries without a body here, and with one elsewhere.
[[nodiscard]] std::vector<Draft> erasuresToRepeat(const std::set<RecordId>& told, const std::set<RecordId>& known);

}
