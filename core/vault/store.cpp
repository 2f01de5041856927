// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vault/store.h"

#include "core/vault/faults.h"
#include "core/vault/migrations/migrations.h"

#include <algorithm>

namespace steelyard::vault {

namespace {

using journal::ChainEnd;
using journal::ChainId;
using journal::Entry;
using journal::Held;

constexpr std::size_t largestDraftSize = 1 << 20;
constexpr std::int64_t lastOfChain = (std::int64_t{1} << 40) - 1;

ByteBuffer bytesOf(const journal::Payload& payload)
{
    ByteBuffer bytes(payload.salt.begin(), payload.salt.end());
    bytes.insert(bytes.end(), payload.body.begin(), payload.body.end());
    return bytes;
}

}

Store::Store(std::unique_ptr<Database> database, const journal::OriginId& own)
    : m_database(std::move(database)), m_views(*m_database), m_own{own, 1}
{
}

Outcome<std::unique_ptr<Store>> Store::open(std::unique_ptr<Database> database, const journal::OriginId& own)
{
    if (const Outcome<Done> migrated = migrate(*database, migrations()); !migrated)
        return migrated.refusal();
    std::unique_ptr<Store> store(new Store(std::move(database), own));
    if (const Outcome<Done> loaded = store->load(); !loaded)
        return loaded.refusal();
    return store;
}

Outcome<Done> Store::load()
{
    loadChains();
    m_own.incarnationNumber = static_cast<std::uint32_t>(metaNumber("incarnation").value_or(1));
    if (const auto milliseconds = metaNumber("clockWall"))
        m_stamper = journal::Stamper(journal::Clock{journal::Instant(std::chrono::milliseconds(*milliseconds)),
            static_cast<std::uint32_t>(metaNumber("clockCount").value_or(0))});
    const std::optional<std::int64_t> version = metaNumber("views");
    if (m_database->failed())
        return m_database->outcome();
    if (version != viewsVersionNumber)
        return rebuildViews();
    m_views.load();
    return m_database->outcome();
}

void Store::loadChains()
{
    m_ends.clear();
    for (Rows rows = m_database->query("SELECT number, origin, incarnation, sequence, id FROM chains ORDER BY number"); rows.next();) {
        ChainEnd end;
        seal::copyBytes(rows->view(1), end.chain.origin.bytes);
        end.chain.incarnationNumber = static_cast<std::uint32_t>(rows->number(2));
        end.sequenceNumber = static_cast<std::uint64_t>(rows->number(3));
        seal::copyBytes(rows->view(4), end.id.bytes);
        m_ends.push_back(end);
    }
}

Outcome<Done> Store::rebuildViews()
{
    m_viewsRebuilt = entryCount() > 0;
    Transaction all(*m_database);
    m_views.make();
    m_views.load();
    m_views.addAll();
    setMeta("views", viewsVersionNumber);
    const Outcome<Done> committed = all.commit();
    m_views.load();
    return committed;
}

std::optional<std::int64_t> Store::metaNumber(std::string_view name)
{
    Rows rows = m_database->query("SELECT value FROM meta WHERE name=?", name);
    return rows.next() ? std::optional(rows->number(0)) : std::nullopt;
}

template <typename Value>
void Store::setMeta(std::string_view name, const Value& value)
{
    m_database->run("UPDATE meta SET value=? WHERE name=?", value, name);
    if (!m_database->failed() && m_database->changedCount() == 0)
        m_database->run("INSERT INTO meta VALUES(?, ?)", name, value);
}

std::uint64_t Store::entryCount() const
{
    std::uint64_t count = 0;
    for (const ChainEnd& end : m_ends)
        count += end.sequenceNumber;
    return count;
}

std::int64_t Store::chainNumber(const ChainId& chain)
{
    const auto known = std::find_if(m_ends.begin(), m_ends.end(), [&chain](const ChainEnd& end) { return end.chain == chain; });
    if (known != m_ends.end())
        return known - m_ends.begin() + 1;
    m_ends.push_back({chain, 0, {}});
    const auto number = static_cast<std::int64_t>(m_ends.size());
    m_database->run("INSERT INTO chains VALUES(?, ?, ?, 0, ?)", number, chain.origin.bytes,
        static_cast<std::int64_t>(chain.incarnationNumber), journal::EntryId{}.bytes);
    return number;
}

void Store::insert(const Entry& entry, const Held* held)
{
    const std::int64_t number = chainNumber(entry.header.chain);
    const std::int64_t place = placeOf(number, entry.header.sequenceNumber);
    const auto header = journal::encodeHeader(entry.header);
    const bool dropped = held && !m_views.add(place, *held);
    if (planted(Fault::RowsReplaced))
        m_database->run("DELETE FROM entries WHERE place=?", place);
    if (entry.payload && !dropped)
        m_database->run("INSERT INTO entries VALUES(?, ?, ?)", place, header, bytesOf(*entry.payload));
    else
        m_database->run("INSERT INTO entries VALUES(?, ?, NULL)", place, header);
    m_ends[static_cast<std::size_t>(number) - 1] = journal::endAt(entry.header);
}

void Store::storeEnds(const std::vector<ChainEnd>& before)
{
    for (std::size_t at = 0; at < m_ends.size(); ++at)
        if (at >= before.size() || !(m_ends[at] == before[at]))
            m_database->run("UPDATE chains SET sequence=?, id=? WHERE number=?", static_cast<std::int64_t>(m_ends[at].sequenceNumber),
                m_ends[at].id.bytes, static_cast<std::int64_t>(at) + 1);
}

void Store::storeClock(const journal::Stamper& stamper)
{
    if (const std::optional<journal::Clock>& highest = stamper.highest()) {
        setMeta("clockWall", static_cast<std::int64_t>(highest->wall.time_since_epoch().count()));
        setMeta("clockCount", static_cast<std::int64_t>(highest->count));
    }
}

Outcome<Done> Store::together(const std::function<void(journal::Stamper&)>& work)
{
    const std::vector<ChainEnd> before = m_ends;
    journal::Stamper stamper = m_stamper;
    Transaction all(*m_database);
    work(stamper);
    storeEnds(before);
    storeClock(stamper);
    const Outcome<Done> committed = all.commit();
    if (committed) {
        m_stamper = stamper;
        return committed;
    }
    m_ends = before;
    m_views.load();
    m_database->takeFailure();
    return committed;
}

Outcome<Done> Store::keep(const std::vector<journal::Draft>& drafts, const Keeping& keeping, std::vector<Held>& tried)
{
    tried.clear();
    if (planted(Fault::HalfBatches) && drafts.size() > 1) {
        std::vector<Held> all;
        Outcome<Done> done = Done{};
        for (const journal::Draft& draft : drafts) {
            if (done)
                done = keep({draft}, keeping, tried);
            all.insert(all.end(), tried.begin(), tried.end());
        }
        tried = all;
        return done;
    }
    return together([&](journal::Stamper& stamper) {
        chainNumber(m_own);
        for (const journal::Draft& draft : drafts) {
            const journal::Body body = journal::finished(draft, stamper.stamp(keeping.now));
            if (m_views.isErased(body.athlete))
                return m_database->fail({Code::AthleteErasedStartAnew});
            const auto entry = journal::nextEntry(m_ends[static_cast<std::size_t>(chainNumber(m_own)) - 1], body, keeping.random);
            if (!entry)
                return m_database->fail({Code::DraftUnfitShorten});
            const Held held{journal::idOf(entry->header), m_own, entry->header.sequenceNumber, body};
            insert(*entry, &held);
            tried.push_back(held);
        }
    });
}

Outcome<Done> Store::append(const std::vector<Entry>& entries)
{
    return together([&](journal::Stamper& stamper) {
        for (const Entry& entry : entries) {
            const ChainEnd& end = m_ends[static_cast<std::size_t>(chainNumber(entry.header.chain)) - 1];
            const bool follows = entry.header.sequenceNumber == end.sequenceNumber + 1 && entry.header.previous == end.id;
            if (!follows && !planted(Fault::RowsReplaced))
                return m_database->fail({Code::DraftUnfitShorten});
            const auto held = journal::held(entry);
            if (held)
                stamper.see(held->body.stamp.clock);
            insert(entry, held ? &*held : nullptr);
        }
    });
}

bool Store::holds(const Held& entry)
{
    return idAt(entry.chain, entry.sequenceNumber) == entry.id;
}

Outcome<Done> Store::saveDraft(const std::string& key, const std::optional<ByteBuffer>& bytes)
{
    if (bytes && bytes->size() > largestDraftSize)
        return Code::DraftUnfitShorten;
    Transaction all(*m_database);
    if (!bytes) {
        m_database->run("DELETE FROM drafts WHERE name=?", key);
    } else {
        m_database->run("UPDATE drafts SET bytes=? WHERE name=?", *bytes, key);
        if (!m_database->failed() && m_database->changedCount() == 0)
            m_database->run("INSERT INTO drafts VALUES(?, ?)", key, *bytes);
    }
    if (planted(Fault::DraftsUncommitted))
        return Done{};
    return all.commit();
}

Outcome<Drafts> Store::drafts()
{
    Drafts drafts;
    for (Rows rows = m_database->query("SELECT name, bytes FROM drafts"); rows.next();)
        drafts[rows->text(0)] = rows->blob(1);
    if (const Outcome<Done> read = m_database->outcome(); !read)
        return read.refusal();
    return drafts;
}

std::optional<journal::EntryId> Store::idAt(const ChainId& chain, std::uint64_t sequenceNumber)
{
    const auto known = std::find_if(m_ends.begin(), m_ends.end(), [&chain](const ChainEnd& end) { return end.chain == chain; });
    if (known == m_ends.end())
        return std::nullopt;
    Rows rows = m_database->query("SELECT header FROM entries WHERE place=?", placeOf(known - m_ends.begin() + 1, sequenceNumber));
    if (!rows.next())
        return std::nullopt;
    const auto header = journal::decodeHeader(rows->view(0));
    return header ? std::optional(journal::idOf(*header)) : std::nullopt;
}

std::optional<Entry> Store::entryOf(const Statement& row)
{
    ByteBuffer bytes = row.blob(0);
    const ByteView payload = row.view(1);
    bytes.insert(bytes.end(), payload.begin(), payload.end());
    auto entry = journal::decodeEntry(bytes);
    return entry ? std::optional(*std::move(entry)) : std::nullopt;
}

bool Store::wholeChain(std::int64_t number, const ChainEnd& end, std::int64_t lastCount)
{
    std::uint64_t sequence = end.sequenceNumber;
    journal::EntryId wanted = end.id;
    for (Rows rows = m_database->query("SELECT header, payload FROM entries WHERE place BETWEEN ? AND ? ORDER BY place DESC LIMIT ?",
             placeOf(number, 0), placeOf(number, 0) + lastOfChain, lastCount);
         rows.next(); --sequence) {
        const std::optional<Entry> entry = entryOf(rows.row());
        if (!entry || entry->header.sequenceNumber != sequence || journal::idOf(entry->header) != wanted)
            return false;
        wanted = entry->header.previous;
    }
    return end.sequenceNumber - sequence == std::min(end.sequenceNumber, static_cast<std::uint64_t>(lastCount));
}

Outcome<Done> Store::checkEnds(std::int64_t lastCount)
{
    for (std::size_t at = 0; at < m_ends.size(); ++at)
        if (!wholeChain(static_cast<std::int64_t>(at) + 1, m_ends[at], lastCount))
            m_database->fail({Code::PageDamagedRestoreBackup});
    return m_database->outcome();
}

Outcome<bool> Store::checkOn(Checking& checking, std::int64_t mostCount, journal::Instant now)
{
    if (checking.chainIndex < m_ends.size()) {
        const auto number = static_cast<std::int64_t>(checking.chainIndex) + 1;
        ChainEnd& reached = checking.reached;
        const std::uint64_t before = reached.sequenceNumber;
        bool follows = true;
        for (Rows rows = m_database->query("SELECT header, payload FROM entries WHERE place > ? AND place <= ? ORDER BY place LIMIT ?",
                 placeOf(number, reached.sequenceNumber), placeOf(number, 0) + lastOfChain, mostCount);
             follows && rows.next();) {
            const std::optional<Entry> entry = entryOf(rows.row());
            follows = entry && entry->header.sequenceNumber == reached.sequenceNumber + 1 && entry->header.previous == reached.id;
            if (follows)
                reached = journal::endAt(entry->header);
        }
        const ChainEnd& end = m_ends[checking.chainIndex];
        const bool atEnd = reached.sequenceNumber == end.sequenceNumber && reached.id == end.id;
        if (atEnd) {
            ++checking.chainIndex;
            reached = {};
        } else if (!follows || reached.sequenceNumber == before || reached.sequenceNumber >= end.sequenceNumber) {
            m_database->fail({Code::PageDamagedRestoreBackup});
        }
    }
    const bool all = checking.chainIndex == m_ends.size();
    if (all) {
        Transaction remembered(*m_database);
        setMeta("checked", static_cast<std::int64_t>(now.time_since_epoch().count()));
        if (const Outcome<Done> done = remembered.commit(); !done)
            return done.refusal();
    }
    if (const Outcome<Done> read = m_database->outcome(); !read)
        return read.refusal();
    return all;
}

std::optional<journal::Instant> Store::lastChecked()
{
    const std::optional<std::int64_t> milliseconds = metaNumber("checked");
    return milliseconds ? std::optional(journal::Instant(std::chrono::milliseconds(*milliseconds))) : std::nullopt;
}

std::uint64_t Store::readableCount()
{
    std::uint64_t count = 0;
    std::int64_t last = 0;
    for (Rows rows = m_database->query("SELECT place FROM entries ORDER BY place"); rows.next(); ++count)
        last = rows->number(0);
    if (!m_database->takeFailure())
        return count;
    for (Rows rows = m_database->query("SELECT place FROM entries WHERE place>? ORDER BY place DESC", last); rows.next();)
        ++count;
    m_database->takeFailure();
    return count;
}

std::optional<ByteBuffer> Store::installMark()
{
    Rows rows = m_database->query("SELECT value FROM meta WHERE name='install'");
    return rows.next() ? std::optional(rows->blob(0)) : std::nullopt;
}

Outcome<Done> Store::beginIncarnation(ByteView installMark, const seal::RandomSource& random)
{
    const bool written = std::any_of(m_ends.begin(), m_ends.end(), [this](const ChainEnd& end) { return end.chain == m_own; });
    ChainId next = m_own;
    // By chance rather than by one more: two copies of a folder must not both begin the same chain.
    while (written && std::any_of(m_ends.begin(), m_ends.end(), [&next](const ChainEnd& end) { return end.chain == next; })) {
        seal::ByteArray<4> bytes{};
        random(bytes);
        std::memcpy(&next.incarnationNumber, bytes.data(), sizeof next.incarnationNumber);
    }
    Transaction all(*m_database);
    setMeta("incarnation", static_cast<std::int64_t>(next.incarnationNumber));
    setMeta("install", installMark);
    const Outcome<Done> committed = all.commit();
    if (committed)
        m_own = next;
    return committed;
}

}
