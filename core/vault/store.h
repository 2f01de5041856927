// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vault/database.h"
#include "core/vault/snapshot.h"
#include "core/vault/views.h"

namespace steelyard::vault {

/// Where an entry stands: 2^40 of them for each chain, in the chain's order.
[[nodiscard]] constexpr auto placeOf(std::int64_t chainNumber, std::uint64_t sequenceNumber)
{
    return chainNumber << 40 | static_cast<std::int64_t>(sequenceNumber);
}

/// What a batch needs that comes from outside.
struct Keeping {
    journal::Instant now;
    const seal::RandomSource& random;
};

/// The journal in the database, and the drafts beside it: appends, and sees to it that the views follow in the same transaction.
/// Synchronous; used by the one thread that owns the connection.
class Store {
public:
    /// Brings the layout and the views up to date first.
    [[nodiscard]] static Outcome<std::unique_ptr<Store>> open(std::unique_ptr<Database> database, const journal::OriginId& own);

    /// All or none of a batch, on the disk when done. `tried` gets the entries in either case: where the storage gave an error, only
    /// the next opening tells whether they are there.
    [[nodiscard]] Outcome<Done> keep(const std::vector<journal::Draft>& drafts, const Keeping& keeping, std::vector<journal::Held>& tried);
    /// Entries as they come from elsewhere, or in bulk: the next ones of their chains, each of which has been checked.
    [[nodiscard]] Outcome<Done> append(const std::vector<journal::Entry>& entries);
    /// Whether an entry is in the journal.
    [[nodiscard]] bool holds(const journal::Held& entry);

    [[nodiscard]] Outcome<Done> saveDraft(const std::string& key, const std::optional<ByteBuffer>& bytes);
    [[nodiscard]] Outcome<Drafts> drafts();

    [[nodiscard]] const std::vector<journal::ChainEnd>& ends() const { return m_ends; }
    [[nodiscard]] std::uint64_t entryCount() const;
    /// The id of the entry at a place of a chain; nothing where there is none.
    [[nodiscard]] std::optional<journal::EntryId> idAt(const journal::ChainId& chain, std::uint64_t sequenceNumber);
    /// The last entries of every chain: linked, whole, and ending where the chain is said to end.
    [[nodiscard]] Outcome<Done> checkEnds(std::int64_t lastCount);
    /// Where a check of the whole journal has got to.
    struct Checking {
        std::size_t chainIndex = 0;
        journal::ChainEnd reached;
    };
    /// Checks so many entries more: each whole, and behind the one that it names. True when all have been, which is then remembered.
    [[nodiscard]] Outcome<bool> checkOn(Checking& checking, std::int64_t mostCount, journal::Instant now);
    /// When the whole journal was last found in order; nothing where it never was.
    [[nodiscard]] std::optional<journal::Instant> lastChecked();
    /// How many entries can be read at all, from either end of what is damaged.
    [[nodiscard]] std::uint64_t readableCount();

    [[nodiscard]] std::optional<ByteBuffer> installMark();
    /// From here on a chain of its own, which nobody else's copy of this vault goes on with; and who it is that writes it.
    [[nodiscard]] Outcome<Done> beginIncarnation(ByteView installMark, const seal::RandomSource& random);

    [[nodiscard]] Views& views() { return m_views; }
    [[nodiscard]] Database& database() { return *m_database; }
    [[nodiscard]] bool viewsRebuilt() const { return m_viewsRebuilt; }

private:
    Store(std::unique_ptr<Database> database, const journal::OriginId& own);
    [[nodiscard]] Outcome<Done> load();
    void loadChains();
    std::int64_t chainNumber(const journal::ChainId& chain);
    void insert(const journal::Entry& entry, const journal::Held* held);
    void storeEnds(const std::vector<journal::ChainEnd>& before);
    void storeClock(const journal::Stamper& stamper);
    /// One transaction; what is in memory follows it, whichever way it ends.
    [[nodiscard]] Outcome<Done> together(const std::function<void(journal::Stamper&)>& work);
    [[nodiscard]] Outcome<Done> rebuildViews();
    [[nodiscard]] std::optional<std::int64_t> metaNumber(std::string_view name);
    template <typename Value>
    void setMeta(std::string_view name, const Value& value);
    [[nodiscard]] static std::optional<journal::Entry> entryOf(const Statement& row);
    [[nodiscard]] bool wholeChain(std::int64_t number, const journal::ChainEnd& end, std::int64_t lastCount);

    std::unique_ptr<Database> m_database;
    Views m_views;
    journal::ChainId m_own;
    std::vector<journal::ChainEnd> m_ends; ///< the chain of number n at n − 1
    journal::Stamper m_stamper;
    bool m_viewsRebuilt = false;
};

}
