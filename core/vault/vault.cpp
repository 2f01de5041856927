// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vault/vault.h"

#include "core/vault/faults.h"
#include "core/vault/opening.h"

#include <algorithm>

namespace steelyard::vault {

namespace {

constexpr std::int64_t lastEntriesChecked = 256;
constexpr auto checkEvery = std::chrono::days(7);
constexpr std::uint64_t roomForOneBatch = 1 << 20;

/// Storage that failed once may hold anything; refusals about what was to be kept leave it as it was.
bool isAboutStorage(Code code)
{
    return code != Code::DraftUnfitShorten && code != Code::AthleteErasedStartAnew;
}

}

Vault::Vault(std::filesystem::path folder, seal::Descriptor lock, seal::Keyring ring, seal::SubKey witnessKey,
    const Surroundings& surroundings)
    : m_folder(std::move(folder)), m_lock(std::move(lock)), m_ring(std::move(ring)),
      m_witness(m_folder, m_ring.file().vaultId, std::move(witnessKey)), m_reserve(m_folder),
      m_install(surroundings.installFolder, m_ring.file().vaultId), m_surroundings(surroundings)
{
}

Outcome<std::unique_ptr<Vault>> Vault::open(
    const std::filesystem::path& folder, seal::Descriptor lock, seal::Keyring ring, const Surroundings& surroundings)
{
    auto witnessKey = seal::deriveSubkey(ring.vaultKey(), seal::Subkey::WitnessMac);
    if (!witnessKey)
        return codeOf(witnessKey.code());
    std::unique_ptr<Vault> vault(new Vault(folder, std::move(lock), std::move(ring), *std::move(witnessKey), surroundings));
    if (const Outcome<Done> connected = vault->connect(); !connected)
        return vault->withCounts(connected.refusal());
    if (const Outcome<Done> whole = vault->m_store->checkEnds(lastEntriesChecked); !whole)
        return vault->withCounts(whole.refusal());

    // What is wanting below is made good where the disk allows it; where not, the vault can be read all the same.
    if (const auto healed = seal::KeyFolder(folder).heal(vault->m_ring.file()))
        vault->m_findings.keyFileHealed = healed->any();
    vault->compareWitness();
    const std::optional<ByteBuffer> known = vault->m_store->installMark();
    const std::optional<InstallMark::Bytes> here = vault->m_install.read();
    vault->m_findings.movedHere = !known || !here || !seal::sameBytes(*known, *here);
    vault->m_incarnationDue = vault->m_findings.movedHere || vault->m_findings.witness == WitnessState::DatabaseBehind;
    const std::optional<journal::Instant> checked = vault->m_store->lastChecked();
    vault->m_findings.checkDue = !checked || surroundings.now() - *checked > checkEvery || *checked > surroundings.now();
    vault->m_findings.viewsRebuilt = vault->m_store->viewsRebuilt();
    vault->m_findings.folderSynced = looksSynced(folder);
    vault->m_findings.reserveMissing = !vault->m_reserve.setAside();
    return vault;
}

Outcome<Done> Vault::connect()
{
    const auto keyText = m_ring.databaseKeyText();
    if (!keyText)
        return codeOf(keyText.code());
    Outcome<std::unique_ptr<Database>> database = openSealed(databaseFile(m_folder, m_ring.file()), *keyText);
    if (!database)
        return database.refusal();
    Outcome<std::unique_ptr<Store>> store =
        Store::open(*std::move(database), journal::OriginId::of(m_ring.identity().signing().publicKey()));
    if (!store)
        return store.refusal();
    m_store = *std::move(store);
    return Done{};
}

Refusal Vault::withCounts(Refusal refusal)
{
    if (refusal.code != Code::PageDamagedRestoreBackup)
        return refusal;
    std::uint64_t total = 0;
    if (const std::optional<Witness> witness = m_witness.read())
        for (const journal::ChainEnd& end : witness->ends)
            total += end.sequenceNumber;
    const std::uint64_t readable = m_store ? m_store->readableCount() : 0;
    refusal.entryCount = total > readable ? total - readable : 0;
    return refusal;
}

void Vault::compareWitness()
{
    if (planted(Fault::WitnessUnread))
        return;
    const std::optional<Witness> witness = m_witness.read();
    const std::vector<journal::ChainEnd>& ends = m_store->ends();
    if (witness && witness->ends == ends)
        return;
    m_findings.witness = witness || ends.empty() ? WitnessState::DatabaseAhead : WitnessState::Missing;
    for (const journal::ChainEnd& end : witness ? witness->ends : std::vector<journal::ChainEnd>()) {
        if (end.sequenceNumber == 0 || m_store->idAt(end.chain, end.sequenceNumber) == end.id)
            continue;
        const auto present = std::find_if(ends.begin(), ends.end(), [&end](const auto& other) { return other.chain == end.chain; });
        const std::uint64_t held = present == ends.end() ? 0 : present->sequenceNumber;
        m_findings.witness = WitnessState::DatabaseBehind;
        m_findings.entriesMissingCount += held < end.sequenceNumber ? end.sequenceNumber - held : 1;
    }
    // A database that is behind is witnessed only once something new has been kept, so that the finding is not gone at the next opening.
    if (m_findings.witness != WitnessState::DatabaseBehind)
        m_witnessDue = true;
}

void Vault::witness()
{
    if (m_witnessDue && m_store)
        m_witnessDue = !m_witness.write(m_store->ends()).ok();
}

Outcome<Opened> Vault::opened(const Wanted& wanted)
{
    Opened opened;
    opened.findings = m_findings;
    opened.nature = seal::natureOf(m_ring.file().vaultId);
    Snapshot& snapshot = opened.snapshot;
    for (const journal::RecordKind kind : wanted.kinds) {
        std::vector<Head> heads = m_store->views().heads(kind);
        std::move(heads.begin(), heads.end(), std::back_inserter(snapshot.heads));
        Views::Slice all = m_store->views().added(kind, {}, {}, std::numeric_limits<std::int64_t>::max());
        std::move(all.added.begin(), all.added.end(), std::back_inserter(snapshot.added));
    }
    snapshot.erasedAthletes = m_store->views().erasedAthletes();
    snapshot.entryCount = m_store->entryCount();
    if (const Outcome<Done> read = m_store->database().outcome(); !read)
        return withCounts(read.refusal());
    Outcome<Drafts> drafts = m_store->drafts();
    if (!drafts)
        return withCounts(drafts.refusal());
    opened.drafts = *std::move(drafts);
    return opened;
}

Outcome<Done> Vault::ready()
{
    return m_store ? Outcome<Done>(Done{}) : connect();
}

Outcome<Done> Vault::settleIncarnation()
{
    if (!m_incarnationDue)
        return Done{};
    InstallMark::Bytes mark{};
    m_surroundings.random(mark);
    if (const Outcome<Done> begun = m_store->beginIncarnation(mark, m_surroundings.random); !begun)
        return begun;
    // Not written, the next opening takes the folder for a moved one again, and begins another chain: no harm.
    m_incarnationDue = false;
    (void)m_install.write(mark).ok();
    return Done{};
}

Outcome<Done> Vault::keepOnce(const std::vector<journal::Draft>& drafts, std::vector<journal::Held>& tried)
{
    tried.clear();
    if (const Outcome<Done> able = ready(); !able)
        return able;
    if (const Outcome<Done> settled = settleIncarnation(); !settled)
        return settled;
    return m_store->keep(drafts, {m_surroundings.now(), m_surroundings.random}, tried);
}

Outcome<Done> Vault::keepSurely(const std::vector<journal::Draft>& drafts, std::vector<journal::Held>& tried)
{
    const Outcome<Done> done = keepOnce(drafts, tried);
    if (done || !isAboutStorage(done.code()))
        return done;
    if (planted(Fault::DoubtNotCleared))
        return done;
    if (reopenedWith(tried, drafts.size()))
        return Done{};
    const bool unclear = done.code() == Code::FileUnreadableTryAgain || done.code() == Code::WriteFailedTryAgain;
    return unclear ? Outcome<Done>(whyNotWritten(m_folder)) : done;
}

bool Vault::reopenedWith(const std::vector<journal::Held>& tried, std::size_t draftCount)
{
    m_store.reset();
    return connect().ok() && tried.size() == draftCount && !tried.empty() && m_store->holds(tried.back());
}

Outcome<Kept> Vault::keep(const std::vector<journal::Draft>& drafts)
{
    Kept kept;
    if (drafts.empty())
        return kept;
    Outcome<Done> done = keepSurely(drafts, kept.entries);
    if (!done && done.code() == Code::DiskFullFreeSpace && !planted(Fault::ReserveHeldBack) && m_reserve.giveUp()) {
        kept.reserveUsed = true;
        done = keepSurely(drafts, kept.entries);
    }
    if (!done) {
        Refusal refusal = done.refusal();
        if (refusal.code == Code::DiskFullFreeSpace) {
            refusal.sizeNeeded = Reserve::size + roomForOneBatch;
            refusal.sizeFree = freeSize(m_folder);
        }
        return refusal;
    }
    m_witnessDue = true;
    return kept;
}

Outcome<Done> Vault::saveDraft(const std::string& key, const std::optional<ByteBuffer>& bytes)
{
    if (const Outcome<Done> able = ready(); !able)
        return able;
    Outcome<Done> saved = m_store->saveDraft(key, bytes);
    if (saved || !isAboutStorage(saved.code()))
        return saved;
    m_store.reset();
    if (saved.code() == Code::DiskFullFreeSpace)
        (void)m_reserve.giveUp();
    if (const Outcome<Done> able = ready(); !able)
        return saved;
    return m_store->saveDraft(key, bytes);
}

Outcome<bool> Vault::checkOn(Store::Checking& checking, std::int64_t mostCount)
{
    if (const Outcome<Done> able = ready(); !able)
        return able.refusal();
    const Outcome<bool> all = m_store->checkOn(checking, mostCount, m_surroundings.now());
    return all ? all : Outcome<bool>(withCounts(all.refusal()));
}

Outcome<bool> Vault::readOn(Reading& reading, std::int64_t mostCount)
{
    if (const Outcome<Done> able = ready(); !able)
        return able.refusal();
    if (reading.kindIndex == reading.query.kinds.size())
        return true;
    Views::Slice slice = m_store->views().added(reading.query.kinds[reading.kindIndex], reading.query, reading.behind, mostCount);
    for (journal::Held& held : slice.added) {
        std::vector<Head> since = m_store->views().headsAbout(held.body.subject);
        reading.records.push_back({std::move(held), std::move(since)});
    }
    reading.behind = slice.last.value_or(Views::Cursor());
    if (!slice.last)
        ++reading.kindIndex;
    if (const Outcome<Done> read = m_store->database().outcome(); !read)
        return read.refusal();
    return reading.kindIndex == reading.query.kinds.size();
}

}
