// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/journal/histories/device.h"

#include "core/journal/faults.h"

#include <algorithm>

namespace histories {

namespace {

void tellTime([[maybe_unused]] Instant now)
{
#ifdef STEELYARD_PLANTED_FAULTS
    plantedNow = now;
#endif
}

}

std::optional<EntryId> Device::write(const Draft& draft, Instant truly, Chance& chance)
{
    const Body body = finished(draft, m_stamper.stamp(now(truly)));
    const Outcome<Entry> entry = nextEntry(m_end, body, [&chance](seal::ByteRoom room) { chance.fill(room); });
    if (!entry)
        return std::nullopt;
    take(*entry, truly);
    m_end = endAt(entry->header);
    return m_end.id;
}

EntryId Device::writeNewer(ByteBuffer body, Chance& chance)
{
    Payload payload{{}, std::move(body)};
    chance.fill(payload.salt);
    const Header header{m_end.chain, m_end.sequenceNumber + 1, m_end.id, commitmentTo(payload)};
    take({header, payload}, {});
    m_end = endAt(header);
    return m_end.id;
}

bool Device::receive(const ByteBuffer& bytes, Instant truly)
{
    const Outcome<Entry> entry = decodeEntry(bytes);
    if (!entry)
        return false;
    take(*entry, truly);
    return true;
}

void Device::take(const Entry& entry, Instant truly)
{
    const EntryId id = idOf(entry.header);
    switch (m_chains.admit(entry.header)) {
    case Admission::Gap: m_waiting.emplace(entry.header.previous, entry); return;
    case Admission::Known: {
        // A body that was not there because its sender knew of an erasure that has not come here yet.
        const auto known = m_entries.find(id);
        if (known != m_entries.end() && known->second.size() == Header::size && entry.payload)
            store(id, entry, truly);
        return;
    }
    case Admission::Taken: store(id, entry, truly);
    }
    for (auto next = m_waiting.find(id); next != m_waiting.end(); next = m_waiting.find(id)) {
        const Entry waited = next->second;
        m_waiting.erase(next);
        take(waited, truly);
    }
}

void Device::store(const EntryId& id, Entry entry, Instant truly)
{
    tellTime(now(truly));
    if (const Outcome<Held> read = held(entry)) {
        m_stamper.see(read->body.stamp.clock);
        const bool erases = read->body.kind == Kind::Erased;
        if (!erases && read->body.athlete && m_fold.erased().contains(*read->body.athlete))
            entry.payload.reset();
        m_fold.take(*read);
        if (erases)
            dropBodiesOf(read->body.subject.id);
    }
    m_entries[id] = encodeEntry(entry);
}

void Device::dropBodiesOf(const RecordId& athlete)
{
    for (auto& [id, bytes] : m_entries) {
        const Outcome<Held> read = held(*decodeEntry(bytes));
        if (read && read->body.athlete == athlete && read->body.kind != Kind::Erased)
            bytes.resize(Header::size);
    }
}

std::vector<EntryId> Device::headsOf(const Draft& draft) const
{
    std::vector<EntryId> ids;
    if (const Register* here = m_fold.find(keyOf(finished(draft, {})))) {
        for (const Held& head : here->heads)
            ids.push_back(head.id);
    }
    return ids;
}

std::vector<std::string> shownLines(const Fold& fold)
{
    const std::vector<RegisterKey> reviewed = fold.toReview();
    std::vector<std::string> lines;
    for (const auto& [key, here] : fold.registers()) {
        if (here.heads.empty())
            continue;
        std::string line = std::to_string(static_cast<int>(key.holds)) + "|" + (key.athlete ? text(key.athlete->bytes) : "") + "|"
            + std::to_string(static_cast<int>(key.subject.kind)) + "|" + text(key.subject.id.bytes) + "|" + std::to_string(key.fieldNumber)
            + "|" + key.part;
        for (const Held& head : here.heads) {
            const ShownTime shown = fold.shown(head);
            line += "|" + text(head.id.bytes) + text(head.body.content) + std::to_string(shown.time.time_since_epoch().count()) + ","
                + std::to_string(shown.day.time_since_epoch().count());
        }
        const bool review = std::find(reviewed.begin(), reviewed.end(), key) != reviewed.end();
        lines.push_back(line + (review ? "|review" : ""));
    }
    std::sort(lines.begin(), lines.end());
    return lines;
}

Fold foldOf(const std::vector<ByteBuffer>& entries)
{
    Fold fold;
    for (const ByteBuffer& bytes : entries) {
        if (const Outcome<Held> read = held(*decodeEntry(bytes)))
            fold.take(*read);
    }
    return fold;
}

std::string text(ByteView bytes)
{
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

}
