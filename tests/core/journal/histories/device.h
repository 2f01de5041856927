// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/fold.h"
#include "core/journal/vectors/chains.h"
#include "tests/core/journal/histories/chance.h"

#include <map>
#include <string>
#include <vector>

namespace histories {

using namespace steelyard;
using namespace steelyard::journal;

/// A device with a journal of its own, put together from the journal's parts as a vault does it.
class Device {
public:
    Device(OriginId origin, std::chrono::milliseconds clockError) : m_end{{origin, 1}, 0, {}}, m_clockError(clockError) {}

    [[nodiscard]] Instant now(Instant truly) const { return truly + m_clockError; }
    void setClockError(std::chrono::milliseconds error) { m_clockError = error; }
    /// What a device does that finds itself restored or copied.
    void beginNextIncarnation() { m_end = {{m_end.chain.origin, m_end.chain.incarnationNumber + 1}, 0, {}}; }

    /// Keeps an entry of its own; nothing where it was refused.
    std::optional<EntryId> write(const Draft& draft, Instant truly, Chance& chance);
    /// Keeps an entry whose body only a newer app can read.
    EntryId writeNewer(ByteBuffer body, Chance& chance);
    /// Whether the bytes were an entry; one that came before its time waits.
    bool receive(const ByteBuffer& bytes, Instant truly);

    [[nodiscard]] const std::map<EntryId, ByteBuffer>& entries() const { return m_entries; }
    [[nodiscard]] const Fold& fold() const { return m_fold; }
    [[nodiscard]] const Chains& chains() const { return m_chains; }
    [[nodiscard]] const ChainId& chain() const { return m_end.chain; }
    /// Heads of a register, as a writer sees them.
    [[nodiscard]] std::vector<EntryId> headsOf(const Draft& draft) const;

private:
    void take(const Entry& entry, Instant truly);
    void store(const EntryId& id, Entry entry, Instant truly);
    void dropBodiesOf(const RecordId& athlete);

    ChainEnd m_end;
    std::chrono::milliseconds m_clockError;
    Stamper m_stamper;
    Chains m_chains;
    Fold m_fold;
    std::map<EntryId, ByteBuffer> m_entries;
    std::multimap<EntryId, Entry> m_waiting; ///< by the entry they wait for
};

/// What a fold shows, in the words of the naive one.
[[nodiscard]] std::vector<std::string> shownLines(const Fold& fold);

/// A fold of entries in this order.
[[nodiscard]] Fold foldOf(const std::vector<ByteBuffer>& entries);

/// The bytes as a string.
[[nodiscard]] std::string text(ByteView bytes);

}
